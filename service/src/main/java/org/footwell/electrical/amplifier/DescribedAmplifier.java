package org.footwell.electrical.amplifier;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.HashMap;
import java.util.Map;
import org.footwell.calculation.Run;

/** An amplifier channel by exactly one of its rails and its published powers. */
public record DescribedAmplifier(
    @Schema(description = "The amplifier by its rails. Exactly one of rails and ratings")
        Rails rails,
    @Schema(description = "The amplifier by its published powers. Exactly one of rails and ratings")
        Ratings ratings) {

  /**
   * The amplifier as connected; refuses one that cannot be.
   *
   * @param bridged whether the load hangs between two channels
   * @param at JSON Pointer to this description; {@code /bridged} says how it is connected
   */
  public StatedAmplifier connected(boolean bridged, String at, Run run) {
    Map<String, Object> ways = new HashMap<>();
    ways.put("rails", rails);
    ways.put("ratings", ratings);
    run.exactlyOneOf(at, ways);
    run.requireNoFaults();
    if (rails != null) {
      return StatedRails.of(rails, bridged, false, at + "/rails", run);
    }
    StatedRatings.refuseBridging(ratings, bridged, run);
    return StatedRatings.of(ratings, bridged, false, at + "/ratings", run);
  }
}
