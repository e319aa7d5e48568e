package org.footwell.vehicle.chain;

import java.util.List;

/**
 * Where a lower channel hands over to one or more upper ones.
 *
 * @param lower index of its channel
 * @param uppers indexes of theirs
 * @param crossovers indexes of the plan's crossovers it is made of
 */
public record Crossing(
    int lower, List<Integer> uppers, double frequencyHz, List<Integer> crossovers) {}
