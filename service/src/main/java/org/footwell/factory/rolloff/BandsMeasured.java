package org.footwell.factory.rolloff;

import static org.footwell.factory.rolloff.RolloffFault.BAND_NOT_MEASURED;
import static org.footwell.factory.rolloff.RolloffFault.NO_REFERENCE_BAND;
import static org.footwell.factory.rolloff.RolloffFault.TOO_FEW_BASS_BANDS;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;

/** There is bass, and what it is held against. */
@Check.Of(
    value = {
      "levels.*.frequency_hz",
      "lowest_hz",
      "reference_from_hz",
      "reference_to_hz",
      "driver_level.frequency_hz"
    },
    says =
        "Three bands or more are below reference_from_hz, one of them at driver_level.frequency_hz,"
            + " and one or more from there to reference_to_hz.")
final class BandsMeasured implements Check<BassRolloffRequest> {

  @Override
  public void check(BassRolloffRequest q, Refusing to) {
    boolean told =
        (q.captures() == null) == (q.levels() == null) || q.referenceFromHz() >= q.referenceToHz();
    if (told) {
      return;
    }
    List<Double> bands = BandTableReader.bandsHz(q);
    ReferenceRange range = ReferenceRange.of(bands, q.referenceFromHz(), q.referenceToHz());
    if (range.bassBands() < Losses.TOGETHER) {
      to.refuse(TOO_FEW_BASS_BANDS)
          .at(BandTableReader.list(q))
          .given(range.bassBands())
          .allowed(
              Phrase.of(StepWords.BANDS_BELOW)
                  .with("least", Losses.TOGETHER)
                  .own("limit", Double.toString(q.referenceFromHz())));
    }
    if (range.last() < range.first()) {
      to.refuse(NO_REFERENCE_BAND)
          .at(BandTableReader.list(q))
          .allowed(Allowed.range(q.referenceFromHz(), q.referenceToHz(), "Hz"));
    }
    if (q.driverLevel() != null) {
      driverLevel(q.driverLevel().frequencyHz(), bands.subList(0, range.bassBands()), to);
    }
  }

  private static void driverLevel(double frequencyHz, List<Double> bass, Refusing to) {
    if (BandTable.indexOfBand(frequencyHz, bass) < 0) {
      to.refuse(BAND_NOT_MEASURED)
          .at("/driver_level/frequency_hz")
          .given(frequencyHz)
          .allowed(Allowed.oneOf(bass.stream().map(Math::round).toList()));
    }
  }
}
