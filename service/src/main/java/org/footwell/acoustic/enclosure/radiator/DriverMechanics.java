package org.footwell.acoustic.enclosure.radiator;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.Air;
import org.footwell.physics.ThieleSmall;

/**
 * A driver in SI units, as the circuit needs it.
 *
 * @param mms moving mass, kg
 * @param cms compliance of the suspension, m/N
 * @param rms mechanical resistance, kg/s
 * @param bl force factor, T·m
 * @param sd cone area, m²
 * @param resistance of voice coil and source, ohm
 */
public record DriverMechanics(
    double mms, double cms, double rms, double bl, double sd, double resistance) {

  /** Compliance in m/N from vas in m³, area in m², density and speed of sound. */
  private static final Formula.Of4 CMS =
      Formula.of("cms_m_per_n", "vas/(ρ·c²·sd²)", "m/N", ThieleSmall.SMALL_DRIVER)
          .with("vas", "ρ", "c", "sd", (vas, rho, c, sd) -> vas / (rho * c * c * sd * sd));

  /** Force factor in T·m from angular resonance, mass in kg, re in ohm and electrical Q. */
  private static final Formula.Of4 BL =
      Formula.of("bl_tm", "√(ωs·mms·re/qes)", "T·m", ThieleSmall.SMALL_DRIVER)
          .with("ωs", "mms", "re", "qes", (ws, mms, re, qes) -> Math.sqrt(ws * mms * re / qes));

  /** Electrical Q with a resistance between amplifier and voice coil. */
  public static final Formula.Of3 QES_WITH_SOURCE =
      Formula.of("qes", "qes·(re + source)/re", "", ThieleSmall.SMALL_DRIVER)
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

  /** The driver with a resistance in ohm before it, in air of a temperature in °C. */
  public static DriverMechanics of(BoxDriver driver, double sourceOhm, double temperatureC) {
    double sd = driver.sdCm2() / 1e4;
    double rho = Air.DENSITY.at(temperatureC);
    double c = Air.SPEED_OF_SOUND.at(temperatureC);
    double cms = CMS.at(driver.vasL() / 1000, rho, c, sd);
    double ws = 2 * Math.PI * driver.fsHz();
    double mms = 1 / (ws * ws * cms);
    double bl = BL.at(ws, mms, driver.reOhm(), driver.qes());
    return new DriverMechanics(
        mms, cms, ws * mms / driver.qms(), bl, sd, driver.reOhm() + sourceOhm);
  }
}
