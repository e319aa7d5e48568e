package org.footwell.vehicle.curves;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.Position;
import org.footwell.parts.Seat;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.plot.SeenFromAbove;
import org.footwell.plot.SeenFromAbove.Kind;
import org.footwell.plot.SeenFromAbove.Spot;
import org.footwell.sheet.WrittenFigure;
import org.footwell.vehicle.curves.PlanCurvesResult.Path;

/** The cabin to scale, seen from above: seats, drivers, and the ways to the main seat. */
public final class CabinPicture {

  private final VehiclePlan plan;
  private final PlanCurvesResult curves;
  private final PlotPen pen;

  private CabinPicture(VehiclePlan plan, PlanCurvesResult curves, Reader reader) {
    this.plan = plan;
    this.curves = curves;
    pen = new PlotPen(curves.frequenciesHz(), reader);
  }

  /** The picture. */
  public static SeenFromAbove of(VehiclePlan plan, PlanCurvesResult curves, Reader reader) {
    return new CabinPicture(plan, curves, reader).picture();
  }

  private SeenFromAbove picture() {
    List<Spot> spots = new ArrayList<>();
    for (int s = 0; s < plan.seats().size(); s++) {
      Seat seat = plan.seats().get(s);
      Kind kind = s == plan.mainSeat() ? Kind.GOAL : Kind.SEAT;
      spots.add(spot(Character.toString('A' + s), seat.name(), kind, seat.head(), List.of()));
    }
    for (int d = 0; d < plan.drivers().size(); d++) {
      PlacedDriver driver = plan.drivers().get(d);
      spots.add(
          spot(
              String.valueOf(d + 1),
              Names.spelt(driver.id()),
              Kind.SOURCE,
              driver.position(),
              figures(driver.id())));
    }
    return new SeenFromAbove(
        "cabin",
        pen.text(Phrase.of(CurveWords.CABIN).own("seat", curves.mainSeat())),
        pen.text(CurveWords.CABIN_SHOWS),
        new SeenFromAbove.AboveWords(
            pen.text(CurveWords.FORWARD),
            new SeenFromAbove.Ruler(pen.figures().unit(Measure.M), pen.figures().worth(Measure.M)),
            pen.text(CurveWords.PLACE),
            pen.text(CurveWords.ARRIVALS)),
        List.of(
            column(CurveWords.PATH, Measure.M),
            column(CurveWords.DELAY, Measure.MS),
            column(CurveWords.ARRIVAL, Measure.MS)),
        spots);
  }

  private SeenFromAbove.Column column(CurveWords name, Measure unit) {
    return new SeenFromAbove.Column(pen.text(name), pen.figures().unit(unit));
  }

  private static Spot spot(
      String sign, String name, Kind kind, Position at, List<WrittenFigure> figures) {
    return new Spot(sign, name, kind, at.xM(), at.yM(), figures);
  }

  private List<WrittenFigure> figures(String driver) {
    return curves.paths().stream()
        .filter(path -> path.driver().equals(driver))
        .findFirst()
        .map(this::figures)
        .orElse(List.of());
  }

  private List<WrittenFigure> figures(Path path) {
    return List.of(
        pen.bare(Measure.M).apply(path.distanceM()),
        pen.bare(Measure.MS).apply(path.delayMs()),
        pen.bare(Measure.MS).apply(path.arrivalMs()));
  }
}
