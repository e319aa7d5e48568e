package org.footwell.acoustic.enclosure.lowend;

import static org.footwell.acoustic.enclosure.lowend.BoxFinding.SUBSONIC_FILTER_NOT_ENOUGH;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.UNLOADED_BELOW_TUNING;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.XMAX_NOT_GIVEN;

import java.util.OptionalDouble;
import org.footwell.acoustic.enclosure.radiator.Survey;
import org.footwell.acoustic.enclosure.radiator.Survey.Quantity;
import org.footwell.acoustic.enclosure.radiator.Survey.Summit;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.Filter;

/** How far the cone goes over the range, and what keeps it within xmax. */
public final class Excursion {

  /** Power in W at which a displacement just reaches xmax: it grows with the root of power. */
  static final Formula.Of3 DISPLACEMENT_POWER =
      Formula.of("displacement_power_w", "P·(xmax/x)²", "W", Source.DEFINITION)
          .with("P", "xmax", "x", (p, xmax, x) -> p * (xmax / x) * (xmax / x));

  /** What a corner or a power found to reach xmax exactly may miss it by. */
  private static final double ROUNDING = 1 + 1e-9;

  private final PlayedBox q;
  private final Survey survey;
  private final BoxDrive drive;
  private final Double tuning;
  private final BoxFinding tooFar;
  private final Quantity displacement;

  /**
   * Looks at a range.
   *
   * @param tuning of a vented box, Hz, or null
   * @param tooFar what is found where nothing but the air behind should hold the cone
   */
  public Excursion(PlayedBox q, Survey survey, BoxDrive drive, Double tuning, BoxFinding tooFar) {
    this.q = q;
    this.survey = survey;
    this.drive = drive;
    this.tuning = tuning;
    this.tooFar = tooFar;
    displacement = (f, state) -> state.displacementMm() * drive.voltage();
  }

  /**
   * The limits.
   *
   * @param bassEndHz a high-pass above it would cost more than it protects
   */
  public BoxLimits limits(double bassEndHz, double modelLimitHz, Run run) {
    Summit largest = survey.highest(displacement);
    Double xmax = q.driver().xmaxMm();
    if (xmax == null) {
      run.find(XMAX_NOT_GIVEN).at("/driver/xmax_mm").value(largest.value());
      return BoxLimitsBuilder.builder()
          .voltageV(drive.voltage())
          .powerW(drive.power())
          .largestDisplacementMm(largest.value())
          .largestDisplacementHz(largest.frequencyHz())
          .modelLimitHz(modelLimitHz)
          .build();
    }
    double power = run.apply(DISPLACEMENT_POWER, drive.power(), xmax, largest.value());
    Double upwards = upwardsOfTuning(xmax, run);
    boolean kept = largest.value() <= xmax * ROUNDING;
    return BoxLimitsBuilder.builder()
        .voltageV(drive.voltage())
        .powerW(drive.power())
        .largestDisplacementMm(largest.value())
        .largestDisplacementHz(largest.frequencyHz())
        .xmaxKept(kept)
        .xmaxExceededBelowHz(kept ? null : exceeded(largest, xmax, run))
        .displacementPowerW(power)
        .protectedPowerW(upwards)
        .subsonic(kept ? null : subsonic(xmax, bassEndHz, upwards == null ? power : upwards, run))
        .modelLimitHz(modelLimitHz)
        .build();
  }

  private Double upwardsOfTuning(double xmax, Run run) {
    if (tuning == null || tuning >= q.frequencies().toHz()) {
      return null;
    }
    Summit above = survey.highest(displacement, Math.max(tuning, q.frequencies().fromHz()));
    return run.apply(DISPLACEMENT_POWER, drive.power(), xmax, above.value());
  }

  /** The frequency below which xmax is exceeded; findings say so on both sides of a tuning. */
  private double exceeded(Summit largest, double xmax, Run run) {
    double to = q.frequencies().toHz();
    double last = survey.lastReaching(displacement, xmax, to).orElse(largest.frequencyHz());
    OptionalDouble unloaded =
        tuning == null
            ? OptionalDouble.empty()
            : survey.lastReaching(displacement, xmax, Math.min(tuning, to));
    if (unloaded.isPresent()) {
      run.find(UNLOADED_BELOW_TUNING)
          .at("/driver/xmax_mm")
          .value(largest.value())
          .limit(xmax)
          .with("frequency", unloaded.getAsDouble())
          .with("tuning", tuning);
    }
    if (unloaded.isEmpty() || last > unloaded.getAsDouble()) {
      Summit here = tuning == null ? largest : survey.highest(displacement, Math.min(tuning, to));
      run.find(tooFar)
          .at("/driver/xmax_mm")
          .value(here.value())
          .limit(xmax)
          .with("at", here.frequencyHz())
          .with("frequency", last);
    }
    return last;
  }

  private Filter subsonic(double xmax, double bassEndHz, double allowedPower, Run run) {
    int order = q.subsonicOrder();
    Summit worst = SubsonicFilter.lowest(order, survey, displacement, xmax);
    if (worst.value() > bassEndHz) {
      run.find(SUBSONIC_FILTER_NOT_ENOUGH)
          .at("/subsonic_order")
          .value(worst.value())
          .limit(bassEndHz)
          .with("order", order)
          .with("power", allowedPower);
      return null;
    }
    return SubsonicFilter.of(order, worst, xmax, run);
  }
}
