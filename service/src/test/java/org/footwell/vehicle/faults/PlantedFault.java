package org.footwell.vehicle.faults;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * One thing that is wrong in a vehicle, planted by hand into the JSON of its plan, or where no plan can
 * have it into what is measured. It shares no code with the faults that the finder tries.
 *
 * @param kinds what it may rightly be called
 * @param channels ids of the channels it is about
 * @param part coil, driver or branch, or null
 * @param vehicle the plan of what is really there
 * @param louderDb how much too loud one channel is
 * @param jointOhm resistance more in the supply of one amplifier
 * @param dead what of a channel is cut off or shorted altogether, or null
 */
record PlantedFault(
    Set<FaultKind> kinds,
    List<String> channels,
    String part,
    ObjectNode vehicle,
    double louderDb,
    double jointOhm,
    Dead dead) {

  /** A channel of which nothing is heard. */
  enum Dead {
    OPEN,
    SHORTED
  }

  /** Whether a line says this. */
  boolean is(FaultLine line) {
    return kinds.contains(line.fault())
        && (line.amplifier() != null
            ? channels.contains(line.amplifier())
            : Set.copyOf(line.channels()).equals(Set.copyOf(channels)))
        && (part == null || part.equals(line.driver()));
  }

  /** Nothing wrong. */
  static PlantedFault none(ObjectNode plan) {
    return new PlantedFault(Set.of(), List.of(), null, plan.deepCopy(), 0, 0, null);
  }

  /** Whether all of it stands in the plan of the vehicle. */
  boolean planned() {
    return louderDb == 0 && jointOhm == 0 && dead == null;
  }

  /** Everything that can be planted into a vehicle, in an order that is drawn. */
  static List<PlantedFault> in(ObjectNode plan, Random random) {
    Planter planter = new Planter(plan, random);
    List<PlantedFault> all = new ArrayList<>();
    for (int c = 0; c < plan.get("channels").size(); c++) {
      planter.addOf(c, all);
    }
    planter.addJoints(all);
    Collections.shuffle(all, random);
    return all;
  }
}
