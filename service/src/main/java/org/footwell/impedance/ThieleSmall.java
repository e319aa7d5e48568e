package org.footwell.impedance;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** The laws of a driver's impedance around its resonance, alone and in a box. */
final class ThieleSmall {

  static final Source SMALL_DRIVER =
      Source.of(
          "R. H. Small, Direct-Radiator Loudspeaker System Analysis, Journal of the Audio"
              + " Engineering Society 20 (1972)");
  static final Source SMALL_CLOSED =
      Source.of(
          "R. H. Small, Closed-Box Loudspeaker Systems, Part I: Analysis, Journal of the Audio"
              + " Engineering Society 20 (1972)");
  static final Source SMALL_VENTED =
      Source.of(
          "R. H. Small, Vented-Box Loudspeaker Systems, Part I: Small-Signal Analysis, Journal of"
              + " the Audio Engineering Society 21 (1973)");
  static final Source LEACH =
      Source.of(
          "W. M. Leach, Loudspeaker Voice-Coil Inductance Losses: Circuit Models, Parameter"
              + " Estimation, and Effect on Frequency Response, Journal of the Audio Engineering"
              + " Society 50 (2002) 442-450");

  /** Resistance in ohm that the mechanical losses show at resonance, beside re. */
  static final Formula.Of3 MOTIONAL_OHM =
      Formula.of("motional_ohm", "re·qms/qes", "ohm", SMALL_DRIVER)
          .with("re", "qms", "qes", (re, qms, qes) -> re * qms / qes);

  /** Modulus in ohm at resonance, the inductance left out; a closed box does not change it. */
  static final Formula.Of3 RESONANCE_OHM =
      Formula.of("resonance_ohm", "re·(1 + qms/qes)", "ohm", SMALL_DRIVER)
          .with("re", "qms", "qes", (re, qms, qes) -> re * (1 + qms / qes));

  /** Total Q of mechanical and electrical losses, the source without resistance. */
  static final Formula.Of2 TOTAL_Q =
      Formula.of("qts", "qms·qes/(qms + qes)", "", SMALL_DRIVER)
          .with("qms", "qes", (qms, qes) -> qms * qes / (qms + qes));

  /** How much stiffer the air of the box is than the suspension. */
  static final Formula.Of2 COMPLIANCE_RATIO =
      Formula.of("compliance_ratio", "vas/vb", "", SMALL_CLOSED)
          .with("vas", "vb", (vas, vb) -> vas / vb);

  /** Resonance or Q in a closed box from that in free air; both grow alike. */
  static final Formula.Of2 IN_CLOSED_BOX =
      Formula.of("in_closed_box", "x·√(1 + alpha)", "as x", SMALL_CLOSED)
          .with("x", "alpha", (x, alpha) -> x * Math.sqrt(1 + alpha));

  /** Angular frequency times inductance, ohm, from Hz and mH. */
  static final Formula.Of2 REACTANCE_OHM =
      Formula.of("coil_reactance_ohm", "2·π·f·le/1000", "ohm", Source.DEFINITION)
          .with("f", "le", (f, le) -> 2 * Math.PI * f * le / 1000);

  static final Formula.Of3 REAL_PART =
      Formula.of("real_ohm", "re + coil + motion", "ohm", SMALL_DRIVER)
          .with("re", "coil", "motion", (re, coil, motion) -> re + coil + motion);

  static final Formula.Of2 IMAGINARY_PART =
      Formula.of("imaginary_ohm", "coil + motion", "ohm", SMALL_DRIVER)
          .with("coil", "motion", Double::sum);

  static final Formula.Of2 MODULUS =
      Formula.of("modulus_ohm", "√(real² + imaginary²)", "ohm", Source.DEFINITION)
          .with("real", "imaginary", (re, im) -> new Phasor(re, im).modulus());

  private ThieleSmall() {}
}
