package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.calculation.Finding;
import org.junit.jupiter.api.Test;

/** The fuse of an amplifier in a plan, held against its full sine and its own fuses. */
class FuseForBassTest {

  @Test
  void whatAFullSineDoesToTheFuseIsSaid() {
    List<Finding> said = new VehicleDraft().findings("full-sine-opens-fuse");
    assertEquals(2, said.size(), said::toString);
    assertEquals("/amplifiers/0/draw", said.get(0).pointer());
    assertTrue(said.get(0).text().contains("a fuse of 20 A"), said::toString);
  }

  @Test
  void sustainedBassGetsAFuseThatBearsIt() {
    VehicleDraft plan = new VehicleDraft().put("/amplifiers/1/feed", "sustained_bass", "true");
    double fuse = plan.answer().result().amplifiers().get(1).fuseA();
    assertEquals(25, fuse); // 23.53 A of sine over 1.1 are 21.4 A
    assertEquals(1, plan.findings("full-sine-opens-fuse").size());
    assertEquals(1, plan.findings("supply-for-music").size());
  }

  @Test
  void theAmplifiersOwnFusesStandWhereTheyWereGiven() {
    List<Finding> said =
        new VehicleDraft()
            .put("/amplifiers/1/feed", "amplifier_fuse_a", "40")
            .findings("amplifier-fuse-larger");
    assertEquals("/amplifiers/1/feed/amplifier_fuse_a", said.get(0).pointer());
  }
}
