package org.footwell.acoustic.enclosure;

import java.util.Optional;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.parts.Box;
import org.footwell.parts.Driver;
import org.footwell.physics.Decibels;
import org.footwell.physics.ThieleSmall;

/**
 * Resonance and Q of a driver in a closed volume.
 *
 * @param qts total Q in free air, the source's resistance in it
 * @param qtc total Q in the box, its losses in it; null where leaks make more of it than a Q
 */
record ClosedAlignment(
    double qts, double volumeL, double alpha, double fcHz, double qmc, double qec, Double qtc) {

  /**
   * Losses of a leak and of absorption in the box as 1/Q of the air in it at resonance: the real
   * part of the box's impedance there over the compliance's.
   */
  static final Formula.Of1 LEAK_LOSS =
      Formula.of("leak_loss", "ql/(1 + ql²)", "", ThieleSmall.SMALL_CLOSED)
          .with("ql", ql -> ql / (1 + ql * ql));

  /** Total Q from those of the driver in the box and the losses of the air, its share by alpha. */
  static final Formula.Of4 QTC =
      Formula.of("qtc", "1/(1/qmc + 1/qec + loss·alpha/(1 + alpha))", "", ThieleSmall.SMALL_CLOSED)
          .with(
              "qmc",
              "qec",
              "loss",
              "alpha",
              (qmc, qec, loss, alpha) -> 1 / (1 / qmc + 1 / qec + loss * alpha / (1 + alpha)));

  /**
   * Compliance ratio for a wanted total Q: with v = fs/fc the losses are v/qts + loss·(1 − v²), a
   * quadratic equation, and alpha is 1/v² − 1.
   */
  static final Formula.Of3 ALPHA_FOR_QTC =
      Formula.of(
              "compliance_ratio",
              "1/v² − 1, v = 2·(1/qtc − loss)/(1/qts + √(1/qts² − 4·loss·(1/qtc − loss)))",
              "",
              ThieleSmall.SMALL_CLOSED)
          .with("qtc", "qts", "loss", ClosedAlignment::alphaFor);

  /** Total Q whose response peaks by a ripple in dB, 0 or more. */
  static final Formula.Of1 QTC_FOR_RIPPLE =
      Formula.of(
              "qtc", "p·√((1 + √(1 − 1/p²))/2), p = 10^(ripple/20)", "", ThieleSmall.SMALL_CLOSED)
          .with(
              "ripple",
              ripple -> {
                double p = Decibels.toAmplitude(ripple);
                return p * Math.sqrt((1 + Math.sqrt(1 - 1 / (p * p))) / 2);
              });

  /** Net volume in litre for a compliance ratio, from vas in litre. */
  private static final Formula.Of3 VOLUME =
      Formula.of("volume_l", "vas/(alpha·fill)", "l", ThieleSmall.SMALL_CLOSED)
          .with("vas", "alpha", "fill", (vas, alpha, fill) -> vas / (alpha * fill));

  private static final Formula.Of2 APPARENT_VOLUME =
      Formula.of("apparent_volume_l", "V·fill", "l", ThieleSmall.SMALL_CLOSED)
          .with("V", "fill", (v, fill) -> v * fill);

  private static final Formula.Of2 SUM =
      Formula.of("box_loss", "1/qa + leak loss", "", ThieleSmall.SMALL_CLOSED)
          .with("qa", "leak loss", (qa, leak) -> 1 / qa + leak);

  /** In a box of a given volume, or of that for a wanted Q; none where no volume gives the Q. */
  static Optional<ClosedAlignment> inBox(
      Driver driver, Box box, double sourceOhm, Arithmetic steps) {
    double qes = electricalQ(driver, sourceOhm, steps);
    double qts = steps.apply(ThieleSmall.TOTAL_Q, driver.qms(), qes);
    double loss = loss(box, steps);
    if (box.volumeL() != null) {
      double apparent = steps.apply(APPARENT_VOLUME, box.volumeL(), box.fill());
      double alpha = steps.apply(ThieleSmall.COMPLIANCE_RATIO, driver.vasL(), apparent);
      return Optional.of(of(driver, qes, qts, box.volumeL(), alpha, loss, steps));
    }
    double wanted = wantedQ(box, steps);
    if (!(alphaFor(wanted, qts, loss) > 0)) {
      return Optional.empty();
    }
    double alpha = steps.apply(ALPHA_FOR_QTC, wanted, qts, loss);
    double volume = steps.apply(VOLUME, driver.vasL(), alpha, box.fill());
    return Optional.of(of(driver, qes, qts, volume, alpha, loss, steps));
  }

  /** Total Q that a box without a volume shall give. */
  static double wantedQ(Box box, Arithmetic steps) {
    return box.qtc() == null ? steps.apply(QTC_FOR_RIPPLE, box.rippleDb()) : box.qtc();
  }

  /** In a volume so leaky that its total Q says little. */
  static ClosedAlignment leaky(Driver driver, double sourceOhm, double volumeL, Arithmetic steps) {
    double qes = electricalQ(driver, sourceOhm, steps);
    double qts = steps.apply(ThieleSmall.TOTAL_Q, driver.qms(), qes);
    double alpha = steps.apply(ThieleSmall.COMPLIANCE_RATIO, driver.vasL(), volumeL);
    ClosedAlignment tight = of(driver, qes, qts, volumeL, alpha, 0, steps);
    return new ClosedAlignment(qts, volumeL, alpha, tight.fcHz, tight.qmc, tight.qec, null);
  }

  private static ClosedAlignment of(
      Driver driver,
      double qes,
      double qts,
      double volume,
      double alpha,
      double loss,
      Arithmetic steps) {
    double fc = steps.apply(ThieleSmall.IN_CLOSED_BOX, driver.fsHz(), alpha);
    double qmc = steps.apply(ThieleSmall.IN_CLOSED_BOX, driver.qms(), alpha);
    double qec = steps.apply(ThieleSmall.IN_CLOSED_BOX, qes, alpha);
    double qtc = steps.apply(QTC, qmc, qec, loss, alpha);
    return new ClosedAlignment(qts, volume, alpha, fc, qmc, qec, qtc);
  }

  /** Total Q in free air, the source's resistance in it. */
  static double freeAirQ(Driver driver, double sourceOhm, Arithmetic steps) {
    return steps.apply(ThieleSmall.TOTAL_Q, driver.qms(), electricalQ(driver, sourceOhm, steps));
  }

  private static double electricalQ(Driver driver, double sourceOhm, Arithmetic steps) {
    return sourceOhm == 0
        ? driver.qes()
        : steps.apply(ThieleSmall.QES_WITH_SOURCE, driver.qes(), driver.reOhm(), sourceOhm);
  }

  /** What the air in a box loses, as 1/Q. */
  static double loss(Box box, Arithmetic steps) {
    double leak = box.ql() == null ? 0 : steps.apply(LEAK_LOSS, box.ql());
    return box.qa() == null ? leak : steps.apply(SUM, box.qa(), leak);
  }

  /** NaN or not above 0 where no volume gives the Q. */
  private static double alphaFor(double qtc, double qts, double loss) {
    double rest = 1 / qtc - loss;
    double root = Math.sqrt(1 / (qts * qts) - 4 * loss * rest);
    double v = 2 * rest / (1 / qts + root);
    return v > 0 ? 1 / (v * v) - 1 : Double.NaN;
  }
}
