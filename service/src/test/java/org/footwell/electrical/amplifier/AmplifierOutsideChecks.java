package org.footwell.electrical.amplifier;

import java.util.List;
import org.footwell.Answers;
import org.footwell.parts.Ratings;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class AmplifierOutsideChecks extends OutsideChecks {

  private static final String TABLE = "two-rating-by-hand.csv";
  private static final String BOOK = "textbook-internal-resistance.csv";

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
            .within(0.000051),
        OutsideCheck.of("amplifier-ratings", "open_circuit_v", BOOK)
            .printed("emf_v")
            .computed(row -> ofBook(row).openCircuitV())
            .within(0.005),
        OutsideCheck.of("amplifier-ratings", "sag_ohm", BOOK)
            .printed("inner_ohm")
            .computed(row -> ofBook(row).sagOhm())
            .within(0.0005),
        OutsideCheck.of("amplifier-ratings", "predicted clean_power_w", TABLE)
            .printed("power_w")
            .computed(AmplifierOutsideChecks::predicted)
            .within(0.000051));
  }

  private static double predicted(Row row) {
    AmplifierRatingsRequest request =
        Requests.predicted(ratings(row), row.number("load_ohm")).build();
    return Answers.of(new AmplifierRatings(), request).result().predictions().get(0).cleanPowerW();
  }

  private static AmplifierRatingsResult ofBook(Row row) {
    Ratings ratings =
        Requests.ratings(
            row.number("load_1_ohm"),
            row.number("power_1_w"),
            row.number("load_2_ohm"),
            row.number("power_2_w"));
    AmplifierRatingsRequest request = Requests.predicted(ratings, 1).build();
    return Answers.of(new AmplifierRatings(), request).result();
  }

  private static RailMatchResult answer(Row row) {
    return Answers.of(new RailMatch(), Requests.of(row.number("load_ohm"), ratings(row))).result();
  }

  private static Ratings ratings(Row row) {
    return Requests.ratings(
        row.number("rating_1_load_ohm"),
        row.number("rating_1_power_w"),
        row.number("rating_2_load_ohm"),
        row.number("rating_2_power_w"));
  }
}
