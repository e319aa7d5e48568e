package org.footwell.electrical.impedance;

import static org.footwell.electrical.impedance.DriverFit.EXPONENT;
import static org.footwell.electrical.impedance.DriverFit.FS;
import static org.footwell.electrical.impedance.DriverFit.LE;
import static org.footwell.electrical.impedance.DriverFit.QES;
import static org.footwell.electrical.impedance.DriverFit.QMS;
import static org.footwell.electrical.impedance.DriverFit.RE;
import static org.footwell.electrical.impedance.ImpedanceFault.BOX_WITHOUT_EFFECT;
import static org.footwell.electrical.impedance.ImpedanceFault.FIT_FAILED;
import static org.footwell.electrical.impedance.ImpedanceFault.MASS_WITHOUT_EFFECT;
import static org.footwell.electrical.impedance.ImpedanceFault.RESONANCE_NOT_FOUND;
import static org.footwell.electrical.impedance.ImpedanceFinding.AREA_INCONSISTENT;
import static org.footwell.electrical.impedance.ImpedanceFinding.COIL_EXPONENT_ASSUMED;
import static org.footwell.electrical.impedance.ImpedanceFinding.COIL_NOT_IN_TABLE;
import static org.footwell.electrical.impedance.ImpedanceFinding.FIT_POOR;
import static org.footwell.electrical.impedance.ImpedanceFinding.FIT_UNCERTAIN;
import static org.footwell.electrical.impedance.ImpedanceFinding.SECOND_PEAK;
import static org.footwell.electrical.impedance.ImpedanceFinding.SECOND_TABLE_INCONSISTENT;

import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.physics.Air;
import org.footwell.physics.ThieleSmall;

/** A driver's parameters from its measured impedance. */
public final class ImpedanceFit implements Calculation<ImpedanceFitRequest, ImpedanceFitResult> {

  private static final Source LEVENBERG_MARQUARDT =
      Source.of(
          "D. W. Marquardt, An Algorithm for Least-Squares Estimation of Nonlinear Parameters,"
              + " Journal of the Society for Industrial and Applied Mathematics 11 (1963)");

  /** A clean table of one driver fits better than this; common practice. */
  private static final double POOR = 0.03;

  /** A parameter known worse than this is not known; common practice. */
  private static final double UNCERTAIN = 0.1;

  private static final String[] NAMES = {"re", "le", "le_exponent", "fs", "qms", "qes"};

  private static final Card<ImpedanceFitRequest, ImpedanceFitResult> CARD =
      Card.of("impedance-fit", ImpedanceFitRequest.class, ImpedanceFitResult.class)
          .title("Driver parameters from measured impedance")
          .purpose(
              "Resistance, inductance, resonance and Qs of a driver from a table of its impedance,"
                  + " with how well they are known; with a second table, taken with an added mass"
                  + " or in a known box, also its moving mass, compliance and vas.")
          .example(
              """
              {"readings": [
                {"frequency_hz": 10, "modulus_ohm": 4.161}, {"frequency_hz": 20, "modulus_ohm": 6.427},
                {"frequency_hz": 28, "modulus_ohm": 11.68}, {"frequency_hz": 33, "modulus_ohm": 22.01},
                {"frequency_hz": 36, "modulus_ohm": 37.99}, {"frequency_hz": 38, "modulus_ohm": 47.07},
                {"frequency_hz": 40, "modulus_ohm": 37.88}, {"frequency_hz": 44, "modulus_ohm": 20.17},
                {"frequency_hz": 52, "modulus_ohm": 10.20}, {"frequency_hz": 70, "modulus_ohm": 5.730},
                {"frequency_hz": 100, "modulus_ohm": 4.511}, {"frequency_hz": 200, "modulus_ohm": 4.838},
                {"frequency_hz": 500, "modulus_ohm": 7.118}, {"frequency_hz": 1000, "modulus_ohm": 10.29},
                {"frequency_hz": 3000, "modulus_ohm": 19.97},
                {"frequency_hz": 10000, "modulus_ohm": 44.04}],
               "sd_cm2": 330,
               "added_mass": {"mass_g": 20, "readings": [
                {"frequency_hz": 15, "modulus_ohm": 5.152}, {"frequency_hz": 25, "modulus_ohm": 11.19},
                {"frequency_hz": 30, "modulus_ohm": 26.09}, {"frequency_hz": 32, "modulus_ohm": 42.10},
                {"frequency_hz": 33, "modulus_ohm": 47.03}, {"frequency_hz": 34, "modulus_ohm": 42.49},
                {"frequency_hz": 37, "modulus_ohm": 22.26}, {"frequency_hz": 45, "modulus_ohm": 9.187},
                {"frequency_hz": 60, "modulus_ohm": 5.374}, {"frequency_hz": 100, "modulus_ohm": 4.286}]}}
              """)
          .sources(
              ThieleSmall.SMALL_DRIVER,
              ThieleSmall.SMALL_CLOSED,
              ThieleSmall.LEACH,
              LEVENBERG_MARQUARDT,
              MovingMass.ADDED_MASS)
          .limits(
              "The tables must be of small signals, of one driver, warmed up alike.",
              "Every reading counts the same, relative to its size: space them evenly on a"
                  + " logarithmic axis, with some more around the resonance.",
              "Confidences hold for noise that differs from reading to reading; they do not know of"
                  + " a wrong mass, volume, area or calibration.",
              "vas and the air's share are for 20 °C at sea level.")
          .findings(
              FIT_POOR,
              FIT_UNCERTAIN,
              COIL_NOT_IN_TABLE,
              COIL_EXPONENT_ASSUMED,
              SECOND_PEAK,
              SECOND_TABLE_INCONSISTENT,
              AREA_INCONSISTENT)
          .refusals(RESONANCE_NOT_FOUND, FIT_FAILED, MASS_WITHOUT_EFFECT, BOX_WITHOUT_EFFECT)
          .build();

  @Override
  public Card<ImpedanceFitRequest, ImpedanceFitResult> card() {
    return CARD;
  }

  @Override
  public ImpedanceFitResult compute(ImpedanceFitRequest q, Run run) {
    DriverFit fit = inFreeAir(q, run);
    remark(q, fit, run);
    SecondTable.Mass mass =
        q.addedMass() == null ? null : SecondTable.withMass(q.addedMass(), fit, run);
    SecondTable.Volume volume =
        q.knownBox() == null ? null : SecondTable.inBox(q.knownBox(), fit, run);
    return result(q, fit, mass, volume, Moving.of(q.sdCm2(), fit, mass, volume, run), run);
  }

  private static DriverFit inFreeAir(ImpedanceFitRequest q, Run run) {
    TableRules table = TableRules.of(q.readings(), "/readings", run);
    Readings readings = table.readings();
    int peak = table.resonance();
    readings.secondPeak(peak).ifPresent(hz -> run.find(SECOND_PEAK).at("/readings").value(hz));
    FreeAirFit fit = FreeAirFit.of(readings, peak, q.reOhm(), q.lossyInductance(), run);
    if (!fit.coilShows()) {
      run.find(COIL_NOT_IN_TABLE).at("/readings").value(readings.lastHz());
    }
    if (fit.exponentAssumed()) {
      run.find(COIL_EXPONENT_ASSUMED)
          .at("/readings")
          .value(readings.lastHz())
          .limit(FreeAirFit.USUAL_EXPONENT);
    }
    return table.determined(fit.driver());
  }

  private static void remark(ImpedanceFitRequest q, DriverFit fit, Run run) {
    int readings = q.readings().size();
    int worst = Residuals.worst(fit, readings);
    double rms = Residuals.rms(fit, readings);
    if (rms > POOR) {
      run.find(FIT_POOR)
          .at("/readings")
          .value(100 * rms)
          .limit(100 * POOR)
          .with("worst", 100 * Math.abs(fit.residual(worst)))
          .with("frequency", q.readings().get(worst).frequencyHz());
    }
    for (int p = 0; p < DriverFit.COUNT; p++) {
      if (fit.confidence(p) > UNCERTAIN) {
        run.find(FIT_UNCERTAIN)
            .at("/readings")
            .value(100 * fit.confidence(p))
            .limit(100 * UNCERTAIN)
            .field("parameter", NAMES[p]);
      }
    }
  }

  /** What the moving parts are, as far as it is known. */
  private record Moving(Double mms, Double cms, Double vas, Double bl) {

    static Moving of(
        Double sd, DriverFit fit, SecondTable.Mass mass, SecondTable.Volume volume, Run run) {
      double[] p = fit.values();
      Double vas = volume == null ? null : volume.litres();
      Double mms = mass == null ? null : mass.grams();
      Double cms = mms == null ? null : (Double) run.apply(ThieleSmall.COMPLIANCE, p[FS], mms);
      if (cms == null && vas != null && sd != null) {
        cms = run.apply(MovingMass.CMS_OF_VAS, vas, sd);
        mms = run.apply(ThieleSmall.MOVING_MASS, p[FS], cms);
      } else if (cms != null && vas == null && sd != null) {
        vas =
            run.apply(
                ThieleSmall.EQUIVALENT_VOLUME,
                Air.REFERENCE_DENSITY_KG_PER_M3,
                Air.REFERENCE_SPEED_M_PER_S,
                sd,
                cms);
      } else if (cms != null && vas != null && sd != null) {
        compareArea(MovingMass.SD_CM2.at(vas, cms), sd, run);
      }
      Double bl = mms == null ? null : (Double) run.apply(MovingMass.BL, p[FS], mms, p[RE], p[QES]);
      return new Moving(mms, cms, vas, bl);
    }

    private static void compareArea(double found, double given, Run run) {
      if (Math.abs(found / given - 1) > UNCERTAIN) {
        run.find(AREA_INCONSISTENT).at("/sd_cm2").value(found).limit(given);
      }
    }
  }

  private static ImpedanceFitResult result(
      ImpedanceFitRequest q,
      DriverFit fit,
      SecondTable.Mass mass,
      SecondTable.Volume volume,
      Moving moving,
      Run run) {
    double[] p = fit.values();
    int readings = q.readings().size();
    int worst = Residuals.worst(fit, readings);
    boolean coil = p[LE] > 0;
    Double phase = Residuals.phaseDeg(fit, readings);
    return ImpedanceFitResultBuilder.builder()
        .reOhm(p[RE])
        .reConfidencePercent(q.reOhm() == null ? percent(fit, RE) : null)
        .leMh(coil ? p[LE] * 1000 : null)
        .leConfidencePercent(coil ? percent(fit, LE) : null)
        .leExponent(coil ? p[EXPONENT] : null)
        .leExponentConfidencePercent(fit.sought(EXPONENT) ? percent(fit, EXPONENT) : null)
        .fsHz(p[FS])
        .fsConfidencePercent(percent(fit, FS))
        .qms(p[QMS])
        .qmsConfidencePercent(percent(fit, QMS))
        .qes(p[QES])
        .qesConfidencePercent(percent(fit, QES))
        .qts(run.apply(ThieleSmall.TOTAL_Q, p[QMS], p[QES]))
        .resonanceOhm(run.apply(ThieleSmall.RESONANCE_OHM, p[RE], p[QMS], p[QES]))
        .residualPercent(100 * Residuals.rms(fit, readings))
        .residualPhaseDeg(phase)
        .largestResidualPercent(100 * Math.abs(fit.residual(worst)))
        .largestResidualHz(q.readings().get(worst).frequencyHz())
        .withMass(mass == null ? null : mass.found())
        .inBox(volume == null ? null : volume.found())
        .mmsG(moving.mms())
        .cmsMmPerN(moving.cms())
        .vasL(moving.vas())
        .blTm(moving.bl())
        .build();
  }

  private static Double percent(DriverFit fit, int parameter) {
    return 100 * fit.confidence(parameter);
  }
}
