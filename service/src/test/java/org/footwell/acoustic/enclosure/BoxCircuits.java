package org.footwell.acoustic.enclosure;

import java.util.function.ToDoubleFunction;
import org.footwell.acoustic.enclosure.ClosedBoxRequest.LeakyBaffle;
import org.footwell.acoustic.enclosure.lowend.BoxPoint;
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
    String circuit = row.text("circuit");
    BoxDraft draft = woofer().at(row.number("frequency_hz"));
    return switch (circuit) {
      case "closed" -> closed(draft, null, null);
      case "closed-lossy" -> closed(draft, 8.0, 5.0);
      case "door-heard" -> door(draft, true);
      case "door-away" -> door(draft, false);
      case "vented" -> vented(draft, 50, 35, 7, null, null, 60);
      case "vented-lossy" -> {
        draft.source = 0.5;
        yield vented(draft, 40, 42, 10, 30.0, 20.0, 40);
      }
      default -> throw new IllegalArgumentException(circuit);
    };
  }

  static boolean isVented(Row row) {
    return row.text("circuit").startsWith("vented");
  }

  /** The woofer of the netlists. */
  static BoxDraft woofer() {
    BoxDraft draft = new BoxDraft();
    double ws = 1 / Math.sqrt(MMS * CMS);
    draft.re = 3.4;
    draft.le = 1.2;
    draft.fs = ws / (2 * Math.PI);
    draft.qms = ws * MMS / RMS;
    draft.qes = draft.re * ws * MMS / (BL * BL);
    draft.vas = AIR * SD * SD * CMS * 1000;
    draft.sd = SD * 1e4;
    return draft;
  }

  private static BoxPoint closed(BoxDraft draft, Double ql, Double qa) {
    draft.volume = 25.0;
    draft.ql = ql;
    draft.qa = qa;
    return draft.closed().points().get(0);
  }

  private static BoxPoint door(BoxDraft draft, boolean heard) {
    draft.baffle = new LeakyBaffle(60.0, 0.5, heard);
    return draft.closed().points().get(0);
  }

  private static BoxPoint vented(
      BoxDraft draft, double volume, double fb, double ql, Double qa, Double qp, double cm2) {
    draft.tuned(volume, fb);
    draft.diameter = 20 * Math.sqrt(cm2 / Math.PI);
    draft.ql = ql;
    draft.qa = qa;
    draft.qp = qp;
    return draft.vented().points().get(0);
  }

  static OutsideCheck check(
      String calculation, String quantity, boolean vented, ToDoubleFunction<BoxPoint> value) {
    return OutsideCheck.of(calculation, quantity, "boxes-ngspice.csv")
        .rows(row -> isVented(row) == vented)
        .printed(quantity)
        .computed(row -> value.applyAsDouble(at(row)));
  }
}
