package org.footwell.parts;

import org.footwell.calculation.text.Words;

/** What a conductor is made of. Conductivities are relative to annealed copper. */
public enum ConductorMaterial implements Words {
  /** Plain copper. Annealed copper is 1; the rest is margin for poorer copper, without a source. */
  COPPER(0.9, 1, 1),
  /**
   * Aluminium strands with a skin of copper. At most 15 % of copper by volume (ASTM B566, from
   * memory) around pure aluminium of 0.65: 0.15 + 0.85·0.65 by the law of mixtures. The lower end is
   * margin without a source. Taken is a tenth of copper by volume, the lowest that ASTM B566 allows.
   */
  COPPER_CLAD_ALUMINIUM(0.55, 0.7, 0.629);

  private final double least;
  private final double most;
  private final double taken;

  ConductorMaterial(double least, double most, double taken) {
    this.least = least;
    this.most = most;
    this.taken = taken;
  }

  /** Smallest conductivity it may have. */
  public double least() {
    return least;
  }

  /** Largest conductivity it may have. */
  public double most() {
    return most;
  }

  /** Conductivity it is taken to have when none is given. */
  public double taken() {
    return taken;
  }
}
