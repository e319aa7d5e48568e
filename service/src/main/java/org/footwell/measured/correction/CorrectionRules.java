package org.footwell.measured.correction;

import static org.footwell.measured.correction.CorrectionFault.CORRECTION_RANGE_EMPTY;

import java.util.stream.IntStream;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.TakeRules;

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
    TakeRules takes = new TakeRules(q, run);
    takes.check();
    double highest = USABLE * q.processorRateHz() / 2;
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

  private static void range(JudgedChannel channel, String at, double[] points, Run run) {
    if (channel.fromHz() == null) {
      return;
    }
    long inside = 0;
    for (double f : points) {
      inside += f >= channel.fromHz() && f <= channel.toHz() ? 1 : 0;
    }
    if (inside < FEWEST_POINTS) {
      run.refuse(CORRECTION_RANGE_EMPTY)
          .at(at)
          .given(Allowed.range(channel.fromHz(), channel.toHz(), "Hz"))
          .allowed(
              Phrase.of(CorrectionWords.THIRD_OCTAVE_WIDE)
                  .own("from", Double.toString(points[0]))
                  .own("to", Double.toString(points[points.length - 1])));
    }
  }
}
