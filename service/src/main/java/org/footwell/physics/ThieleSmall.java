package org.footwell.physics;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** The laws of a driver around its resonance, alone and in a box, and of its impedance there. */
public final class ThieleSmall {

  public static final Source SMALL_DRIVER =
      Source.of(
          "R. H. Small, Direct-Radiator Loudspeaker System Analysis, Journal of the Audio"
              + " Engineering Society 20 (1972)");
  public static final Source SMALL_CLOSED =
      Source.of(
          "R. H. Small, Closed-Box Loudspeaker Systems, Part I: Analysis, Journal of the Audio"
              + " Engineering Society 20 (1972)");
  public static final Source SMALL_VENTED =
      Source.of(
          "R. H. Small, Vented-Box Loudspeaker Systems, Part I: Small-Signal Analysis, Journal of"
              + " the Audio Engineering Society 21 (1973)");
  public static final Source LEACH =
      Source.of(
          "W. M. Leach, Loudspeaker Voice-Coil Inductance Losses: Circuit Models, Parameter"
              + " Estimation, and Effect on Frequency Response, Journal of the Audio Engineering"
              + " Society 50 (2002) 442-450");

  /** Resistance in ohm that the mechanical losses show at resonance, beside re. */
  public static final Formula.Of3 MOTIONAL_OHM =
      Formula.of("motional_ohm", "re·qms/qes", "ohm", SMALL_DRIVER)
          .with("re", "qms", "qes", (re, qms, qes) -> re * qms / qes);

  /** Modulus in ohm at resonance, the inductance left out; a closed box does not change it. */
  public static final Formula.Of3 RESONANCE_OHM =
      Formula.of("resonance_ohm", "re·(1 + qms/qes)", "ohm", SMALL_DRIVER)
          .with("re", "qms", "qes", (re, qms, qes) -> re * (1 + qms / qes));

  /** Total Q of mechanical and electrical losses, the source without resistance. */
  public static final Formula.Of2 TOTAL_Q =
      Formula.of("qts", "qms·qes/(qms + qes)", "", SMALL_DRIVER)
          .with("qms", "qes", (qms, qes) -> qms * qes / (qms + qes));

  /** How much stiffer the air of the box is than the suspension. */
  public static final Formula.Of2 COMPLIANCE_RATIO =
      Formula.of("compliance_ratio", "vas/vb", "", SMALL_CLOSED)
          .with("vas", "vb", (vas, vb) -> vas / vb);

  /** Resonance or Q in a closed box from that in free air; both grow alike. */
  public static final Formula.Of2 IN_CLOSED_BOX =
      Formula.of("in_closed_box", "x·√(1 + alpha)", "as x", SMALL_CLOSED)
          .with("x", "alpha", (x, alpha) -> x * Math.sqrt(1 + alpha));

  /** Angular frequency times inductance, ohm, from Hz and mH. */
  public static final Formula.Of2 REACTANCE_OHM =
      Formula.of("coil_reactance_ohm", "2·π·f·le/1000", "ohm", Source.DEFINITION)
          .with("f", "le", (f, le) -> 2 * Math.PI * f * le / 1000);

  public static final Formula.Of3 REAL_PART =
      Formula.of("real_ohm", "re + coil + motion", "ohm", SMALL_DRIVER)
          .with("re", "coil", "motion", (re, coil, motion) -> re + coil + motion);

  public static final Formula.Of2 IMAGINARY_PART =
      Formula.of("imaginary_ohm", "coil + motion", "ohm", SMALL_DRIVER)
          .with("coil", "motion", Double::sum);

  public static final Formula.Of2 MODULUS =
      Formula.of("modulus_ohm", "√(real² + imaginary²)", "ohm", Source.DEFINITION)
          .with("real", "imaginary", (re, im) -> new Phasor(re, im).modulus());

  /** Moving mass in g from resonance in Hz and compliance in mm/N. */
  public static final Formula.Of2 MOVING_MASS =
      Formula.of("mms_g", "10⁶/((2·π·fs)²·cms)", "g", SMALL_DRIVER)
          .with("fs", "cms", (fs, cms) -> 1e6 / (square(2 * Math.PI * fs) * cms));

  /** Compliance in mm/N from resonance in Hz and moving mass in g. */
  public static final Formula.Of2 COMPLIANCE =
      Formula.of("cms_mm_per_n", "10⁶/((2·π·fs)²·mms)", "mm/N", SMALL_DRIVER)
          .with("fs", "mms", (fs, mms) -> 1e6 / (square(2 * Math.PI * fs) * mms));

  /** Volume in litre that is as stiff as the suspension, from cone area in cm² and mm/N. */
  public static final Formula.Of4 EQUIVALENT_VOLUME =
      Formula.of("vas_l", "ρ·c²·(sd/10⁴)²·cms", "l", SMALL_DRIVER)
          .with("ρ", "c", "sd", "cms", (rho, c, sd, cms) -> rho * c * c * square(sd / 1e4) * cms);

  /** Electrical Q from the circuit's re in ohm, fs in Hz, mms in g and bl in T·m. */
  public static final Formula.Of4 ELECTRICAL_Q =
      Formula.of("qes", "2·π·fs·mms·re/(1000·bl²)", "", SMALL_DRIVER)
          .with(
              "fs",
              "mms",
              "re",
              "bl",
              (fs, mms, re, bl) -> 2 * Math.PI * fs * mms / 1000 * re / square(bl));

  /** Mechanical Q from fs in Hz, mms in g and the mechanical resistance in kg/s. */
  public static final Formula.Of3 MECHANICAL_Q =
      Formula.of("qms", "2·π·fs·mms/(1000·rms)", "", SMALL_DRIVER)
          .with("fs", "mms", "rms", (fs, mms, rms) -> 2 * Math.PI * fs * mms / 1000 / rms);

  /** Efficiency in half space for 1 W into re, from fs in Hz, vas in litre, qes and c in m/s. */
  public static final Formula.Of4 REFERENCE_EFFICIENCY =
      Formula.of("reference_efficiency", "4·π²/c³·fs³·vas/(1000·qes)", "", SMALL_DRIVER)
          .with(
              "c",
              "fs",
              "vas",
              "qes",
              (c, fs, vas, qes) ->
                  4 * Math.PI * Math.PI / (c * c * c) * fs * fs * fs * (vas / 1000) / qes);

  /** Level in dB SPL at 1 m in half space for 1 W into re, from efficiency, ρ and c. */
  public static final Formula.Of3 EFFICIENCY_LEVEL =
      Formula.of("level_db_spl", "20·lg(√(η·ρ·c/(2·π))/20 µPa)", "dB SPL", SMALL_DRIVER)
          .with(
              "η",
              "ρ",
              "c",
              (eta, rho, c) ->
                  Decibels.ofAmplitude(
                      Math.sqrt(eta * rho * c / (2 * Math.PI)) / Decibels.SPL_REFERENCE_PA));

  /** Electrical Q with a resistance between amplifier and voice coil. */
  public static final Formula.Of3 QES_WITH_SOURCE =
      Formula.of("qes", "qes·(re + source)/re", "", SMALL_DRIVER)
          .with("qes", "re", "source", (qes, re, source) -> qes * (re + source) / re);

  /** Level in dB SPL well above all resonances, from that for 1 W into re, and the voltage. */
  public static final Formula.Of4 REFERENCE_LEVEL =
      Formula.of(
              "reference_level_db_spl",
              "L1 + 10·lg(U²·re/(re + source)²)",
              "dB SPL",
              Source.DEFINITION)
          .with(
              "L1",
              "U",
              "re",
              "source",
              (l1, u, re, source) -> l1 + 20 * Math.log10(u * Math.sqrt(re) / (re + source)));

  private static double square(double x) {
    return x * x;
  }

  private ThieleSmall() {}
}
