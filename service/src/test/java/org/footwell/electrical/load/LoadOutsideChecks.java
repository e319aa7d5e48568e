package org.footwell.electrical.load;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.fraction.BigFraction;
import org.footwell.Answers;
import org.footwell.physics.Conductors;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class LoadOutsideChecks extends OutsideChecks {

  private static final String NETWORKS = "oeis-series-parallel.csv";

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("wiring-load", "distinct loads, exact", NETWORKS)
            .printed("a048211")
            .computed(LoadOutsideChecks::distinctExact)
            .within(0),
        OutsideCheck.of("wiring-load", "distinct load_ohm", NETWORKS)
            .printed("a048211")
            .computed(LoadOutsideChecks::distinctComputed)
            .within(0),
        OutsideCheck.of("wiring-options", "network_count of like coils", NETWORKS)
            .printed("a000084")
            .computed(row -> networkCount(Collections.nCopies(coils(row), 4.0)))
            .within(0),
        OutsideCheck.of("wiring-options", "network_count of unlike coils", NETWORKS)
            .rows(row -> coils(row) <= FewCoils.MOST_UNLIKE)
            .printed("a006351")
            .computed(row -> networkCount(unlike(coils(row))))
            .within(0),
        OutsideCheck.of("wiring-options", "networks of 7 unlike coils", NETWORKS)
            .rows(row -> coils(row) == 7)
            .printed("a006351")
            .computed(row -> AllNetworks.unlike(coils(row)).size())
            .within(0),
        OutsideCheck.of("wiring-load", "conductor_ohm_per_km", "iec-60228-class-5.csv")
            .printed("resistance_ohm_per_km")
            .computed(row -> Conductors.CLASS_5_OHM_PER_KM.at(row.number("area_mm2")))
            .within(0));
  }

  private static int coils(Row row) {
    return (int) row.number("n");
  }

  private static List<Double> unlike(int coils) {
    return IntStream.rangeClosed(1, coils).mapToObj(ohm -> (double) ohm).toList();
  }

  private static double networkCount(List<Double> ratedOhms) {
    return Options.answer(Options.of(ratedOhms, 0.1)).result().networkCount();
  }

  private static double distinctExact(Row row) {
    return AllNetworks.alike(coils(row)).stream().map(AllNetworks::exact).distinct().count();
  }

  /** Loads of the written networks as the service answers them, told apart to nine digits. */
  private static double distinctComputed(Row row) {
    return AllNetworks.alike(coils(row)).stream()
        .map(network -> Requests.network(network.text(BigFraction::toString)))
        .map(request -> Answers.of(new WiringLoad(), request).result().loadOhm())
        .map(ohm -> Math.round(ohm * 1e9))
        .distinct()
        .count();
  }
}
