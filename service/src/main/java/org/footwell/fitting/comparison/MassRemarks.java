package org.footwell.fitting.comparison;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.comparison.DriverComparisonRequest.AddedItem;
import org.footwell.fitting.comparison.DriverComparisonResult.VehicleTotals;
import org.footwell.fitting.comparison.sides.ComparedPosition;

/** What there is to say about mass: of single parts, on the doors, and of the vehicle. */
final class MassRemarks {

  /** From here on added mass is worth a word, g; common practice, no source. */
  private static final double HEAVIER_G = 10_000;

  private MassRemarks() {}

  static void remark(DriverComparisonRequest q, VehicleTotals totals, Run run) {
    for (int i = 0; i < q.positions().size(); i++) {
      ComparedPosition position = q.positions().get(i);
      heavy(
          Phrase.of(ComparisonWords.NEW_PART_OF).own("name", position.name()),
          position.replacement().massG(),
          q.heavyG(),
          "/positions/" + i + "/replacement/mass_g",
          run);
    }
    for (int i = 0; i < q.additions().size(); i++) {
      AddedItem item = q.additions().get(i);
      heavy(
          Phrase.of(ComparisonWords.ITEM).own("name", item.name()),
          item.massG(),
          q.heavyG(),
          "/additions/" + i + "/mass_g",
          run);
      missing(item, "/additions/" + i, run);
    }
    Double doors = totals.doorMassChangeG();
    if (doors != null && doors >= q.heavyDoorsG()) {
      run.find(ComparisonFinding.DOORS_HEAVIER)
          .at("/positions")
          .value(doors / 1000)
          .limit(q.heavyDoorsG() / 1000);
    }
    vehicle(q, totals.massChangeG(), run);
  }

  private static void vehicle(DriverComparisonRequest q, Double change, Run run) {
    if (change == null) {
      return;
    }
    if (q.payloadLeftG() != null && change > q.payloadLeftG()) {
      run.find(ComparisonFinding.PAYLOAD_EXCEEDED)
          .at("/payload_left_g")
          .value(change / 1000)
          .limit(q.payloadLeftG() / 1000);
    } else if (change > HEAVIER_G) {
      run.find(ComparisonFinding.VEHICLE_HEAVIER)
          .at("/positions")
          .value(change / 1000)
          .limit(HEAVIER_G / 1000);
    }
  }

  private static void heavy(Phrase part, Double massG, double heavyG, String at, Run run) {
    if (isHeavy(massG, heavyG)) {
      run.find(ComparisonFinding.HEAVY_PART)
          .at(at)
          .value(massG / 1000)
          .limit(heavyG / 1000)
          .with("part", part);
    }
  }

  static boolean isHeavy(Double massG, double heavyG) {
    return massG != null && massG >= heavyG;
  }

  private static void missing(AddedItem item, String at, Run run) {
    if (item.massG() == null || item.price() == null) {
      List<String> what = new ArrayList<>(2);
      if (item.massG() == null) {
        what.add("mass_g");
      }
      if (item.price() == null) {
        what.add("price");
      }
      run.find(ComparisonFinding.DATA_NOT_GIVEN)
          .at(at)
          .own("name", item.name())
          .fields("what", what);
    }
  }
}
