package org.footwell.acoustic.enclosure;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.footwell.acoustic.enclosure.lowend.BoxPoint;
import org.footwell.parts.BoxPort;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class EnclosureOutsideChecks extends OutsideChecks {

  private static final String FILTERS = "scipy-vented-alignments.csv";

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("closed-box", "f3 over fc by qtc", "closed-box-small.csv")
            .printed("f3_over_fc")
            .computed(row -> ofQtc(row.number("qtc")))
            .within(0.0005),
        BoxCircuits.check("closed-box", "level_db_spl", false, BoxPoint::levelDbSpl).within(1e-5),
        phase("closed-box", false),
        BoxCircuits.check("closed-box", "displacement_mm", false, BoxPoint::displacementMm)
            .withinRelative(1e-6),
        BoxCircuits.check("vented-box", "level_db_spl", true, BoxPoint::levelDbSpl).within(1e-5),
        phase("vented-box", true),
        BoxCircuits.check("vented-box", "displacement_mm", true, BoxPoint::displacementMm)
            .withinRelative(1e-6),
        BoxCircuits.check("vented-box", "port_m_per_s", true, BoxPoint::portVelocityMPerS)
            .withinRelative(1e-6),
        OutsideCheck.of("vented-box", "f3 over fs of B4", "vented-box-thiele.csv")
            .printed("f3_over_fs")
            .computed(row -> ofFilter(row, r -> r.response().f3Hz() / BoxDrafts.FS_HZ))
            // qts is printed to 0.13 %, which moves f3 by 0.2 %.
            .within(0.003),
        filter("f3_over_fs", r -> r.response().f3Hz() / BoxDrafts.FS_HZ),
        filter("f10_over_fs", r -> r.response().f10Hz() / BoxDrafts.FS_HZ),
        filter("peak_db", r -> r.response().peakDb()).within(1e-5),
        filter("delay1", r -> r.points().get(0).groupDelayMs() / 1000 * BoxDrafts.FS_HZ),
        filter("delay2", r -> r.points().get(1).groupDelayMs() / 1000 * BoxDrafts.FS_HZ),
        found("alpha", r -> r.alpha()).withinRelative(1e-6),
        found("h", r -> r.tuningRatio()).withinRelative(1e-6),
        found("peak_db", r -> r.alignment().rippleDb()).within(1e-6),
        OutsideCheck.of("vented-box", "port length, mm", "port-by-hand.csv")
            .printed("length_mm")
            .computed(row -> port(row).lengthMm())
            .within(0.005),
        OutsideCheck.of("vented-box", "effective length, mm", "port-by-hand.csv")
            .printed("effective_length_mm")
            .computed(row -> port(row).effectiveLengthMm())
            .within(0.005));
  }

  private static OutsideCheck phase(String calculation, boolean vented) {
    return OutsideCheck.of(calculation, "phase_deg", "boxes-ngspice.csv")
        .rows(row -> BoxCircuits.isVented(row) == vented)
        .printed("phase_deg")
        // Whole turns do not count.
        .computed(
            row ->
                row.number("phase_deg")
                    + Math.IEEEremainder(
                        BoxCircuits.at(row).phaseDeg() - row.number("phase_deg"), 360))
        .within(1e-4);
  }

  private static double ofQtc(double qtc) {
    ClosedBoxDraft draft = new ClosedBoxDraft().qts(0.3);
    draft.box.volumeL(null).qtc(qtc);
    ClosedBoxResult result = draft.result();
    return result.response().f3Hz() / result.fcHz();
  }

  private static OutsideCheck filter(String column, ToDoubleFunction<VentedBoxResult> value) {
    return OutsideCheck.of("vented-box", column, FILTERS)
        .printed(column)
        .computed(row -> ofFilter(row, value))
        .withinRelative(1e-6);
  }

  /** The box found for a driver alone; no Bessel response is looked for. */
  private static OutsideCheck found(String column, ToDoubleFunction<VentedBoxResult> value) {
    return OutsideCheck.of("vented-box", column + " found", FILTERS)
        .rows(row -> !row.text("filter").equals("bessel"))
        .printed(column)
        .computed(
            row -> {
              VentedBoxDraft draft = new VentedBoxDraft().qts(row.number("qts"));
              draft.box.ql(row.number("ql"));
              return value.applyAsDouble(draft.result());
            });
  }

  private static double ofFilter(Row row, ToDoubleFunction<VentedBoxResult> value) {
    VentedBoxDraft draft = new VentedBoxDraft().qts(row.number("qts"));
    draft.tuned(BoxDrafts.VAS_L / row.number("alpha"), BoxDrafts.FS_HZ * row.number("h"));
    draft.box.ql(row.number("ql"));
    draft.at(0.7 * BoxDrafts.FS_HZ, 1.6 * BoxDrafts.FS_HZ);
    return value.applyAsDouble(draft.result());
  }

  private static VentedBoxResult.Vent port(Row row) {
    VentedBoxDraft draft = new VentedBoxDraft().tuned(row.number("volume_l"), row.number("fb_hz"));
    draft
        .port
        .diameterMm(row.number("diameter_mm"))
        .count((int) row.number("count"))
        .outerEnd(end(row.number("outer")))
        .innerEnd(end(row.number("inner")));
    return draft.result().vent();
  }

  private static BoxPort.End end(double factor) {
    return factor == 0.85 ? BoxPort.End.FLANGED : BoxPort.End.FREE;
  }
}
