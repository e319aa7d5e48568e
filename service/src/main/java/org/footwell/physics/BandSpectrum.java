package org.footwell.physics;

import java.util.LinkedHashMap;
import java.util.Map;
import org.footwell.calculation.Formula;

/**
 * A spectrum of bands that do not overlap. A band is known by its mid-band frequency; a nominal one
 * of a third octave stands for the exact one.
 */
public final class BandSpectrum {

  private final Map<Double, Double> levelDbOfHz = new LinkedHashMap<>();

  /** Adds a band by its frequency in Hz and unweighted level in dB. */
  public void add(double frequencyHz, double levelDb) {
    levelDbOfHz.put(ThirdOctaves.exactHz(frequencyHz), levelDb);
  }

  /** Level of all bands together, dB. */
  public double levelDb() {
    return Decibels.ofPower(levelDbOfHz.values().stream().mapToDouble(Decibels::toPower).sum());
  }

  /** The same weighted by A or C, dB. */
  public double levelDb(Formula.Of1 weighting) {
    return Decibels.ofPower(
        levelDbOfHz.entrySet().stream()
            .mapToDouble(band -> Decibels.toPower(band.getValue() + weighting.at(band.getKey())))
            .sum());
  }

  /** Weighted less unweighted level, dB. */
  public double differenceDb(Formula.Of1 weighting) {
    return levelDb(weighting) - levelDb();
  }
}
