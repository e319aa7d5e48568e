package org.footwell.acoustic.alignment;

import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Phrase;

/** A channel with a filter does not play the full range. */
@Check.Of(
    value = {"full_range", "high_pass", "low_pass"},
    says = "full_range is false where a filter is given.")
final class FullRangeUnfiltered implements Check<PlacedChannel> {

  @Override
  public void check(PlacedChannel channel, Refusing to) {
    if (channel.fullRange() && (channel.highPass() != null || channel.lowPass() != null)) {
      to.refuse(CoreFault.NOT_ALLOWED)
          .at("/full_range")
          .given(true)
          .allowed(Phrase.of(AlignmentWords.FALSE_WITH_FILTERS));
    }
  }
}
