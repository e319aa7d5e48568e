package org.footwell.acoustic.exposure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.acoustic.exposure.SoundExposureRequest.Band;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.physics.BandSpectrum;
import org.footwell.physics.FrequencyWeighting;

/** The spectra of a request by their names. */
final class Spectra {

  private final Map<String, BandSpectrum> spectra = new LinkedHashMap<>();

  /** Sorts the bands by spectrum. */
  Spectra(SoundExposureRequest q, Run run) {
    List<Band> bands = q.bands() == null ? List.of() : q.bands();
    for (int i = 0; i < bands.size(); i++) {
      Band band = bands.get(i);
      String at = "/bands/" + i + "/frequency_hz";
      BandSpectrum spectrum = spectra.computeIfAbsent(band.spectrum(), name -> new BandSpectrum());
      spectrum.add(band.frequencyHz(), band.levelDbSpl());
      if (!FrequencyWeighting.covers(band.frequencyHz())) {
        run.find(ExposureFinding.BAND_OUTSIDE_WEIGHTING).at(at).value(band.frequencyHz());
      }
    }
  }

  Set<String> names() {
    return spectra.keySet();
  }

  /** Unweighted level of a spectrum as given, dB SPL. */
  double level(String name) {
    return spectra.get(name).levelDb();
  }

  /** Level of a spectrum weighted by A or C, dB. */
  double weighted(String name, Formula.Of1 weighting) {
    return spectra.get(name).levelDb(weighting);
  }
}
