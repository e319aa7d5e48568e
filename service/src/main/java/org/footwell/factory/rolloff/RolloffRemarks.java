package org.footwell.factory.rolloff;

import static org.footwell.factory.rolloff.RolloffFinding.BASS_AHEAD;
import static org.footwell.factory.rolloff.RolloffFinding.BASS_FALLS_BEHIND;
import static org.footwell.factory.rolloff.RolloffFinding.BASS_FALLS_FROM_THE_START;
import static org.footwell.factory.rolloff.RolloffFinding.BASS_KEEPS_UP;
import static org.footwell.factory.rolloff.RolloffFinding.CAPTURE_TOO_SHORT_FOR_BASS;
import static org.footwell.factory.rolloff.RolloffFinding.COMPENSATION_ENDS;
import static org.footwell.factory.rolloff.RolloffFinding.CONE_TOO_LARGE_FOR_MODEL;
import static org.footwell.factory.rolloff.RolloffFinding.LIMITS_UNKNOWN;
import static org.footwell.factory.rolloff.RolloffFinding.LIMIT_ALREADY_PASSED;
import static org.footwell.factory.rolloff.RolloffFinding.MIDRANGE_DOES_NOT_RISE;
import static org.footwell.factory.rolloff.RolloffFinding.SHELF_FITS_BADLY;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.factory.rolloff.BassLimits.Share;
import org.footwell.factory.rolloff.BassRolloffResult.BandGain;
import org.footwell.factory.rolloff.BassRolloffResult.HeldBy;
import org.footwell.factory.rolloff.BassRolloffResult.StepLoss;
import org.footwell.physics.Air;
import org.footwell.physics.Piston;

/** What follows from all steps together, and what there is to say. */
final class RolloffRemarks {

  /** A shelf that is off by more is no good stand-in; common practice, no source. */
  private static final double SHELF_ERROR_DB = 1.5;

  private static final double SMALL_KA = 1;

  private final BassRolloffRequest q;
  private final BandTable table;
  private final Losses losses;
  private final List<StepLoss> steps;
  private final Run run;
  private final String list;

  private RolloffRemarks(
      BassRolloffRequest q, BandTable table, Losses losses, List<StepLoss> steps, Run run) {
    this.q = q;
    this.table = table;
    this.losses = losses;
    this.steps = steps;
    this.run = run;
    this.list = q.levels() != null ? "/levels/" : "/captures/";
  }

  static BassRolloffResult summary(
      BassRolloffRequest q,
      BandTable table,
      Losses losses,
      List<StepLoss> steps,
      List<Share> shares,
      List<BandGain> bands,
      Run run) {
    RolloffRemarks remarks = new RolloffRemarks(q, table, losses, steps, run);
    StepLoss onset = steps.stream().filter(StepLoss::behind).findFirst().orElse(null);
    StepLoss worst = steps.stream().max(Comparator.comparingDouble(StepLoss::lossDb)).orElseThrow();
    remarks.onset(onset, worst);
    remarks.measuring();
    remarks.ahead();
    remarks.limits(shares);
    Integer fullUpTo = remarks.fullUpTo(onset);
    Integer endsAt = remarks.endsAt();
    return new BassRolloffResult(
        table.steps().get(losses.referenceIndex()),
        onset == null ? null : (Integer) onset.volumeStep(),
        worst.lossDb(),
        worst.belowHz(),
        fullUpTo,
        endsAt,
        steps,
        bands);
  }

  private void onset(StepLoss onset, StepLoss worst) {
    if (onset == null) {
      run.find(BASS_KEEPS_UP).value(worst.lossDb()).limit(q.thresholdDb());
      return;
    }
    int s = table.indexOfStep(worst.volumeStep());
    losses.note(s, Losses.worst(losses.at(s)), run);
    run.find(BASS_FALLS_BEHIND)
        .at(at(onset))
        .value(worst.lossDb())
        .limit(q.thresholdDb())
        .with("step", onset.volumeStep())
        .with("worst", worst.volumeStep())
        .with("below", worst.belowHz());
    int first = table.indexOfStep(onset.volumeStep());
    if (q.referenceStep() == null && first == 1) {
      run.find(BASS_FALLS_FROM_THE_START).at(at(onset)).value(onset.volumeStep());
    }
    steps.stream()
        .filter(step -> step.behind() && step.shelfErrorDb() > SHELF_ERROR_DB)
        .max(Comparator.comparingDouble(StepLoss::shelfErrorDb))
        .ifPresent(
            step ->
                run.find(SHELF_FITS_BADLY)
                    .at(at(step))
                    .value(step.shelfErrorDb())
                    .limit(SHELF_ERROR_DB)
                    .with("step", step.volumeStep()));
  }

  private void measuring() {
    for (int s = 1; s < steps.size(); s++) {
      double rise = steps.get(s).referenceLevelDb() - steps.get(s - 1).referenceLevelDb();
      if (rise <= 0) {
        run.find(MIDRANGE_DOES_NOT_RISE)
            .at(at(steps.get(s)))
            .value(rise)
            .limit(0)
            .with("step", steps.get(s).volumeStep());
        break;
      }
    }
    double chance = losses.chanceDb(Losses.TOGETHER);
    if (chance > q.thresholdDb()) {
      run.find(CAPTURE_TOO_SHORT_FOR_BASS)
          .at("/captures")
          .value(chance)
          .limit(q.thresholdDb())
          .with("seconds", losses.neededS(Losses.TOGETHER));
    }
  }

  private void ahead() {
    steps.stream()
        .filter(step -> step.shelfGainDb() <= -q.thresholdDb())
        .min(Comparator.comparingDouble(StepLoss::shelfGainDb))
        .ifPresent(
            step ->
                run.find(BASS_AHEAD)
                    .at(at(step))
                    .value(-step.shelfGainDb())
                    .limit(table.steps().get(losses.referenceIndex()))
                    .with("step", step.volumeStep()));
  }

  private void limits(List<Share> shares) {
    boolean behind = steps.stream().anyMatch(StepLoss::behind);
    if (behind && (q.headroom() == null || q.driver() == null)) {
      run.find(LIMITS_UNKNOWN)
          .at(q.headroom() == null ? "/headroom" : "/driver")
          .fields("missing", missing());
    }
    for (int s = 0; s < shares.size(); s++) {
      if (shares.get(s).passed()) {
        run.find(LIMIT_ALREADY_PASSED)
            .at(at(steps.get(s)))
            .value(steps.get(s).volumeStep())
            .with("what", shares.get(s).heldBy());
        break;
      }
    }
    if (q.driver() != null) {
      double highest = table.bandsHz().get(losses.bassBands() - 1);
      double ka = Piston.KA.at(highest, q.driver().sdCm2(), Air.REFERENCE_SPEED_M_PER_S);
      if (ka > SMALL_KA) {
        run.find(CONE_TOO_LARGE_FOR_MODEL)
            .at("/driver/sd_cm2")
            .value(ka)
            .limit(SMALL_KA)
            .with("frequency", highest);
      }
    }
  }

  private List<String> missing() {
    List<String> missing = new ArrayList<>(2);
    if (q.headroom() == null) {
      missing.add("headroom");
    }
    if (q.driver() == null) {
      missing.add("driver");
    }
    return missing;
  }

  /** Highest step up to which all is restored, or null if nothing is to be or the lowest is not. */
  private Integer fullUpTo(StepLoss onset) {
    if (onset == null) {
      return null;
    }
    Integer last = null;
    for (StepLoss step : steps) {
      if (step.behind() && step.heldBy() != HeldBy.NOTHING) {
        run.find(COMPENSATION_ENDS)
            .at(at(step))
            .value(step.allowedGainDb())
            .limit(step.shelfGainDb())
            .with("step", step.volumeStep())
            .with("what", step.heldBy());
        return last;
      }
      last = step.volumeStep();
    }
    return last;
  }

  private Integer endsAt() {
    return steps.stream()
        .filter(step -> step.behind() && step.allowedGainDb() < BassLimits.NO_GAIN_DB)
        .map(StepLoss::volumeStep)
        .findFirst()
        .orElse(null);
  }

  private String at(StepLoss step) {
    return list + table.places().get(table.indexOfStep(step.volumeStep()));
  }
}
