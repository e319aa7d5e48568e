package org.footwell.load;

import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;
import org.footwell.Answers;
import org.footwell.physics.Conductors;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class LoadOutsideChecks extends OutsideChecks {

  private static final int MOST = 7;

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("wiring-load", "networks of n like coils", "oeis-series-parallel.csv")
            .rows(row -> coils(row) <= MOST)
            .printed("a000084")
            .computed(row -> Networks.of(coils(row)).size())
            .within(0),
        OutsideCheck.of("wiring-load", "distinct loads, exact", "oeis-series-parallel.csv")
            .rows(row -> coils(row) <= MOST)
            .printed("a048211")
            .computed(LoadOutsideChecks::distinctExact)
            .within(0),
        OutsideCheck.of("wiring-load", "distinct load_ohm", "oeis-series-parallel.csv")
            .rows(row -> coils(row) <= MOST)
            .printed("a048211")
            .computed(LoadOutsideChecks::distinctComputed)
            .within(0),
        OutsideCheck.of("wiring-load", "conductor_ohm_per_km", "iec-60228-class-5.csv")
            .printed("resistance_ohm_per_km")
            .computed(row -> Conductors.CLASS_5_OHM_PER_KM.at(row.number("area_mm2")))
            .within(0));
  }

  private static int coils(Row row) {
    return (int) row.number("n");
  }

  private static double distinctExact(Row row) {
    return Networks.of(coils(row)).stream().map(Networks::exact).distinct().count();
  }

  /** Loads of the written networks as the service answers them, told apart to nine digits. */
  private static double distinctComputed(Row row) {
    return Networks.of(coils(row)).stream()
        .map(network -> Requests.network(network.text(BigFraction::toString)))
        .map(request -> Answers.of(new WiringLoad(), request).result().loadOhm())
        .map(ohm -> Math.round(ohm * 1e9))
        .distinct()
        .count();
  }
}
