package org.footwell.acoustic.enclosure;

import java.util.function.ToDoubleFunction;
import org.footwell.acoustic.enclosure.lowend.BoxPoint;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.LeakyBaffle;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.ReferenceTable.Row;

/** The circuits of the netlists as requests: mechanics turned into Thiele/Small parameters. */
final class BoxCircuits {

  private static final double BL = 9.5;
  private static final double MMS = 0.062;
  private static final double CMS = 0.28e-3;
  private static final double RMS = 2.1;
  private static final double SD = 0.033;
  private static final double AIR = 1.2041 * 343.2 * 343.2;

  private BoxCircuits() {}

  static BoxPoint at(Row row) {
    double hz = row.number("frequency_hz");
    return switch (row.text("circuit")) {
      case "closed" -> closed(hz, null, null);
      case "closed-lossy" -> closed(hz, 8.0, 5.0);
      case "door-heard" -> door(hz, true);
      case "door-away" -> door(hz, false);
      case "vented" -> vented(hz);
      case "vented-lossy" -> ventedLossy(hz);
      default -> throw new IllegalArgumentException(row.text("circuit"));
    };
  }

  static boolean isVented(Row row) {
    return row.text("circuit").startsWith("vented");
  }

  /** The woofer of the netlists. */
  private static DriverBuilder woofer() {
    double re = 3.4;
    double ws = 1 / Math.sqrt(MMS * CMS);
    return BoxDrafts.driver()
        .reOhm(re)
        .leMh(1.2)
        .fsHz(ws / (2 * Math.PI))
        .qms(ws * MMS / RMS)
        .qes(re * ws * MMS / (BL * BL))
        .vasL(AIR * SD * SD * CMS * 1000)
        .sdCm2(SD * 1e4);
  }

  private static BoxPoint closed(double hz, Double ql, Double qa) {
    ClosedBoxDraft draft = new ClosedBoxDraft(woofer()).at(hz);
    draft.box.volumeL(25.0).ql(ql).qa(qa);
    return draft.result().points().get(0);
  }

  private static BoxPoint door(double hz, boolean heard) {
    ClosedBoxDraft draft = new ClosedBoxDraft(woofer()).at(hz);
    draft.played.baffle(new LeakyBaffle(60.0, 0.5, heard));
    return draft.result().points().get(0);
  }

  private static BoxPoint vented(double hz) {
    VentedBoxDraft draft = new VentedBoxDraft(woofer()).tuned(50, 35).at(hz);
    draft.port.diameterMm(diameterMm(60));
    draft.box.ql(7.0);
    return draft.result().points().get(0);
  }

  private static BoxPoint ventedLossy(double hz) {
    VentedBoxDraft draft = new VentedBoxDraft(woofer()).tuned(40, 42).at(hz);
    draft.port.diameterMm(diameterMm(40));
    draft.box.ql(10.0).qa(30.0).qp(20.0);
    draft.played.sourceOhm(0.5);
    return draft.result().points().get(0);
  }

  private static double diameterMm(double cm2) {
    return 20 * Math.sqrt(cm2 / Math.PI);
  }

  static OutsideCheck check(
      String calculation, String quantity, boolean vented, ToDoubleFunction<BoxPoint> value) {
    return OutsideCheck.of(calculation, quantity, "boxes-ngspice.csv")
        .rows(row -> isVented(row) == vented)
        .printed(quantity)
        .computed(row -> value.applyAsDouble(at(row)));
  }
}
