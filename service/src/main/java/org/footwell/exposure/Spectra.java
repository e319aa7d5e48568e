package org.footwell.exposure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.exposure.SoundExposureRequest.Band;
import org.footwell.physics.Decibels;
import org.footwell.physics.FrequencyWeighting;
import org.footwell.physics.ThirdOctaves;

/** The spectra of a request by their names. */
final class Spectra {

  private final Map<String, List<Band>> bands = new LinkedHashMap<>();

  /** Sorts the bands by spectrum; refuses a frequency that one spectrum has twice. */
  Spectra(SoundExposureRequest q, Run run) {
    List<Band> all = q.bands() == null ? List.of() : q.bands();
    Map<String, Set<Double>> seen = new LinkedHashMap<>();
    for (int i = 0; i < all.size(); i++) {
      Band band = all.get(i);
      bands.computeIfAbsent(band.spectrum(), name -> new ArrayList<>()).add(band);
      boolean first =
          seen.computeIfAbsent(band.spectrum(), name -> new HashSet<>()).add(exact(band));
      if (!first) {
        run.refuse(CoreFault.DUPLICATE)
            .at("/bands/" + i + "/frequency_hz")
            .given(band.frequencyHz() + " Hz of " + band.spectrum());
      }
      if (exact(band) < FrequencyWeighting.LOWEST_HZ * 0.99
          || exact(band) > FrequencyWeighting.HIGHEST_HZ) {
        run.find(ExposureFinding.BAND_OUTSIDE_WEIGHTING)
            .at("/bands/" + i + "/frequency_hz")
            .value(band.frequencyHz());
      }
    }
  }

  Set<String> names() {
    return bands.keySet();
  }

  /** Unweighted level of a spectrum as given, dB SPL. */
  double level(String name) {
    return sum(name, band -> 0);
  }

  /** Level of a spectrum weighted by A or C, dB. */
  double weighted(String name, Formula.Of1 weighting) {
    return sum(name, band -> weighting.at(exact(band)));
  }

  private double sum(String name, ToDoubleFunction<Band> weighting) {
    double power = 0;
    for (Band band : bands.get(name)) {
      power += Decibels.toPower(band.levelDbSpl() + weighting.applyAsDouble(band));
    }
    return Decibels.ofPower(power);
  }

  private static double exact(Band band) {
    return ThirdOctaves.exactHz(band.frequencyHz());
  }
}
