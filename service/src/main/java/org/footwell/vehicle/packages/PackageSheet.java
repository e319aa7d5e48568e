package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.text.Names;
import org.footwell.vehicle.CsvSheet;
import org.footwell.vehicle.packages.PackageOptionsResult.FilledSlot;
import org.footwell.vehicle.packages.PackageOptionsResult.OfferedPackage;

/** The packages as a table to choose from: a row each, numbers unrounded. */
final class PackageSheet {

  private static final List<String> FIGURES =
      List.of(
          "package",
          "price",
          "level_db_spl",
          "lowest_hz",
          "mass_change_g",
          "verdict",
          "amplifiers");

  private PackageSheet() {}

  /** Behind the figures two columns for each slot, called after it. */
  static byte[] csv(PackageOptionsRequest q, PackageOptionsResult result) {
    CsvSheet sheet = new CsvSheet();
    List<String> names = new ArrayList<>(FIGURES);
    for (FreeSlot slot : q.slots()) {
      names.add(slot.name() + ".part");
      names.add(slot.name() + ".box");
    }
    sheet.row(names);
    for (int i = 0; i < result.packages().size(); i++) {
      sheet.row(row(i + 1, result.packages().get(i)));
    }
    return sheet.bytes();
  }

  private static List<Object> row(int number, OfferedPackage one) {
    List<Object> cells =
        new ArrayList<>(
            List.of(
                number,
                one.price().toPlainString(),
                one.levelDbSpl(),
                one.lowestHz(),
                one.massChangeG(),
                Names.of(one.verdict()),
                String.join("; ", one.amplifiers())));
    for (FilledSlot slot : one.slots()) {
      cells.add(slot.part());
      cells.add(slot.box());
    }
    return cells;
  }
}
