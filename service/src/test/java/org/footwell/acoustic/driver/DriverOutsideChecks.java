package org.footwell.acoustic.driver;

import static org.footwell.acoustic.driver.Sheets.rated;
import static org.footwell.acoustic.driver.Sheets.result;

import java.util.List;
import java.util.stream.Collectors;
import org.footwell.acoustic.driver.DriverCheckResult.Adjusted;
import org.footwell.acoustic.driver.DriverCheckResult.Completed;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;
import org.footwell.physics.ThieleSmall;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable;
import org.footwell.reference.ReferenceTable.Row;

class DriverOutsideChecks extends OutsideChecks {

  private static final String RECONCILED = "scipy-reconciled-drivers.csv";
  private static final String WOOFER = "netlist-woofer.csv";

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("driver-check", "adjusted figures", RECONCILED)
            .printed("adjusted")
            .computed(row -> adjusted(record(row).adjusted(), row.text("field")))
            .withinRelative(1e-6),
        // The table's pseudo-inverse stands on differences of the model.
        OutsideCheck.of("driver-check", "largest residual in its own deviations", RECONCILED)
            .rows(DriverOutsideChecks::isFarthest)
            .printed("deviations")
            .computed(row -> record(row).farthestDeviations())
            .withinRelative(1e-3),
        OutsideCheck.of("driver-check", "figures filled in", WOOFER)
            .rows(row -> isDerived(row.text("quantity")))
            .printed("value")
            .computed(row -> derived(row.text("quantity")))
            .withinRelative(1e-6),
        OutsideCheck.of(
                "driver-check", "level of an efficiency, dB SPL", "efficiency-and-level.csv")
            .printed("level_db_spl")
            .computed(
                row -> ThieleSmall.EFFICIENCY_LEVEL.at(row.number("efficiency"), 1.2041, 343.2))
            .within(0.5));
  }

  private static DriverCheckResult record(Row row) {
    DriverCheckRequestBuilder draft =
        rated().tolerance(Sheets.EXACT).ratedOhm(row.number("rated_ohm"));
    Sheets.FIGURES.forEach(
        (field, set) -> {
          if (!row.text(field).isEmpty()) {
            set.accept(draft, row.number(field));
          }
        });
    if (!row.text("level_db_spl").isEmpty()) {
      boolean perWatt = row.text("basis").equals("one_watt");
      draft.sensitivity(
          new Sensitivity(
              row.number("level_db_spl"),
              perWatt ? Basis.ONE_WATT : Basis.TWO_POINT_EIGHT_THREE_VOLT));
    }
    return result(draft);
  }

  private static double adjusted(Adjusted figures, String field) {
    return switch (field) {
      case "re_ohm" -> figures.reOhm();
      case "fs_hz" -> figures.fsHz();
      case "qms" -> figures.qms();
      case "qes" -> figures.qes();
      case "qts" -> figures.qts();
      case "vas_l" -> figures.vasL();
      case "sd_cm2" -> figures.sdCm2();
      case "bl_tm" -> figures.blTm();
      case "mms_g" -> figures.mmsG();
      case "cms_mm_per_n" -> figures.cmsMmPerN();
      case "rms_kg_per_s" -> figures.rmsKgPerS();
      case "level_db_spl" -> figures.sensitivityDbSpl();
      default -> throw new IllegalArgumentException(field);
    };
  }

  private static boolean isFarthest(Row row) {
    double largest =
        ReferenceTable.load(RECONCILED).rows().stream()
            .filter(other -> other.text("case").equals(row.text("case")))
            .mapToDouble(other -> other.number("deviations"))
            .max()
            .orElseThrow();
    return row.number("deviations") == largest;
  }

  private static boolean isDerived(String quantity) {
    return List.of("fs_hz", "qms", "qes", "vas_l").contains(quantity);
  }

  /** From what the netlist states: mass, compliance, losses, force factor, resistance, area. */
  private static double derived(String quantity) {
    var given =
        ReferenceTable.load(WOOFER).rows().stream()
            .collect(Collectors.toMap(row -> row.text("quantity"), row -> row.number("value")));
    Completed completed =
        result(
                rated()
                    .tolerance(Sheets.EXACT)
                    .reOhm(given.get("re_ohm"))
                    .mmsG(given.get("mms_g"))
                    .cmsMmPerN(given.get("cms_mm_per_n"))
                    .blTm(given.get("bl_tm"))
                    .sdCm2(330.0)
                    .rmsKgPerS(2.1))
            .completed();
    return switch (quantity) {
      case "fs_hz" -> completed.fsHz();
      case "qms" -> completed.qms();
      case "qes" -> completed.qes();
      case "vas_l" -> completed.vasL();
      default -> throw new IllegalArgumentException(quantity);
    };
  }
}
