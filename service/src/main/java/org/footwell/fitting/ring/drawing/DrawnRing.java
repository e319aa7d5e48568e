package org.footwell.fitting.ring.drawing;

import java.util.List;
import org.footwell.calculation.Finding;

/**
 * A ring to be drawn.
 *
 * @param geometry seen from the front
 * @param walls least walls between edges and holes
 * @param thicknessMm how thick it is
 * @param against what forbids it; a ring that does not fit is never drawn without saying so
 */
public record DrawnRing(
    RingGeometry geometry, Walls walls, double thicknessMm, List<Finding> against) {

  boolean fits() {
    return against.isEmpty();
  }

  /** What forbids it in short words, for a drawing that has room for a line: codes without hyphens. */
  List<String> reasons() {
    return against.stream().map(finding -> finding.code().replace('-', ' ')).distinct().toList();
  }
}
