package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.calculation.Fault;
import org.junit.jupiter.api.Test;

/** A channel whose amplifier gives nothing at the supply of the plan. */
class SilentChannelTest {

  @Test
  void itIsRefusedByNameAndNotByAFigureThatNobodyGave() {
    List<Fault> faults =
        new VehicleDraft()
            .put("/amplifiers/1/outputs/0/rails", "drop_v", "30")
            .put("/amplifiers/1/outputs/1/rails", "drop_v", "30")
            .put("/amplifiers/1/feed", "supply_v", "11")
            .refusals();
    assertEquals(1, faults.size(), faults::toString);
    assertEquals("channel-silent", faults.get(0).code());
    assertEquals("/amplifiers/1/feed/supply_v", faults.get(0).pointer());
    assertEquals(
        "At 11.0 V the rails of bass do not reach above what its output stages lose: bass gets"
            + " nothing, so no level, current or gain can be given. Check supply, rail and drop.",
        faults.get(0).detail());
  }
}
