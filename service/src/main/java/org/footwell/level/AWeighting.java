package org.footwell.level;

import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;

/** Frequency weighting A, by the pole frequencies of the standard. */
final class AWeighting {

  static final Source IEC_61672_1 =
      Source.of("IEC 61672-1:2013, Sound level meters, Annex E: analytical expressions");

  // Pole frequencies, Hz, as approximated in the standard.
  private static final double F1 = 20.60;
  private static final double F2 = 107.7;
  private static final double F3 = 737.9;
  private static final double F4 = 12194;

  /** A-weighting at 1 kHz before normalisation, dB, so that it is 0 there. */
  private static final double A_1000 = Decibels.ofAmplitude(unnormalised(1000));

  /** Weighting in dB at a frequency in Hz, above 0; 0 at 1 kHz. */
  static final Formula.Of1 AT =
      Formula.of(
              "a_weighting_db",
              "20·lg(12194²·f⁴/((f² + 20.60²)·√((f² + 107.7²)·(f² + 737.9²))·(f² + 12194²))) + 2.00",
              "dB",
              IEC_61672_1)
          .with("f", f -> Decibels.ofAmplitude(unnormalised(f)) - A_1000);

  private AWeighting() {}

  private static double unnormalised(double f) {
    double q = f * f;
    return F4
        * F4
        * q
        * q
        / ((q + F1 * F1) * Math.sqrt((q + F2 * F2) * (q + F3 * F3)) * (q + F4 * F4));
  }

  /** A-weighted minus unweighted level of a spectrum, dB. */
  static double difference(List<SoundLevelRequest.Band> spectrum) {
    double plain = 0;
    double weighted = 0;
    for (SoundLevelRequest.Band band : spectrum) {
      plain += Decibels.toPower(band.levelDb());
      weighted += Decibels.toPower(band.levelDb() + AT.at(band.frequencyHz()));
    }
    return Decibels.ofPower(weighted / plain);
  }
}
