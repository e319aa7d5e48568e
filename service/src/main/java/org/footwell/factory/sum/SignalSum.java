package org.footwell.factory.sum;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.calculation.text.Allowed;
import org.footwell.factory.sum.OutputSumSearch.Way;
import org.footwell.factory.sum.SignalSumRequest.Output;
import org.footwell.factory.sum.SignalSumResult.Advice;
import org.footwell.factory.sum.SignalSumResult.Evenness;
import org.footwell.factory.sum.SignalSumResult.SummedPoint;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.FilterFault;
import org.footwell.parts.FrequencyFault;
import org.footwell.physics.Decibels;
import org.footwell.recording.RecordingFault;
import org.footwell.recording.Wav;
import org.footwell.signal.MinimumPhase;
import org.footwell.signal.Response;
import org.footwell.signal.SectionDesign;
import org.footwell.signal.SectionFault;

/** Whether factory outputs add up to a full-range signal, and how to make them. */
public final class SignalSum implements Calculation<SignalSumRequest, SignalSumResult> {

  static final Source SUPERPOSITION =
      Source.of("Superposition of voltages: complex responses add, magnitudes do not");

  /** RMS voltage of a level in dB over 1 V. */
  static final Formula.Of1 VOLTAGE =
      Formula.of("summed_v", "1 V·10^(L/20)", "V", DEFINITION).with("L", Decibels::toAmplitude);

  private static final Card<SignalSumRequest, SignalSumResult> CARD =
      Card.of("signal-sum", SignalSumRequest.class, SignalSumResult.class)
          .title("Factory outputs added to a full-range signal")
          .purpose(
              "What do the outputs of a factory source add up to, where are holes and overlaps,"
                  + " which outputs to leave out, whose polarity to turn, what delays to undo,"
                  + " whether the result is flat enough, and what voltage it has.")
          .example(
              """
              {"outputs": [
                {"id": "front woofer", "carries": ["chime"], "clean_output_v": 6,
                 "low_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 2500}},
                {"id": "front tweeter", "carries": [], "clean_output_v": 6, "polarity": -1,
                 "delay_ms": 0.25,
                 "high_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 2500}},
                {"id": "centre", "carries": ["parking_aid"], "clean_output_v": 4,
                 "connected": false,
                 "high_pass": {"kind": "butterworth", "order": 2, "frequency_hz": 200}}],
               "frequencies": {"spacing": "third_octave"}}
              """)
          .sources(
              SUPERPOSITION,
              SectionDesign.COOKBOOK,
              MinimumPhase.CEPSTRUM,
              CurveFrequencies.IEC_61260_1,
              Wav.RIFF,
              Source.COMMON_PRACTICE)
          .limits(
              "Everything is linear and at one volume step: equalisers and limiters that go by"
                  + " volume need the sum at each step.",
              "Filters are taken as digital sections of the sample rate stated, with the same"
                  + " latency in all outputs unless delays say otherwise.",
              "Measured responses must share their time and level reference; the first 16,384"
                  + " samples of an impulse response count.",
              "An all-pass in a measured output is found by its phase beyond the minimum phase of"
                  + " its magnitude, where that turns by more than a right angle.",
              "Signals of the left and the right channel are not judged together: what differs"
                  + " between them is music.")
          .findings(SignalSumFinding.values())
          .refusals(SignalSumFault.values())
          .refusals(RecordingFault.values())
          .refusals(FilterFault.values())
          .refusals(SectionFault.values())
          .refusals(FrequencyFault.values())
          .cautions(FactoryCaution.values())
          .build();

  @Override
  public Card<SignalSumRequest, SignalSumResult> card() {
    return CARD;
  }

  @Override
  public SignalSumResult compute(SignalSumRequest q, Run run) {
    double[] points = q.frequencies().points();
    List<KnownOutput> outputs = new KnownOutputs(q, run).all();
    double[] band = band(q, outputs, run);
    OutputSumSearch search = new OutputSumSearch(outputs, band[0], band[1], q.toleranceDb());
    Way now = search.now();
    Evenness sum = search.evenness(now);
    if (sum.medianDb() <= Response.LOWEST_DB) {
      run.refuse(SignalSumFault.SUM_SILENT).at("/outputs");
      throw run.refused();
    }
    Way best = search.best(run);
    Evenness evenness = search.evenness(best);
    List<Advice> advice = advice(q.outputs(), outputs, search, best);
    boolean volts = q.outputs().get(0).cleanOutputV() != null;
    Double highest = volts ? (Double) VOLTAGE.at(evenness.medianDb() + evenness.highestDb()) : null;
    SignalSumResult result =
        SignalSumResultBuilder.builder()
            .sum(sum)
            .best(evenness)
            .outputs(advice)
            .holes(Regions.of(search, now, q.toleranceDb(), -1))
            .overlaps(Regions.of(search, now, q.toleranceDb(), 1))
            .summedV(volts ? (Double) run.apply(VOLTAGE, evenness.medianDb()) : null)
            .highestSummedV(highest)
            .highestSummedNowV(volts ? (Double) VOLTAGE.at(sum.medianDb() + sum.highestDb()) : null)
            .cleanOutputV(highest)
            .points(
                points(
                    points, search, now, best, new double[] {sum.medianDb(), evenness.medianDb()}))
            .build();
    SignalSumRemarks remarks = new SignalSumRemarks(q, run);
    remarks.sums(result);
    remarks.outputs(outputs, advice);
    if (volts) {
      voltage(q, result.highestSummedV(), run);
    }
    return result;
  }

  /** The band to judge: as asked for, but no farther than every response reaches. */
  private static double[] band(SignalSumRequest q, List<KnownOutput> outputs, Run run) {
    double from = q.flatFromHz();
    double to = Math.min(q.flatToHz(), 0.45 * q.rateHz());
    for (KnownOutput known : outputs) {
      from = Math.max(from, known.response().fromHz());
      to = Math.min(to, known.response().toHz());
    }
    if (from >= to) {
      run.refuse(SignalSumFault.BAND_OUTSIDE_RESPONSES)
          .at("/flat_from_hz")
          .given(Allowed.between(q.flatFromHz(), q.flatToHz(), "Hz"))
          .allowed(Allowed.between(from, to, "Hz"));
      throw run.refused();
    }
    if (from > q.flatFromHz() || to < q.flatToHz()) {
      run.find(SignalSumFinding.BAND_NARROWED)
          .at(from > q.flatFromHz() ? "/flat_from_hz" : "/flat_to_hz")
          .value(from)
          .limit(to);
    }
    return new double[] {from, to};
  }

  private static List<Advice> advice(
      List<Output> asked, List<KnownOutput> outputs, OutputSumSearch search, Way best) {
    List<Advice> all = new ArrayList<>();
    for (int o = 0; o < outputs.size(); o++) {
      KnownOutput known = outputs.get(o);
      boolean used = best.uses(o);
      all.add(
          new Advice(
              asked.get(o).id(),
              used,
              used && best.turns(o),
              used ? known.delayMs() - search.earliestMs(best) : 0,
              used && best.undone() ? search.latestMs(best) - known.delayMs() : 0,
              known.allPassHz()));
    }
    return all;
  }

  private static List<SummedPoint> points(
      double[] frequencies, OutputSumSearch search, Way now, Way best, double[] medians) {
    List<SummedPoint> all = new ArrayList<>();
    for (double f : frequencies) {
      all.add(
          new SummedPoint(
              f,
              Math.max(-OutputSumSearch.DEEPEST_DB, search.levelDb(now, f) - medians[0]),
              Math.max(-OutputSumSearch.DEEPEST_DB, search.inPhaseDb(now, f) - medians[0]),
              Math.max(-OutputSumSearch.DEEPEST_DB, search.levelDb(best, f) - medians[1])));
    }
    return all;
  }

  private static void voltage(SignalSumRequest q, double highest, Run run) {
    double single = q.outputs().stream().mapToDouble(Output::cleanOutputV).max().orElseThrow();
    if (highest > 1.01 * single) {
      run.find(SignalSumFinding.SUM_VOLTAGE_ABOVE_SINGLE)
          .at("/outputs")
          .value(highest)
          .limit(single);
    }
  }
}
