package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.Run;
import org.footwell.parts.plan.MeasuredChannel;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.reading.ModelReader;
import org.footwell.vehicle.reading.Modelled;

/** What explains best that measurements are not as predicted. */
final class CauseReview {

  /** From here on a figure is off, in units of its usual uncertainty; common practice, no source. */
  private static final double OFF = 1.5;

  /** A cause must take away this part of the misfit. */
  private static final double EXPLAINED = 0.5;

  /** Misfits this near to each other are alike, and the simpler cause stands first. */
  private static final double ALIKE = 1e-6;

  private static final int MOST_TRIED = 60;
  private static final int MOST_TOLD = 5;

  private final Modelled base;
  private final VehiclePlan plan;
  private final Run run;
  private final Misfit before;

  CauseReview(Modelled base, Run run) {
    this.base = base;
    this.plan = base.index().plan();
    this.run = run;
    before = Misfit.of(base);
  }

  /** A cause with what it leaves unexplained. */
  private record Tried(Suspect suspect, double after) {}

  /** The best of them, best first; null where nothing is off or nothing explains it. */
  List<CauseLine> lines() {
    double misfit = before.rms(0);
    List<Tried> best =
        suspects().stream()
            .limit(MOST_TRIED)
            .map(suspect -> new Tried(suspect, after(suspect)))
            .filter(tried -> tried.after() <= (1 - EXPLAINED) * misfit)
            .sorted(
                Comparator.comparingDouble((Tried tried) -> Math.rint(tried.after() / ALIKE))
                    .thenComparing(tried -> tried.suspect().cause()))
            .limit(MOST_TOLD)
            .toList();
    if (best.isEmpty()) {
      return null;
    }
    Suspect first = best.get(0).suspect();
    run.find(PlanFinding.LIKELY_CAUSE)
        .at("/channels/" + first.channels().get(0))
        .value(misfit)
        .limit(best.get(0).after())
        .with("cause", first.phrase());
    return best.stream().map(tried -> tried.suspect().line(misfit, tried.after())).toList();
  }

  /** Those about channels of which a figure is off, farthest off first; each once. */
  private List<Suspect> suspects() {
    List<Integer> rows =
        IntStream.range(0, plan.measured().size())
            .boxed()
            .filter(row -> before.worst(row) >= OFF)
            .sorted(Comparator.comparingDouble((Integer row) -> -before.squares(row)))
            .toList();
    Suspects changes = new Suspects(base.index(), run);
    List<Suspect> all = new ArrayList<>();
    for (int row : rows) {
      int c = base.index().channel(plan.measured().get(row).channel());
      for (Suspect one : changes.of(c)) {
        boolean known =
            all.stream()
                .anyMatch(
                    other ->
                        other.cause() == LikelyCause.WIRES_SWAPPED
                            && one.cause() == LikelyCause.WIRES_SWAPPED
                            && other.channels().equals(one.channels()));
        if (!known) {
          all.add(one);
        }
      }
      addGain(row, c, all);
    }
    return all;
  }

  /** The gain that explains the level of a channel alone. */
  private void addGain(int row, int c, List<Suspect> all) {
    MeasuredChannel measured = plan.measured().get(row);
    if (measured.levelDbSpl() != null && base.model().channels().get(c).chain().heard()) {
      double predicted = base.model().field().alone(plan.mainSeat(), base.heard(), c).dbSpl();
      double louder = measured.levelDbSpl() - predicted;
      all.add(new Suspect(LikelyCause.GAIN_OFF, List.of(c), null, louder, plan));
    }
  }

  /** Misfit that is left when a suspect is what is wrong; all settings stay as they are. */
  private double after(Suspect suspect) {
    run.checkDeadline();
    List<PlayedChannel> channels = new ArrayList<>(base.model().channels());
    List<ChannelState> states = new ArrayList<>(base.heard());
    if (suspect.isGain()) {
      int c = suspect.channels().get(0);
      ChannelState state = states.get(c);
      double volts = state.sourceV() * Decibels.toAmplitude(suspect.figure());
      states.set(c, new ChannelState(volts, state.trimDb(), state.polarity(), state.delayMs()));
      return left(before.changed(base, channels, states, suspect.channels()), 1);
    }
    ModelReader reader = new ModelReader(PlanIndex.of(suspect.wrong(), run), run);
    for (int c : suspect.channels()) {
      channels.set(c, reader.channel(c));
      int turned = suspect.wrong().channels().get(c).polarity() * plan.channels().get(c).polarity();
      ChannelState state = states.get(c);
      states.set(c, state.delayed(state.delayMs(), state.polarity() * turned));
    }
    return left(before.changed(base, channels, states, suspect.channels()), 0);
  }

  /** A cause with which something measured could not have been measured is none. */
  private double left(Misfit after, int fitted) {
    return after.lacks(before) ? Double.POSITIVE_INFINITY : after.rms(fitted);
  }
}
