package org.footwell.vehicle.sheets;

import java.util.List;
import org.footwell.parts.plan.PlannedPart;

/** How sheets call what a plan knows by ids. */
final class SheetNames {

  private SheetNames() {}

  /** Ids are written without blanks. */
  static String spelt(String id) {
    return id.replace('_', ' ');
  }

  /** The part of that id. */
  static PlannedPart part(List<PlannedPart> parts, String id) {
    return parts.stream().filter(part -> part.id().equals(id)).findFirst().orElseThrow();
  }
}
