package org.footwell.electrical.impedance;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.physics.Phasor;
import org.footwell.physics.ThieleSmall;

/**
 * The impedance of a driver: its resistance, its coil, and its motion as the terminals show it, in
 * free air or in a box. In terms of x = f/fs the motion is
 *
 * <pre>
 *   Z = re·(qms/qes)/(1 + j·qms·(x − 1/x) + B)
 *   B = 0                                       in free air
 *   B = qms·alpha/(j·x)                         in a closed box, alpha = vas/vb
 *   B = qms·alpha/(h/ql + j·(x − h²/x))         in a vented box, h = fb/fs
 * </pre>
 *
 * B is the box as the dual of its acoustic circuit: compliance, leak and vent are in parallel there
 * and so in series here.
 */
public final class DriverImpedance implements Impedance {

  /** Real part of the denominator, in the unit of the mechanical losses: they and the leak. */
  private static final Formula.Of4 DAMPING =
      Formula.of("damping", "1 + B·d/(d² + v²), d = h/ql", "", ThieleSmall.SMALL_VENTED)
          .with("B", "h", "ql", "v", (b, h, ql, v) -> 1 + b * (h / ql) / square(h / ql, v));

  /** Imaginary part of the denominator: how far mass and stiffness are from balance. */
  private static final Formula.Of4 DETUNING =
      Formula.of("detuning", "qms·(x − 1/x) − B·v/(d² + v²)", "", ThieleSmall.SMALL_VENTED)
          .with("qms·(x − 1/x)", "B", "d", "v", (own, b, d, v) -> own - b * v / square(d, v));

  private static final Formula.Of3 MOTION_REAL =
      Formula.of("motion_real_ohm", "R·g/(g² + y²)", "ohm", ThieleSmall.SMALL_DRIVER)
          .with("R", "g", "y", (r, g, y) -> r * g / (g * g + y * y));
  private static final Formula.Of3 MOTION_IMAGINARY =
      Formula.of("motion_imaginary_ohm", "−R·y/(g² + y²)", "ohm", ThieleSmall.SMALL_DRIVER)
          .with("R", "g", "y", (r, g, y) -> -r * y / (g * g + y * y));
  private static final Formula.Of4 COIL_REAL =
      Formula.of("coil_real_ohm", "X0·(f/f0)^n/tan(n·π/2)", "ohm", ThieleSmall.LEACH)
          .with("X0", "f", "f0", "n", (x0, f, f0, n) -> x0 * Math.pow(f / f0, n) * lossShare(n));
  private static final Formula.Of4 COIL_IMAGINARY =
      Formula.of("coil_imaginary_ohm", "X0·(f/f0)^n", "ohm", ThieleSmall.LEACH)
          .with("X0", "f", "f0", "n", (x0, f, f0, n) -> x0 * Math.pow(f / f0, n));

  private final double re;
  private final double motional;
  private final double fs;
  private final double qms;
  private final double le;
  private final double reactanceAt;
  private final double atHz;
  private final double exponent;
  private final double lossShare;
  private final double boxShare;
  private final double tuning;
  private final double ql;

  /**
   * A driver in free air or in a box.
   *
   * @param box null in free air; otherwise the driver has a vas
   */
  public DriverImpedance(ImpedanceDriver driver, ImpedanceBox box) {
    re = driver.reOhm();
    fs = driver.fsHz();
    qms = driver.qms();
    motional = ThieleSmall.MOTIONAL_OHM.at(re, qms, driver.qes());
    exponent = driver.leExponent();
    atHz = exponent == 1 ? 1000 : driver.leAtHz();
    le = driver.leMh();
    reactanceAt = ThieleSmall.REACTANCE_OHM.at(atHz, le);
    lossShare = lossShare(exponent);
    boxShare =
        box == null ? 0 : qms * ThieleSmall.COMPLIANCE_RATIO.at(driver.vasL(), box.volumeL());
    tuning = box == null || box.fbHz() == null ? 0 : box.fbHz() / fs;
    ql = box == null ? 1 : box.ql();
  }

  @Override
  public Phasor at(double f) {
    Phasor coil = coil(f);
    double g = damping(f);
    double y = detuning(f);
    double square = g * g + y * y;
    return new Phasor(re + coil.re() + motional * g / square, coil.im() - motional * y / square);
  }

  /** The coil alone, without its DC resistance. */
  public Phasor coil(double f) {
    double reactance =
        exponent == 1 ? reactanceAt * f / atHz : reactanceAt * Math.pow(f / atHz, exponent);
    return new Phasor(reactance * lossShare, reactance);
  }

  /** Notes how the impedance at one frequency comes about. */
  void explain(double f, Run run) {
    double x0 = run.apply(ThieleSmall.REACTANCE_OHM, atHz, le);
    double coilReal = run.apply(COIL_REAL, x0, f, atHz, exponent);
    double coilImaginary = run.apply(COIL_IMAGINARY, x0, f, atHz, exponent);
    double g = run.apply(DAMPING, boxShare, tuning, ql, off(f));
    double y = run.apply(DETUNING, own(f), boxShare, tuning / ql, off(f));
    double real = run.apply(MOTION_REAL, motional, g, y);
    double imaginary = run.apply(MOTION_IMAGINARY, motional, g, y);
    double sumReal = run.apply(ThieleSmall.REAL_PART, re, coilReal, real);
    double sumImaginary = run.apply(ThieleSmall.IMAGINARY_PART, coilImaginary, imaginary);
    run.apply(ThieleSmall.MODULUS, sumReal, sumImaginary);
  }

  private double damping(double f) {
    return boxShare == 0 ? 1 : DAMPING.at(boxShare, tuning, ql, off(f));
  }

  private double detuning(double f) {
    double own = own(f);
    return boxShare == 0 ? own : DETUNING.at(own, boxShare, tuning / ql, off(f));
  }

  /** What the driver alone is out of balance. */
  private double own(double f) {
    double x = f / fs;
    return qms * (x - 1 / x);
  }

  /** x − h²/x: how far a vented box is from its tuning; x alone in a closed one. */
  private double off(double f) {
    double x = f / fs;
    return x - tuning * tuning / x;
  }

  /** Above 0: a vented box has losses, and in a closed one v is x. */
  private static double square(double d, double v) {
    return d * d + v * v;
  }

  /** Resistance over reactance of a lossy coil: 0 for an ideal one. */
  private static double lossShare(double exponent) {
    return exponent == 1 ? 0 : 1 / Math.tan(exponent * Math.PI / 2);
  }
}
