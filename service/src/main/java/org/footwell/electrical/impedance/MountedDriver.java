package org.footwell.electrical.impedance;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.loudspeaker.AirBehind;
import org.footwell.loudspeaker.CoilImpedance;
import org.footwell.loudspeaker.DriverCircuit;
import org.footwell.parts.Box;
import org.footwell.parts.Driver;
import org.footwell.physics.Phasor;
import org.footwell.physics.ThieleSmall;

/** The driver and the box of a request as the circuit takes them, and how its impedance comes about. */
public final class MountedDriver {

  /** How much the air of a box counts against the mechanical losses, m³/s. */
  private static final Formula.Of3 AIR_SHARE =
      Formula.of("air_share", "qms·2·π·fs·vas/1000", "m³/s", ThieleSmall.SMALL_DRIVER)
          .with("qms", "fs", "vas", (qms, fs, vas) -> qms * 2 * Math.PI * fs * vas / 1000);

  /** Real part of the denominator, in the unit of the mechanical losses: they and the air. */
  private static final Formula.Of2 DAMPING =
      Formula.of(
              "damping",
              "1 + B·Re Z, Z = 1/(leak + 1/(absorption + 1/(j·ω·V)) + 1/(port loss + j·ω·port))",
              "",
              ThieleSmall.SMALL_VENTED)
          .with("B", "Re Z", (b, z) -> 1 + b * z);

  /** Imaginary part of the denominator: how far mass and stiffness are from balance. */
  private static final Formula.Of3 DETUNING =
      Formula.of("detuning", "qms·(x − 1/x) + B·Im Z", "", ThieleSmall.SMALL_VENTED)
          .with("qms·(x − 1/x)", "B", "Im Z", (own, b, z) -> own + b * z);

  private static final Formula.Of3 MOTION_REAL =
      Formula.of("motion_real_ohm", "R·g/(g² + y²)", "ohm", ThieleSmall.SMALL_DRIVER)
          .with("R", "g", "y", (r, g, y) -> r * g / (g * g + y * y));
  private static final Formula.Of3 MOTION_IMAGINARY =
      Formula.of("motion_imaginary_ohm", "−R·y/(g² + y²)", "ohm", ThieleSmall.SMALL_DRIVER)
          .with("R", "g", "y", (r, g, y) -> -r * y / (g * g + y * y));

  private MountedDriver() {}

  /** The circuit of a driver in a box, or in free air without one. */
  public static DriverCircuit circuit(Driver driver, Box box) {
    return DriverCircuit.of(driver).before(AirBehind.of(driver, box));
  }

  /** Notes how the impedance at one frequency in Hz comes about. */
  static void explain(Driver driver, Box box, double f, Arithmetic arithmetic) {
    CoilImpedance coil = CoilImpedance.of(driver);
    double x0 = arithmetic.apply(ThieleSmall.REACTANCE_OHM, coil.atHz(), coil.mh());
    double coilReal = arithmetic.apply(CoilImpedance.REAL_OHM, x0, f, coil.atHz(), coil.exponent());
    double coilImaginary =
        arithmetic.apply(CoilImpedance.IMAGINARY_OHM, x0, f, coil.atHz(), coil.exponent());
    double x = f / driver.fsHz();
    double own = driver.qms() * (x - 1 / x);
    double share =
        box == null ? 0 : arithmetic.apply(AIR_SHARE, driver.qms(), driver.fsHz(), driver.vasL());
    Phasor load = AirBehind.of(driver, box).impedanceAt(f);
    double g = arithmetic.apply(DAMPING, share, load.re());
    double y = arithmetic.apply(DETUNING, own, share, load.im());
    double motional = ThieleSmall.MOTIONAL_OHM.at(driver.reOhm(), driver.qms(), driver.qes());
    double real = arithmetic.apply(MOTION_REAL, motional, g, y);
    double imaginary = arithmetic.apply(MOTION_IMAGINARY, motional, g, y);
    double sumReal = arithmetic.apply(ThieleSmall.REAL_PART, driver.reOhm(), coilReal, real);
    double sumImaginary = arithmetic.apply(ThieleSmall.IMAGINARY_PART, coilImaginary, imaginary);
    arithmetic.apply(ThieleSmall.MODULUS, sumReal, sumImaginary);
  }
}
