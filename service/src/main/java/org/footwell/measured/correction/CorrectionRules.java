package org.footwell.measured.correction;

import static org.footwell.calculation.CoreFault.REQUIRED;
import static org.footwell.measured.correction.CorrectionFault.CORRECTION_RANGE_EMPTY;
import static org.footwell.measured.correction.CorrectionFault.FILTER_LIMITS_REVERSED;

import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.Run;
import org.footwell.measured.correction.ResponseCorrectionRequest.CorrectedChannel;
import org.footwell.measured.correction.ResponseCorrectionRequest.FilterLimits;
import org.footwell.measured.response.TakeRules;
import org.footwell.parts.LevelAt;
import org.footwell.parts.Rising;

/** The rules between the fields of a request; every breach is refused, all at once. */
final class CorrectionRules {

  private static final double LOWEST_HZ = 10;
  private static final double HIGHEST_HZ = 20_000;

  /** Filters are fitted below this share of half the processor's rate. */
  private static final double USABLE = 0.9;

  /** A range narrower than a third octave, in points, leaves nothing to fit. */
  private static final int FEWEST_POINTS = 8;

  private CorrectionRules() {}

  /** The points in Hz; ends the run if anything is amiss. */
  static double[] require(ResponseCorrectionRequest q, Run run) {
    TakeRules takes = new TakeRules(q.kind(), q.sweep(), run);
    List<String> ids = q.channels().stream().map(CorrectedChannel::id).toList();
    takes.check(ids, q.microphones(), q.recordings());
    q.target().require("/target", run);
    if (q.calibration() != null) {
      List<Double> points = q.calibration().stream().map(LevelAt::frequencyHz).toList();
      Rising.require("/calibration", "/frequency_hz", points, run);
    }
    double highest = USABLE * q.processorRateHz() / 2;
    limits(q.filters(), run);
    if (takes.rateHz() != null) {
      highest = Math.min(highest, TakeRules.USABLE * takes.rateHz() / 2);
    }
    double[] points = points(Math.min(highest, HIGHEST_HZ));
    for (int i = 0; i < q.channels().size(); i++) {
      range(q.channels().get(i), "/channels/" + i, points, run);
    }
    run.requireNoFaults();
    return points;
  }

  private static double[] points(double highest) {
    return IntStream.range(-10 * Correction.PER_OCTAVE, 5 * Correction.PER_OCTAVE)
        .mapToDouble(Correction::pointHz)
        .filter(f -> f >= LOWEST_HZ && f <= highest)
        .toArray();
  }

  private static void limits(FilterLimits limits, Run run) {
    if (limits.lowestQ() > limits.highestQ()) {
      run.refuse(FILTER_LIMITS_REVERSED)
          .at("/filters/highest_q")
          .given(limits.highestQ())
          .allowed("at least " + limits.lowestQ());
    }
    if (limits.fromHz() >= limits.toHz()) {
      run.refuse(FILTER_LIMITS_REVERSED)
          .at("/filters/to_hz")
          .given(limits.toHz())
          .allowed("more than " + limits.fromHz());
    }
  }

  private static void range(CorrectedChannel channel, String at, double[] points, Run run) {
    if (channel.fromHz() == null && channel.toHz() == null) {
      return;
    }
    if (channel.fromHz() == null || channel.toHz() == null) {
      run.refuse(REQUIRED)
          .at(at + (channel.fromHz() == null ? "/from_hz" : "/to_hz"))
          .allowed("given when the other end of the range is");
      return;
    }
    long inside = 0;
    for (double f : points) {
      inside += f >= channel.fromHz() && f <= channel.toHz() ? 1 : 0;
    }
    if (inside < FEWEST_POINTS) {
      run.refuse(CORRECTION_RANGE_EMPTY)
          .at(at)
          .given(channel.fromHz() + " to " + channel.toHz() + " Hz")
          .allowed(
              "rising and a third octave wide, between "
                  + points[0]
                  + " and "
                  + points[points.length - 1]
                  + " Hz");
    }
  }
}
