package org.footwell.acoustic.exposure;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.acoustic.exposure.SoundExposureRequest.Band;
import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Phrase;
import org.footwell.physics.ThirdOctaves;

/** A spectrum has one level in a band. */
@Check.Of(
    value = {"bands.*.spectrum", "bands.*.frequency_hz"},
    says =
        "No spectrum has a frequency_hz twice; a nominal one and the exact one it stands for are the"
            + " same.")
final class OneLevelPerBand implements Check<SoundExposureRequest> {

  @Override
  public void check(SoundExposureRequest q, Refusing to) {
    Set<List<Object>> seen = new HashSet<>();
    for (int i = 0; q.bands() != null && i < q.bands().size(); i++) {
      Band band = q.bands().get(i);
      if (!seen.add(List.of(band.spectrum(), ThirdOctaves.exactHz(band.frequencyHz())))) {
        to.refuse(CoreFault.DUPLICATE)
            .at("/bands/" + i + "/frequency_hz")
            .given(
                Phrase.of(ExposureWords.BAND_OF)
                    .own("frequency", Double.toString(band.frequencyHz()))
                    .own("spectrum", band.spectrum()));
      }
    }
  }
}
