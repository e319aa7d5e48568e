package org.footwell.electrical.impedance;

import static org.footwell.electrical.impedance.DriverFit.FS;
import static org.footwell.electrical.impedance.DriverFit.QES;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.Air;
import org.footwell.physics.ThieleSmall;

/** Moving mass, compliance and force factor from what a second table changed. */
final class MovingMass {

  static final Source ADDED_MASS =
      Source.of("Resonance of a mass on a spring: adding mass does not change the spring");

  /** ρ·c² of air at the reference temperature, Pa. */
  private static final double AIR_STIFFNESS_PA =
      Air.REFERENCE_DENSITY_KG_PER_M3 * Air.REFERENCE_SPEED_M_PER_S * Air.REFERENCE_SPEED_M_PER_S;

  /** Moving mass in g from an added one in g, the resonance in Hz without and with it. */
  static final Formula.Of3 MMS_G =
      Formula.of("mms_g", "m/((fs/fm)² − 1)", "g", ADDED_MASS)
          .with("m", "fs", "fm", (m, fs, fm) -> m / (fs * fs / (fm * fm) - 1));

  /** The same from the electrical Q over resonance, which grows with the mass alone. */
  static final Formula.Of3 MMS_BY_Q_G =
      Formula.of("mms_by_q_g", "m/((qesm/fm)/(qes/fs) − 1)", "g", ThieleSmall.SMALL_DRIVER)
          .with("m", "qesm/fm", "qes/fs", (m, with, without) -> m / (with / without - 1));

  /**
   * vas in litre from the volume of a box, by resonance and Q: right even where the box loads the
   * cone with more air.
   */
  static final Formula.Of3 VAS_IN_BOX_L =
      Formula.of("vas_l", "vb·(fc·qec/(fs·qes) − 1)", "l", ThieleSmall.SMALL_CLOSED)
          .with("vb", "fc·qec", "fs·qes", (vb, inBox, free) -> vb * (inBox / free - 1));

  /** The same by the resonances alone. */
  static final Formula.Of3 VAS_BY_RESONANCE_L =
      Formula.of("vas_by_resonance_l", "vb·((fc/fs)² − 1)", "l", ThieleSmall.SMALL_CLOSED)
          .with("vb", "fc", "fs", (vb, fc, fs) -> vb * (fc * fc / (fs * fs) - 1));

  /** Compliance in mm/N from vas in litre and the cone's area in cm². */
  static final Formula.Of2 CMS_OF_VAS =
      Formula.of("cms_mm_per_n", "vas/(ρ·c²·(sd/10⁴)²)", "mm/N", ThieleSmall.SMALL_DRIVER)
          .with("vas", "sd", (vas, sd) -> vas / (AIR_STIFFNESS_PA * sd * sd * 1e-8));

  /** Area of the cone in cm² from vas in litre and the compliance in mm/N. */
  static final Formula.Of2 SD_CM2 =
      Formula.of("sd_cm2", "10⁴·√(vas/(ρ·c²·cms))", "cm²", ThieleSmall.SMALL_DRIVER)
          .with("vas", "cms", (vas, cms) -> 1e4 * Math.sqrt(vas / (AIR_STIFFNESS_PA * cms)));

  /** Force factor in T·m from fs in Hz, mms in g, re in ohm and qes. */
  static final Formula.Of4 BL =
      Formula.of("bl_tm", "√(2·π·fs·mms/1000·re/qes)", "T·m", ThieleSmall.SMALL_DRIVER)
          .with(
              "fs",
              "mms",
              "re",
              "qes",
              (fs, mms, re, qes) -> Math.sqrt(2 * Math.PI * fs * mms / 1000 * re / qes));

  private MovingMass() {}

  /** Half the 95 % interval of the moving mass from fits without and with a mass, relative. */
  static double massConfidence(DriverFit free, DriverFit with) {
    // d ln(mms) = −2·(fs/fm)²/((fs/fm)² − 1)·d ln(fs/fm)
    double fs = free.value(FS);
    double fm = with.value(FS);
    double square = fs * fs / (fm * fm);
    double leverage = 2 * square / (square - 1);
    return leverage * Math.hypot(free.confidence(FS), with.confidence(FS));
  }

  /** Half the 95 % interval of vas from fits in free air and in a box, relative. */
  static double volumeConfidence(DriverFit free, DriverFit in) {
    double ratio = in.value(FS) * in.value(QES) / (free.value(FS) * free.value(QES));
    return ratio
        / (ratio - 1)
        * Math.hypot(free.confidenceOfProduct(FS, QES), in.confidenceOfProduct(FS, QES));
  }
}
