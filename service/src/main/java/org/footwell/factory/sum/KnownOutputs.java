package org.footwell.factory.sum;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.factory.sum.SignalSumRequest.Output;
import org.footwell.factory.sum.SignalSumRequest.ResponsePoint;
import org.footwell.physics.Decibels;
import org.footwell.recording.Recording;
import org.footwell.signal.Biquad;
import org.footwell.signal.Cascade;
import org.footwell.signal.EqualiserSection;
import org.footwell.signal.SectionDesign;
import org.footwell.signal.SectionKind;

/** The outputs with their responses, and what is known of their delays and all-pass filters. */
final class KnownOutputs {

  /** From one point to the next the phase may turn by so much at most to be followed. */
  private static final double FOLLOWED_DEG = 120;

  private final List<KnownOutput> all = new ArrayList<>();

  KnownOutputs(SignalSumRequest q, Run run) {
    for (int i = 0; i < q.outputs().size(); i++) {
      run.checkDeadline();
      Output output = q.outputs().get(i);
      List<ResponsePoint> points =
          q.points().stream().filter(one -> one.channel().equals(output.id())).toList();
      boolean measured = !points.isEmpty() || output.impulseResponse() != null;
      OutputResponse response =
          output.impulseResponse() != null
              ? impulse(output.impulseResponse())
              : points.isEmpty() ? filters(output, q) : measured(output, points, i, run);
      ExcessPhase excess =
          measured ? excess(response, points, q) : new ExcessPhase(0, allPass(output, q));
      all.add(
          new KnownOutput(
              output.connected(),
              response,
              factor(output),
              output.delayMs(),
              output.delayMs() + excess.delayMs(),
              excess.allPassHz()));
    }
  }

  List<KnownOutput> all() {
    return all;
  }

  private static double factor(Output output) {
    double volts = output.cleanOutputV() == null ? 1 : output.cleanOutputV();
    return output.polarity() * volts * Decibels.toAmplitude(output.gainDb());
  }

  private static OutputResponse impulse(Recording recording) {
    List<Double> samples = new ArrayList<>();
    int size = Math.min(OutputResponse.Impulse.MOST_SAMPLES, recording.samples().size());
    for (int n = 0; n < size; n++) {
      samples.add((double) recording.samples().at(n));
    }
    return new OutputResponse.Impulse(samples, recording.rateHz());
  }

  static OutputResponse filters(Output output, SignalSumRequest q) {
    List<Biquad> sections = new ArrayList<>();
    if (output.highPass() != null) {
      sections.addAll(SectionDesign.of(output.highPass().highPass(), q.rateHz()));
    }
    if (output.lowPass() != null) {
      sections.addAll(SectionDesign.of(output.lowPass().lowPass(), q.rateHz()));
    }
    for (EqualiserSection one : q.sections()) {
      if (one.channel().equals(output.id())) {
        sections.add(one.design(q.rateHz()));
      }
    }
    return new OutputResponse.Filtered(Cascade.of(sections), q.rateHz());
  }

  private static Double allPass(Output output, SignalSumRequest q) {
    return q.sections().stream()
        .filter(one -> one.channel().equals(output.id()))
        .filter(one -> one.kind() == SectionKind.ALL_PASS_1 || one.kind() == SectionKind.ALL_PASS_2)
        .map(EqualiserSection::frequencyHz)
        .findFirst()
        .orElse(null);
  }

  private static OutputResponse measured(
      Output output, List<ResponsePoint> points, int index, Run run) {
    List<Double> frequencies = points.stream().map(ResponsePoint::frequencyHz).toList();
    List<Double> levels = points.stream().map(ResponsePoint::levelDb).toList();
    FollowedPhase phase =
        FollowedPhase.of(
            frequencies, levels, points.stream().map(ResponsePoint::phaseDeg).toList());
    if (phase.coarsestDeg() > FOLLOWED_DEG) {
      run.find(SignalSumFinding.PHASE_TOO_COARSE)
          .at("/outputs/" + index)
          .value(phase.coarsestDeg())
          .limit(FOLLOWED_DEG)
          .own("name", output.id())
          .with("frequency", phase.atHz());
    }
    return new OutputResponse.Points(frequencies, levels, phase.degrees());
  }

  private static ExcessPhase excess(
      OutputResponse response, List<ResponsePoint> points, SignalSumRequest q) {
    double low = points.isEmpty() ? Math.max(20, response.fromHz()) : points.get(0).frequencyHz();
    double high = points.isEmpty() ? response.toHz() : points.get(points.size() - 1).frequencyHz();
    high = Math.min(high, q.rateHz() / 2);
    if (response instanceof OutputResponse.Impulse impulse) {
      ExcessPhase rest = ExcessPhase.of(impulse.withoutDelay(low, high), low, 0.999 * high);
      return new ExcessPhase(impulse.peakMs() + rest.delayMs(), rest.allPassHz());
    }
    return ExcessPhase.of(response, low, high);
  }
}
