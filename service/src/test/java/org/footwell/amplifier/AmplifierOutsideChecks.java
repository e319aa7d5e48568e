package org.footwell.amplifier;

import java.util.List;
import org.footwell.Answers;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class AmplifierOutsideChecks extends OutsideChecks {

  private static final String TABLE = "two-rating-by-hand.csv";

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("rail-match", "open_circuit_v", TABLE)
            .printed("open_circuit_v")
            .computed(row -> answer(row).openCircuitV())
            .within(0.000051),
        OutsideCheck.of("rail-match", "sag_ohm", TABLE)
            .printed("sag_ohm")
            .computed(row -> answer(row).sagOhm())
            .within(0.00000051),
        OutsideCheck.of("rail-match", "clean_power_w", TABLE)
            .printed("power_w")
            .computed(row -> answer(row).cleanPowerW())
            .within(0.000051));
  }

  private static RailMatchResult answer(Row row) {
    Ratings ratings =
        Requests.ratings(
            row.number("rating_1_load_ohm"),
            row.number("rating_1_power_w"),
            row.number("rating_2_load_ohm"),
            row.number("rating_2_power_w"));
    return Answers.of(new RailMatch(), Requests.of(row.number("load_ohm"), ratings)).result();
  }
}
