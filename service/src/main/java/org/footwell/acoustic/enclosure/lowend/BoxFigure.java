package org.footwell.acoustic.enclosure.lowend;

import org.footwell.calculation.text.Words;

/** Figures of a box that stand at a frequency, by what a fitter calls them. */
public enum BoxFigure implements Words {
  F3,
  PEAK,
  LARGEST_DISPLACEMENT,
  TUNING,
  FASTEST_AIR,
  AT
}
