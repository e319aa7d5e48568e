package org.footwell.vehicle.faults;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.footwell.calculation.Run;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.reading.Modelled;

/** Faults of a vehicle one at a time, as far as a review looks for them. */
public final class SingleFaults {

  private final Modelled base;
  private final Predicate<FaultKind> kinds;
  private final Run run;
  private final Figures figures;
  private final Trial trial;

  /** Of some kinds. */
  public SingleFaults(Modelled base, Predicate<FaultKind> kinds, Run run) {
    this.base = base;
    this.kinds = kinds;
    this.run = run;
    figures = Figures.measured(base);
    trial = new Trial(base, figures, run);
  }

  /**
   * A fault with what it leaves unexplained.
   *
   * @param misfit RMS of how far all figures are off with it, each over its error
   */
  public record Single(FaultLine line, double misfit) {}

  /** RMS of how far all figures are off, each over its error. */
  public double misfit() {
    return trial.none().misfit(figures.size());
  }

  /** Channels of which a figure is off by so many of its errors, farthest off first. */
  public List<Integer> channelsOff(double errors) {
    double[] off = trial.off(trial.none());
    double[] squares = new double[base.heard().size()];
    boolean[] far = new boolean[squares.length];
    for (int i = 0; i < off.length; i++) {
      VehicleFigure figure = figures.all().get(i);
      if (figure.ofChannel()) {
        squares[figure.place()] += off[i] * off[i];
        far[figure.place()] |= Math.abs(off[i]) >= errors;
      }
    }
    return IntStream.range(0, squares.length)
        .filter(c -> far[c])
        .boxed()
        .sorted(Comparator.comparingDouble((Integer c) -> -squares[c]))
        .toList();
  }

  /** The faults of some channels, the one that explains best first. */
  public List<Single> of(List<Integer> channels) {
    VehiclePlan plan = base.index().plan();
    return new FaultList(base.index(), run)
        .of(channels, List.of()).stream()
            .filter(fault -> kinds.test(fault.kind()))
            .map(fault -> trial.tried(trial.none(), fault).best())
            .sorted(Comparator.comparingDouble(one -> -one.evidence()))
            .map(one -> new Single(one.lines(plan).get(0), one.misfit(figures.size())))
            .toList();
  }
}
