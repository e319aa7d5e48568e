package org.footwell.vehicle.chain;

import org.footwell.physics.Decibels;

/**
 * A programme on the grid. Its RMS is the crest factor below its peaks, over the whole band; its peaks
 * are those of a full-scale sine.
 *
 * @param grid frequencies with the share of the programme's power at each
 * @param crest peak over RMS, as a ratio
 */
public record GridProgramme(Grid grid, double crest) {

  public static GridProgramme of(Grid grid, double crestFactorDb) {
    return new GridProgramme(grid, Decibels.toAmplitude(crestFactorDb));
  }

  /** Its mean square at a frequency of the grid over that of a sine with the same peaks. */
  public double square(int k) {
    return 2 / (crest * crest) * grid.share(k);
  }
}
