package org.footwell.measured.response;

import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Keeps;

/** What requests share that judge levels and phases of recordings. */
@Keeps(UsableTakes.class)
public interface Measurement extends RecordedSet {

  @Override
  List<ChannelTake> recordings();

  Gate gate();

  /** The take of a channel at a position; there is one. */
  default ChannelTake take(String channel, String microphone) {
    return recordings().stream()
        .filter(one -> one.channel().equals(channel) && one.microphone().equals(microphone))
        .findFirst()
        .orElseThrow();
  }

  /** What all positions heard of a channel, in their order. */
  default List<HeardAt> heard(String channel) {
    return microphones().stream()
        .map(one -> new HeardAt(take(channel, one.id()).recording(), one.weight()))
        .toList();
  }

  /**
   * Impulse responses of the takes, which must have been found good.
   *
   * @param arithmetic whose deadline is kept
   */
  default ImpulseResponses responses(Arithmetic arithmetic) {
    int longest = 0;
    for (ChannelTake take : recordings()) {
      longest = Math.max(longest, take.recording().samples().size());
    }
    return new ImpulseResponses(
        sweep(), recordings().get(0).recording().rateHz(), longest, arithmetic);
  }
}
