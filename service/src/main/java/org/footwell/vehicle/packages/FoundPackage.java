package org.footwell.vehicle.packages;

import java.util.List;

/**
 * A package that was found.
 *
 * @param units in the order of the search
 * @param choices for each unit
 * @param amplifierOf for each unit which of the amplifiers drives it
 * @param amplifiers all there are, those that always are first
 */
record FoundPackage(
    PackageFigures figures,
    List<SlotLayout.Unit> units,
    List<Choice> choices,
    List<Integer> amplifierOf,
    List<Fed> amplifiers) {

  /** An amplifier with its supply cable. */
  record Fed(AmplifierChoice amplifier, FeedChoice feed) {}
}
