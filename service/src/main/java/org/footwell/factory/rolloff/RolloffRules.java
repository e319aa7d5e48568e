package org.footwell.factory.rolloff;

import static org.footwell.factory.rolloff.RolloffFault.BAND_NOT_MEASURED;
import static org.footwell.factory.rolloff.RolloffFault.NO_REFERENCE_BAND;
import static org.footwell.factory.rolloff.RolloffFault.STEP_NOT_MEASURED;
import static org.footwell.factory.rolloff.RolloffFault.TOO_FEW_BASS_BANDS;
import static org.footwell.factory.rolloff.RolloffFault.TOO_FEW_STEPS;

import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;

/** What a table of levels must hold for its request; every breach is refused. */
final class RolloffRules {

  private RolloffRules() {}

  static Losses requireTable(BassRolloffRequest q, BandTable table, Run run) {
    String list = q.levels() != null ? "/levels" : "/captures";
    if (table.steps().size() < 2) {
      run.refuse(TOO_FEW_STEPS).at(list).given(table.steps().size());
    }
    step("/reference_step", q.referenceStep(), table, run);
    if (q.headroom() != null) {
      step("/headroom/volume_step", q.headroom().volumeStep(), table, run);
    }
    int reference = q.referenceStep() == null ? 0 : table.indexOfStep(q.referenceStep());
    Losses losses =
        new Losses(
            table, Math.max(0, reference), q.referenceFromHz(), q.referenceToHz(), q.thresholdDb());
    if (losses.bassBands() < Losses.TOGETHER) {
      run.refuse(TOO_FEW_BASS_BANDS)
          .at(list)
          .given(losses.bassBands())
          .allowed(
              Phrase.of(StepWords.BANDS_BELOW)
                  .with("least", Losses.TOGETHER)
                  .own("limit", Double.toString(q.referenceFromHz())));
    }
    if (!losses.hasReference()) {
      run.refuse(NO_REFERENCE_BAND)
          .at(list)
          .allowed(Allowed.range(q.referenceFromHz(), q.referenceToHz(), "Hz"));
    }
    if (q.driverLevel() != null) {
      step("/driver_level/volume_step", q.driverLevel().volumeStep(), table, run);
      int band = table.indexOfBand(q.driverLevel().frequencyHz());
      if (band < 0 || band >= losses.bassBands()) {
        run.refuse(BAND_NOT_MEASURED)
            .at("/driver_level/frequency_hz")
            .given(q.driverLevel().frequencyHz())
            .allowed(
                Allowed.oneOf(
                    table.bandsHz().stream().limit(losses.bassBands()).map(Math::round).toList()));
      }
    }
    run.requireNoFaults();
    return losses;
  }

  private static void step(String at, Integer step, BandTable table, Run run) {
    if (step != null && table.indexOfStep(step) < 0) {
      run.refuse(STEP_NOT_MEASURED).at(at).given(step).allowed(Allowed.oneOf(table.steps()));
    }
  }
}
