package org.footwell.fitting.ring;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a driver in an opening and the ring between them. */
public enum RingFinding implements FindingCode {
  NO_THICKNESS_FITS(STOP),
  HITS_BEHIND(STOP),
  HITS_GRILLE(STOP),
  MAGNET_TOO_WIDE(STOP),
  BASKET_TOO_WIDE(STOP),
  CUT_OUT_NOT_COVERED(STOP),
  OUTER_BEYOND_LIMIT(STOP),
  HOLES_OVERLAP(STOP),
  HOLE_BREAKS_EDGE(STOP),
  WALL_TOO_THIN(STOP),
  BASKET_UNKNOWN(WARNING),
  OVERLAP_SMALL(WARNING),
  WALL_THIN(WARNING),
  PILOT_WALL_THIN(WARNING),
  RING_THIN(WARNING),
  ENGAGEMENT_SHORT(WARNING),
  SOFTENS(WARNING),
  MOISTURE(WARNING),
  HEAT_MARGIN_SMALL(NOTE),
  FRAME_OVERHANGS(NOTE),
  DRIVER_TURNED(NOTE),
  HEADS_UNDER_FRAME(NOTE),
  SCREWS_MEET_PANEL(NOTE),
  SCREWS_LONGER(NOTE),
  RING_THICK(NOTE),
  DEPTH_NEEDS_NO_RING(NOTE),
  GRILLE_NOT_GIVEN(NOTE),
  EXCURSION_NOT_GIVEN(NOTE),
  SPARSE_PRINT(NOTE),
  LARGER_THAN_SHEET(NOTE);

  private final Verdict level;

  RingFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
