package org.footwell.factory.sum;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.factory.sum.SignalSumRequest.Output;
import org.footwell.factory.sum.SignalSumRequest.OutputSection;
import org.footwell.factory.sum.SignalSumRequest.ResponsePoint;
import org.footwell.factory.sum.SignalSumRequest.VehicleSound;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter;
import org.footwell.recording.Recording;
import org.footwell.signal.SectionKind;

/** A request in the making. */
final class SumBench {

  final List<Output> outputs = new ArrayList<>();
  final List<OutputSection> sections = new ArrayList<>();
  final List<ResponsePoint> points = new ArrayList<>();
  Double rateHz;
  Double flatFromHz;
  Double flatToHz;
  Double toleranceDb;
  CurveFrequencies frequencies;

  /** An output in the making. */
  static final class Draft {
    private final String id;
    Filter highPass;
    Filter lowPass;
    Recording impulse;
    Double gainDb;
    Double delayMs;
    Integer polarity;
    Double volts;
    Boolean connected;
    List<VehicleSound> carries = List.of();

    Draft(String id) {
      this.id = id;
    }

    Draft high(Filter.Kind kind, int order, double hz) {
      highPass = new Filter(kind, order, hz, null);
      return this;
    }

    Draft low(Filter.Kind kind, int order, double hz) {
      lowPass = new Filter(kind, order, hz, null);
      return this;
    }

    Draft polarity(int value) {
      polarity = value;
      return this;
    }

    Draft delay(double ms) {
      delayMs = ms;
      return this;
    }

    Draft volts(double value) {
      volts = value;
      return this;
    }

    Draft gain(double db) {
      gainDb = db;
      return this;
    }

    Draft out() {
      connected = false;
      return this;
    }

    Draft carries(VehicleSound... sounds) {
      carries = sounds == null ? null : List.of(sounds);
      return this;
    }

    Draft impulse(Recording recording) {
      impulse = recording;
      return this;
    }

    Output done() {
      return SignalSumRequestOutputBuilder.builder()
          .id(id)
          .highPass(highPass)
          .lowPass(lowPass)
          .impulseResponse(impulse)
          .gainDb(gainDb)
          .delayMs(delayMs)
          .polarity(polarity)
          .cleanOutputV(volts)
          .connected(connected)
          .carries(carries)
          .build();
    }
  }

  static Draft output(String id) {
    return new Draft(id);
  }

  /** A woofer and a tweeter output of the fourth order at a frequency. */
  static SumBench pair(double hz) {
    return new SumBench()
        .with(output("woofer").low(Filter.Kind.LINKWITZ_RILEY, 4, hz))
        .with(output("tweeter").high(Filter.Kind.LINKWITZ_RILEY, 4, hz));
  }

  SumBench with(Draft draft) {
    outputs.add(draft.done());
    return this;
  }

  SumBench section(String output, SectionKind kind, double hz, Double q, Double gain) {
    sections.add(new OutputSection(output, kind, hz, q, gain));
    return this;
  }

  SumBench point(String output, double hz, double db, double degrees) {
    points.add(new ResponsePoint(output, hz, db, degrees));
    return this;
  }

  SignalSumRequest request() {
    return new SignalSumRequest(
        outputs, sections, points, rateHz, flatFromHz, flatToHz, toleranceDb, frequencies);
  }

  Answer<SignalSumResult> answer() {
    return Answers.of(new SignalSum(), request());
  }

  SignalSumResult result() {
    return answer().result();
  }

  List<String> codes() {
    return Answers.codes(answer());
  }

  List<String> faults() {
    return Answers.faults(new SignalSum(), request()).stream()
        .map(fault -> fault.pointer() + " " + fault.code())
        .toList();
  }
}
