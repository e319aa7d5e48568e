package org.footwell.vehicle;

import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.Run;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.faults.SingleFaults;
import org.footwell.vehicle.reading.Modelled;

/** What explains best that measurements are not as predicted: the usual faults, one at a time. */
final class CauseReview {

  /** From here on a figure is off, in units of its usual error; common practice, no source. */
  private static final double OFF = 1.5;

  /** A cause must take away this part of the misfit. */
  private static final double EXPLAINED = 0.5;

  private static final int MOST_LOOKED_AT = 4;
  private static final int MOST_TOLD = 5;

  private final Modelled base;
  private final Run run;

  CauseReview(Modelled base, Run run) {
    this.base = base;
    this.run = run;
  }

  /** The best of them, best first; null where nothing is off or nothing explains it. */
  List<CauseLine> lines() {
    VehiclePlan plan = base.index().plan();
    SingleFaults faults = new SingleFaults(base, LikelyCause::has, run);
    List<Integer> off = faults.channelsOff(OFF).stream().limit(MOST_LOOKED_AT).toList();
    double misfit = faults.misfit();
    List<SingleFaults.Single> best =
        faults.of(off).stream()
            .filter(single -> single.misfit() <= (1 - EXPLAINED) * misfit)
            .limit(MOST_TOLD)
            .toList();
    if (best.isEmpty()) {
      return null;
    }
    SingleFaults.Single first = best.get(0);
    run.find(PlanFinding.LIKELY_CAUSE)
        .at(
            IntStream.range(0, plan.channels().size())
                .filter(c -> first.line().channels().get(0).equals(plan.channels().get(c).id()))
                .mapToObj(c -> "/channels/" + c)
                .findFirst()
                .orElseThrow())
        .value(misfit)
        .limit(first.misfit())
        .with("cause", first.line().phrase());
    return best.stream()
        .map(
            one ->
                new CauseLine(
                    LikelyCause.valueOf(one.line().fault().name()),
                    one.line().channels(),
                    one.line().driver(),
                    one.line().cornerHz(),
                    one.line().gainDb(),
                    misfit,
                    one.misfit()))
        .toList();
  }
}
