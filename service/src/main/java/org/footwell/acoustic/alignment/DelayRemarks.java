package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFinding.ABSOLUTE_SETTING_EXCEEDS_MAXIMUM;
import static org.footwell.acoustic.alignment.AlignmentFinding.DELAY_EXCEEDS_MAXIMUM;

import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.calculation.Run;

/** Finds what the processor cannot do. */
final class DelayRemarks {

  private DelayRemarks() {}

  /** Of delays that each channel really gets added, ms. */
  static void on(SeatDelaysRequest q, double[] addedMs, Run run) {
    if (q.processor() == null || q.processor().maximumDelayMs() == null) {
      return;
    }
    double maximum = q.processor().maximumDelayMs();
    for (int c = 0; c < addedMs.length; c++) {
      PlacedChannel channel = q.channels().get(c);
      double absolute = channel.chainDelayMs() + addedMs[c];
      boolean addedTooMuch = addedMs[c] > maximum;
      if (absolute > maximum) {
        run.find(addedTooMuch ? DELAY_EXCEEDS_MAXIMUM : ABSOLUTE_SETTING_EXCEEDS_MAXIMUM)
            .at("/channels/" + c)
            .value(addedTooMuch ? addedMs[c] : absolute)
            .limit(maximum)
            .own("name", channel.name());
      }
    }
  }
}
