package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.footwell.physics.Decibels;
import org.junit.jupiter.api.Test;

/** A boost counts however narrow it is, also between the places of the grid. */
class NarrowBoostTest {

  @Test
  void aNarrowPeakClipsByAllItLifts() {
    ObjectNode plan = ModelledPlans.json("camper-van");
    ObjectNode peak = (ObjectNode) plan.at("/channels/2/equaliser/0");
    peak.put("frequency_hz", 1300).put("q", 60).put("gain_db", 12);
    double boost = ModelledPlans.modelled(plan).model().channels().get(2).boost();
    // A Linkwitz-Riley high-pass of fourth order leaves x⁴/(1 + x⁴) of it, 6.5 times its corner.
    double left = Math.pow(6.5, 4) / (1 + Math.pow(6.5, 4));
    assertEquals(12 + Decibels.ofAmplitude(left), Decibels.ofAmplitude(boost), 1e-4);
  }
}
