package org.footwell.vehicle.curves;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.plot.Axis;
import org.footwell.plot.Dots;
import org.footwell.vehicle.PlanReviewResult.FedLine;
import org.footwell.vehicle.PlanReviewResult.SupplyLine;

/** What voltage is left at the battery and at each amplifier, situation by situation. */
public final class SupplyPlot {

  private final VehiclePlan plan;
  private final PlotPen pen;

  private SupplyPlot(VehiclePlan plan, Reader reader) {
    this.plan = plan;
    pen = new PlotPen(List.of(), reader);
  }

  /** The plot; empty where the plan has no supply. */
  public static Optional<Dots> of(VehiclePlan plan, List<SupplyLine> supply, Reader reader) {
    return supply == null || supply.isEmpty()
        ? Optional.empty()
        : Optional.of(new SupplyPlot(plan, reader).plot(supply));
  }

  private Dots plot(List<SupplyLine> supply) {
    List<Dots.Group> groups = supply.stream().map(this::situation).toList();
    DoubleSummaryStatistics volts =
        groups.stream()
            .flatMap(group -> group.rows().stream())
            .flatMap(row -> row.values().stream())
            .mapToDouble(Double::doubleValue)
            .filter(Double::isFinite)
            .summaryStatistics();
    double low = volts.getCount() == 0 ? 0 : volts.getMin();
    double high = volts.getCount() == 0 ? 1 : volts.getMax();
    return new Dots(
        "supply",
        pen.text(CurveWords.SUPPLY),
        pen.text(CurveWords.SUPPLY_SHOWS),
        Axis.around(pen.text(CurveWords.VOLTAGE), pen.figures(), low, high),
        pen.text(CurveWords.WHERE),
        marks().stream().map(pen::text).toList(),
        groups,
        pen.bare(Measure.V));
  }

  private boolean limited() {
    return plan.amplifiers().stream().anyMatch(amplifier -> amplifier.minimumV() != null);
  }

  private List<CurveWords> marks() {
    return limited()
        ? List.of(CurveWords.WITH_PROGRAMME, CurveWords.WITH_SINE, CurveWords.SWITCHES_OFF)
        : List.of(CurveWords.WITH_PROGRAMME, CurveWords.WITH_SINE);
  }

  private Dots.Group situation(SupplyLine line) {
    List<Dots.Row> rows = new ArrayList<>();
    if (line.batteryV() != null) {
      rows.add(row(pen.text(CurveWords.BATTERY), line.batteryV(), line.sineBatteryV(), null));
      for (FedLine fed : line.amplifiers()) {
        rows.add(row(Names.spelt(fed.id()), fed.voltageV(), fed.sineV(), leastV(fed.id())));
      }
    }
    return new Dots.Group(pen.text(line.situation()), rows, pen.text(CurveWords.NO_VOLTAGE));
  }

  /** Below which an amplifier switches off, or null. */
  private Double leastV(String id) {
    return plan.amplifiers().stream()
        .filter(amplifier -> amplifier.id().equals(id))
        .map(PlannedAmplifier::minimumV)
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  private Dots.Row row(String name, Double... volts) {
    return new Dots.Row(
        name,
        Arrays.stream(volts)
            .limit(marks().size())
            .map(v -> v == null ? (Double) Double.NaN : v)
            .toList());
  }
}
