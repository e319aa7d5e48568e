package org.footwell.vehicle.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.footwell.calculation.Run;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlannedChannelBuilder;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.FilterChain;
import org.footwell.vehicle.reading.ModelReader;
import org.footwell.vehicle.reading.Modelled;

/**
 * Puts faults into the model and holds it against what was measured. The figure of a fault that may be
 * any is fitted.
 */
final class Trial {

  /** A step of this part of a spread tells how predictions move with a figure. */
  private static final double STEP = 0.01;

  private final Run run;
  private final List<VehicleFigure> figures;
  private final Predictor predictor;
  private final Fit fit;
  private final double[] measured;
  private final Tested none;

  Trial(Modelled base, Figures figures, Run run) {
    this.run = run;
    this.figures = figures.all();
    predictor = new Predictor(base, figures.all());
    fit = new Fit(figures.all());
    measured = new double[figures.size()];
    for (int i = 0; i < measured.length; i++) {
      measured[i] = predictor.scaled(figures.all().get(i), figures.value(i));
    }
    double[] joints = new double[base.amplifiers().size()];
    double[] planned = predictor.joined(predictor.planned(), joints);
    none =
        new Tested(
            List.of(),
            List.of(),
            List.of(),
            base.index().plan(),
            predictor.planned(),
            joints,
            planned,
            fit.square(measured, planned));
  }

  /** Nothing wrong. */
  Tested none() {
    return none;
  }

  Fit fit() {
    return fit;
  }

  /** Differences of what was measured from what a vehicle would give, in units of their errors. */
  double[] off(Tested one) {
    return fit.differences(measured, one.predicted());
  }

  /** Sums of the squares of the differences of each channel; infinite where one could not be measured. */
  double[] squares(Tested one) {
    double[] off = off(one);
    double[] squares = new double[one.parts().size()];
    for (int i = 0; i < off.length; i++) {
      if (figures.get(i).ofChannel()) {
        squares[figures.get(i).place()] +=
            Double.isNaN(off[i]) ? Double.POSITIVE_INFINITY : off[i] * off[i];
      }
    }
    return squares;
  }

  /** What errors alone exceed once in twenty times, of each channel. */
  double[] usualSquares() {
    double[] usual = new double[none.parts().size()];
    for (int c = 0; c < usual.length; c++) {
      int channel = c;
      long count =
          figures.stream().filter(one -> one.ofChannel() && one.place() == channel).count();
      usual[c] = ChiSquare.usual(count);
    }
    return usual;
  }

  /** A vehicle with one fault more than another, with a figure. */
  private Tested with(Tested on, VehicleFault fault, double figure, double occam) {
    run.checkDeadline();
    VehiclePlan plan = fault.change().in(on.plan(), figure);
    List<ChannelPart> parts = new ArrayList<>(on.parts());
    ModelReader reader = null;
    for (int c : touched(on, fault)) {
      ChannelPart before = on.parts().get(c);
      PlannedChannel was = on.plan().channels().get(c);
      PlannedChannel is = plan.channels().get(c);
      ChannelState state = before.state();
      ChannelChain chain = before.chain();
      if (fault.kind() == FaultKind.GAIN_OFF) {
        double volts = state.sourceV() * Decibels.toAmplitude(figure);
        state = new ChannelState(volts, state.trimDb(), state.polarity(), state.delayMs());
      } else {
        state = state.delayed(state.delayMs(), state.polarity() * was.polarity() * is.polarity());
        if (fault.kind() == FaultKind.BOX_LEAKS || !bare(was).equals(bare(is))) {
          reader = reader == null ? new ModelReader(PlanIndex.of(plan, run), run) : reader;
          chain = reader.chain(c);
        } else if (!was.equals(is)) {
          chain = chain.refiltered(FilterChain.of(plan, is, chain.grid()));
        }
      }
      parts.set(c, predictor.part(c, chain, state));
    }
    double[] joints = on.jointOhm().clone();
    if (fault.amplifier() >= 0) {
      joints[fault.amplifier()] += JointResistance.ohm(figure);
    }
    double[] predicted = predictor.joined(parts, joints);
    return new Tested(
        added(on.faults(), fault),
        added(on.figures(), figure),
        added(on.occam(), occam),
        plan,
        parts,
        joints,
        predicted,
        fit.square(measured, predicted));
  }

  private static <T> List<T> added(List<T> all, T one) {
    List<T> more = new ArrayList<>(all);
    more.add(one);
    return List.copyOf(more);
  }

  /** The channels of a fault; where wires are swapped what it is about may hang on the other one. */
  private static Iterable<Integer> touched(Tested on, VehicleFault fault) {
    TreeSet<Integer> touched = new TreeSet<>(fault.channels());
    for (VehicleFault other : on.faults()) {
      if (other.kind() == FaultKind.WIRES_SWAPPED && !fault.channels().isEmpty()) {
        touched.addAll(other.channels());
      }
    }
    return touched;
  }

  /** A channel without its filters and its polarity. */
  private static PlannedChannel bare(PlannedChannel channel) {
    return PlannedChannelBuilder.builder(channel).highPass(null).lowPass(null).polarity(1).build();
  }

  /**
   * A fault tried.
   *
   * @param best with the figure that fits best
   * @param seen the largest difference it makes, over the figures it may have, in standard deviations
   */
  record Tried(Tested best, double seen) {}

  /** A vehicle with one fault more than another, its figure fitted to what was measured. */
  Tried tried(Tested on, VehicleFault fault) {
    List<Double> figures = fault.range().tried();
    double[] squares = new double[figures.size()];
    double seen = 0;
    int at = 0;
    for (int i = 0; i < squares.length; i++) {
      Tested one = with(on, fault, figures.get(i), 0);
      seen = Math.max(seen, distance(on, one));
      squares[i] = one.square();
      at = squares[i] < squares[at] ? i : at;
    }
    Tested best =
        fault.range().continuous()
            ? refined(on, fault, at)
            : with(on, fault, figures.get(at), Occam.ofValues(squares, squares[at]));
    return new Tried(best, seen);
  }

  private Tested refined(Tested on, VehicleFault fault, int at) {
    List<Double> tried = fault.range().tried();
    double from = tried.get(Math.max(0, at - 1));
    double to = tried.get(Math.min(tried.size() - 1, at + 1));
    double figure =
        FigureFit.best(any -> finite(with(on, fault, any, 0).square()), from, to, tried.get(at));
    double step = STEP * fault.range().spread();
    double[] up = with(on, fault, figure + step, 0).predicted();
    double[] down = with(on, fault, figure - step, 0).predicted();
    double information = finite(fit.square(up, down)) / (4 * step * step);
    return with(on, fault, figure, Occam.ofFitted(fault.range(), figure, information));
  }

  private static double finite(double square) {
    return Math.min(square, 1e12);
  }

  /** How far apart two vehicles are in what was measured, in standard deviations. */
  double distance(Tested one, Tested other) {
    return fit.distance(one.predicted(), other.predicted());
  }

  /** Two faults together: each is fitted beside the other where they meet. */
  Tested together(Tested one, Tested two) {
    VehicleFault first = one.faults().get(0);
    VehicleFault second = two.faults().get(0);
    if (apart(first, second)) {
      return joined(one, two);
    }
    Tested best = tried(one, second).best();
    if (first.range().continuous()) {
      Tested other = tried(two, first).best();
      best = other.evidence() > best.evidence() ? other : best;
    }
    return best;
  }

  /** Whether neither of two faults changes what the other one does, but for a little current. */
  static boolean apart(VehicleFault one, VehicleFault two) {
    return one.channels().stream().noneMatch(two.channels()::contains);
  }

  private Tested joined(Tested one, Tested two) {
    List<ChannelPart> parts = new ArrayList<>(one.parts());
    for (VehicleFault fault : two.faults()) {
      fault.channels().forEach(c -> parts.set(c, two.parts().get(c)));
    }
    double[] joints = one.jointOhm().clone();
    for (int a = 0; a < joints.length; a++) {
      joints[a] += two.jointOhm()[a];
    }
    double[] predicted = predictor.joined(parts, joints);
    VehicleFault second = two.faults().get(0);
    return new Tested(
        added(one.faults(), second),
        added(one.figures(), two.figures().get(0)),
        added(one.occam(), two.occam().get(0)),
        second.change().in(one.plan(), two.figures().get(0)),
        parts,
        joints,
        predicted,
        fit.square(measured, predicted));
  }
}
