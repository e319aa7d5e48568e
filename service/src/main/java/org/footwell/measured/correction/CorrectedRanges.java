package org.footwell.measured.correction;

import static org.footwell.measured.correction.CorrectionFault.CORRECTION_RANGE_EMPTY;

import java.util.stream.IntStream;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.TakeRules;

/** What is corrected was recorded, and is wide enough to fit something. */
@Check.Of(
    value = {
      "recordings.*.recording",
      "processor_rate_hz",
      "channels.*.from_hz",
      "channels.*.to_hz"
    },
    says =
        "The range of each channel is at least a third octave wide within what was recorded and the"
            + " processor reaches.")
final class CorrectedRanges implements Check<ResponseCorrectionRequest> {

  private static final double LOWEST_HZ = 10;
  private static final double HIGHEST_HZ = 20_000;

  /** Filters are fitted below this share of half the processor's rate. */
  private static final double USABLE = 0.9;

  /** A range narrower than a third octave, in points, leaves nothing to fit. */
  private static final int FEWEST_POINTS = 8;

  @Override
  public void check(ResponseCorrectionRequest q, Refusing to) {
    double[] points = points(q);
    for (int i = 0; i < q.channels().size(); i++) {
      range(q.channels().get(i), "/channels/" + i, points, to);
    }
  }

  /** The points in Hz. */
  static double[] points(ResponseCorrectionRequest q) {
    double highest = USABLE * q.processorRateHz() / 2;
    Double rateHz = TakeRules.rateHz(q);
    if (rateHz != null) {
      highest = Math.min(highest, TakeRules.USABLE * rateHz / 2);
    }
    return points(Math.min(highest, HIGHEST_HZ));
  }

  private static double[] points(double highest) {
    return IntStream.range(-10 * Correction.PER_OCTAVE, 5 * Correction.PER_OCTAVE)
        .mapToDouble(Correction::pointHz)
        .filter(f -> f >= LOWEST_HZ && f <= highest)
        .toArray();
  }

  private static void range(JudgedChannel channel, String at, double[] points, Refusing to) {
    if (channel.fromHz() == null) {
      return;
    }
    long inside = 0;
    for (double f : points) {
      inside += f >= channel.fromHz() && f <= channel.toHz() ? 1 : 0;
    }
    if (inside < FEWEST_POINTS) {
      to.refuse(CORRECTION_RANGE_EMPTY)
          .at(at)
          .given(Allowed.range(channel.fromHz(), channel.toHz(), "Hz"))
          .allowed(
              Phrase.of(CorrectionWords.THIRD_OCTAVE_WIDE)
                  .own("from", Double.toString(points[0]))
                  .own("to", Double.toString(points[points.length - 1])));
    }
  }
}
