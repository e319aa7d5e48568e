package org.footwell.electrical.heat;

import java.util.List;
import org.footwell.electrical.heat.AmplifierHeatRequest.ChannelStage;
import org.footwell.electrical.heat.AmplifierHeatResult.ChannelHeat;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class HeatOutsideChecks extends OutsideChecks {

  private static final String ID = "amplifier-heat";
  private static final String BOOK = "class-b.csv";
  private static final String CIRCUIT = "push-pull-ngspice.csv";

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of(ID, "output_power_w, class B", BOOK)
            .printed("output_w")
            .computed(row -> book(row).sine().outputPowerW())
            .within(0.000051),
        OutsideCheck.of(ID, "heat_w, class B", BOOK)
            .printed("dissipation_w")
            .computed(row -> book(row).sine().heatW())
            .within(0.000051),
        OutsideCheck.of(ID, "efficiency, class B", BOOK)
            .printed("efficiency_ratio")
            .computed(row -> book(row).sine().outputPowerW() / book(row).sine().railPowerW())
            // The swing of the row at 2/pi is itself rounded in the last digit.
            .within(0.00000091),
        OutsideCheck.of(ID, "worst_heat_w, class B", BOOK)
            .printed("largest_dissipation_w")
            .computed(row -> book(row).worstHeatW())
            .rows(row -> row.number("swing_ratio") == 1)
            .within(0.0000051),
        OutsideCheck.of(ID, "rail_current_a", CIRCUIT)
            .printed("rail_current_a")
            .computed(row -> circuit(row).sine().railCurrentA())
            .withinRelative(0.001),
        OutsideCheck.of(ID, "output_power_w", CIRCUIT)
            .printed("output_w")
            .computed(row -> circuit(row).sine().outputPowerW())
            .withinRelative(0.001),
        OutsideCheck.of(ID, "heat_w", CIRCUIT)
            .printed("heat_w")
            .computed(row -> circuit(row).sine().heatW())
            .withinRelative(0.001),
        OutsideCheck.of(ID, "mean current, Gaussian, A", "scipy-mean-rectified.csv")
            .printed("mean_a")
            .computed(row -> MeanCurrent.gaussian(row.number("rms_a"), row.number("quiescent_a")))
            .withinRelative(1e-9));
  }

  private static ChannelHeat book(Row row) {
    ChannelStage channel = Requests.classB(row.number("supply_v"), 0, row.number("load_ohm"), 0);
    return first(Requests.swing(row.number("swing_ratio"), channel));
  }

  static ChannelHeat circuit(Row row) {
    double rail = row.number("rail_v");
    double quiescent = row.number("quiescent_a");
    double resistance = row.number("resistance_ohm");
    double reactance = row.number("reactance_ohm");
    double load = Math.hypot(resistance, reactance);
    double phase = Math.toDegrees(Math.atan2(reactance, resistance));
    ChannelStage channel =
        quiescent == 0
            ? Requests.classB(rail, 0, load, phase)
            : Requests.classAb(rail, 0, load, phase, quiescent);
    return first(Requests.swing(row.number("peak_v") / rail, channel));
  }

  private static ChannelHeat first(AmplifierHeatRequest request) {
    return Requests.result(request).channels().get(0);
  }
}
