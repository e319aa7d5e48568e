package org.footwell.vehicle.faults;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.faults.FaultFinderResult.NextMeasurement;
import org.footwell.vehicle.reading.Modelled;

/** What to measure next so that two explanations part: where they lie farthest apart over its error. */
final class Telling {

  /** Nearer than this they hardly part. */
  private static final double LEAST_APART = 1;

  private static final int MOST = 3;

  private final Modelled base;
  private final Figures measured;
  private final List<VehicleFigure> possible;
  private final Predictor predictor;
  private final Tested one;
  private final Tested two;

  Telling(Modelled base, Figures measured, Tested one, Tested two) {
    this.base = base;
    this.one = one;
    this.two = two;
    TreeSet<Integer> channels = new TreeSet<>();
    for (Tested tested : List.of(one, two)) {
      tested.faults().forEach(fault -> channels.addAll(fault.channels()));
    }
    possible = Figures.possible(base, List.copyOf(channels));
    this.measured = measured;
    predictor = new Predictor(base, possible);
  }

  private double[] predicted(Tested tested) {
    List<ChannelPart> parts = new ArrayList<>();
    for (int c = 0; c < tested.parts().size(); c++) {
      ChannelPart part = tested.parts().get(c);
      parts.add(predictor.part(c, part.chain(), part.state()));
    }
    return predictor.joined(parts, tested.jointOhm());
  }

  /** The most telling, each kind once for each place; what is new first, none where nothing would tell. */
  List<NextMeasurement> next() {
    double[] off = new Fit(possible).differences(predicted(one), predicted(two));
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < off.length; i++) {
      off[i] = Double.isNaN(off[i]) ? 0 : Math.abs(off[i]);
      order.add(i);
    }
    order.sort(
        Comparator.comparing((Integer i) -> measured.has(possible.get(i)))
            .thenComparingDouble(i -> -off[i]));
    List<NextMeasurement> next = new ArrayList<>();
    List<VehicleFigure> told = new ArrayList<>();
    for (int i : order) {
      VehicleFigure figure = possible.get(i);
      VehicleFigure own = new VehicleFigure(figure.kind(), figure.place(), 0);
      if (off[i] >= LEAST_APART && next.size() < MOST && !told.contains(own)) {
        told.add(own);
        next.add(line(figure, off[i]));
      }
    }
    return next;
  }

  private NextMeasurement line(VehicleFigure figure, double apart) {
    VehiclePlan plan = base.index().plan();
    boolean frequency =
        figure.kind() == FigureKind.IMPEDANCE || figure.kind() == FigureKind.RESPONSE;
    return new NextMeasurement(
        figure.kind(),
        figure.ofChannel() ? plan.channels().get(figure.place()).id() : null,
        figure.ofChannel() ? null : plan.amplifiers().get(figure.place()).id(),
        frequency ? figure.at() : null,
        apart,
        measured.has(figure));
  }
}
