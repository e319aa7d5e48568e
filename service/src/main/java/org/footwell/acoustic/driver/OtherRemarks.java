package org.footwell.acoustic.driver;

import java.util.List;
import java.util.function.Function;
import org.footwell.acoustic.driver.sheet.DriverTolerance;
import org.footwell.acoustic.driver.sheet.Figure;
import org.footwell.acoustic.driver.sheet.Sheet;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.calculation.text.Phrase;
import org.footwell.physics.Decibels;
import org.footwell.physics.Piston;

/** What is said about the figures that no identity ties to the others. */
final class OtherRemarks {

  private static final Formula.Of2 RE_RATIO =
      Formula.of("re_ratio", "re/rated", "", Source.DEFINITION)
          .with("re", "rated", (re, rated) -> re / rated);
  private static final Formula.Of2 PEAK =
      Formula.of("peak_over_continuous_db", "10·lg(peak/continuous)", "dB", Source.DEFINITION)
          .with("peak", "continuous", (peak, mean) -> Decibels.ofPower(peak / mean));

  /** Four times the power is 6.02 dB and is called 6. */
  private static final double DB_ROUNDING = 0.05;

  /** Beyond the usual ratio of re to rated impedance by this factor, one of them is wrong. */
  private static final double GROSS_RATIO = 1.5;

  private static final String NOMINAL = "/nominal_mm";

  private final DriverCheckRequest q;
  private final Sheet sheet;
  private final DriverTolerance tolerance;
  private final boolean small;
  private final Run run;

  OtherRemarks(DriverCheckRequest q, Sheet sheet, boolean small, Run run) {
    this.q = q;
    this.sheet = sheet;
    this.tolerance = q.tolerance();
    this.small = small;
    this.run = run;
  }

  /** Says so when a figure lies outside of what is usual. */
  static void outside(String pointer, double value, UsualRange range, boolean small, Run run) {
    if (!range.holds(value, small)) {
      run.find(range.isAbsurd(value, small) ? DriverFinding.ABSURD : DriverFinding.IMPLAUSIBLE)
          .at(pointer)
          .value(value)
          .with("low", range.low(small))
          .with("high", range.high(small));
    }
  }

  void ranges() {
    range("/le_mh", q.leMh(), UsualRange.LE, UnitSlip.INDUCTANCE);
    xmax();
    range("/continuous_power_w", q.continuousPowerW(), UsualRange.POWER, UnitSlip.POWER);
    range("/peak_power_w", q.peakPowerW(), UsualRange.POWER, UnitSlip.POWER);
    range("/mass_g", q.massG(), UsualRange.DRIVER_MASS, UnitSlip.MASS);
    range(NOMINAL, q.nominalMm(), UsualRange.DIAMETER, UnitSlip.LENGTH);
    range("/outside_mm", q.outsideMm(), UsualRange.DIAMETER, UnitSlip.LENGTH);
    range("/cutout_mm", q.cutoutMm(), UsualRange.DIAMETER, UnitSlip.LENGTH);
    range("/mounting_depth_mm", q.mountingDepthMm(), UsualRange.DEPTH, UnitSlip.LENGTH);
    if (q.cutoutMm() != null && q.outsideMm() != null && q.cutoutMm() >= q.outsideMm()) {
      run.find(DriverFinding.CUTOUT_TOO_LARGE)
          .at("/cutout_mm")
          .value(q.cutoutMm())
          .limit(q.outsideMm());
    }
  }

  /** A displacement is held against the size of its driver too: both directions may be counted. */
  private void xmax() {
    Double given = q.xmaxMm();
    double most = mostXmax();
    if (given == null || given <= most) {
      range("/xmax_mm", given, UsualRange.XMAX, UnitSlip.LENGTH);
    } else if (given / 2 <= most) {
      run.find(DriverFinding.XMAX_PEAK_TO_PEAK)
          .at("/xmax_mm")
          .value(given)
          .limit(most)
          .with("half", given / 2);
    } else {
      run.find(
              UsualRange.XMAX.isAbsurd(given, small)
                  ? DriverFinding.ABSURD
                  : DriverFinding.IMPLAUSIBLE)
          .at("/xmax_mm")
          .value(given)
          .with("low", UsualRange.XMAX.low(small))
          .with("high", most);
    }
  }

  /** Largest usual displacement, mm, as far as cone, nominal size and depth are in order. */
  private double mostXmax() {
    double most = UsualRange.XMAX.high(small);
    double area = sheet.of(Figure.SD_CM2);
    if (sheet.isKnown(Figure.SD_CM2) && UsualRange.SD.holds(area, small)) {
      double diameter = Piston.EFFECTIVE_DIAMETER.at(area);
      most = Math.min(most, UsualRange.MOST_XMAX_PER_DIAMETER * diameter);
    } else if (q.nominalMm() != null && UsualRange.DIAMETER.holds(q.nominalMm(), small)) {
      double largest = UsualRange.mostDiameter(q.nominalMm(), small);
      most = Math.min(most, UsualRange.MOST_XMAX_PER_DIAMETER * largest);
    }
    if (q.mountingDepthMm() != null && UsualRange.DEPTH.holds(q.mountingDepthMm(), small)) {
      most = Math.min(most, UsualRange.MOST_XMAX_PER_DEPTH * q.mountingDepthMm());
    }
    return most;
  }

  private void range(String pointer, Double value, UsualRange range, List<UnitSlip> slips) {
    if (value == null || range.holds(value, small)) {
      return;
    }
    List<UnitSlip> fitting =
        range.isSuspicious(value, small)
            ? slips.stream().filter(s -> range.holds(value * s.factor(), small)).toList()
            : List.of();
    if (fitting.size() > 1 && pointer.equals(NOMINAL)) {
      fitting = fittingCone(value, fitting);
    }
    if (fitting.isEmpty()) {
      outside(pointer, value, range, small, run);
      return;
    }
    run.find(DriverFinding.UNIT_SLIP)
        .at(pointer)
        .value(value)
        .limit(value * fitting.get(0).factor())
        .with("slip", either(fitting, UnitSlip::words))
        .with(
            "right",
            either(
                fitting,
                slip -> Phrase.of(DriverWords.NUMBER).with("number", value * slip.factor())));
  }

  private static Phrase either(List<UnitSlip> slips, Function<UnitSlip, Phrase> words) {
    return slips.stream()
        .map(words)
        .reduce((one, other) -> Phrase.of(DriverWords.EITHER).with("one", one).with("other", other))
        .orElseThrow();
  }

  /** Of several ways to mistake a nominal size those that a known cone fits; all if it fits none. */
  private List<UnitSlip> fittingCone(double nominal, List<UnitSlip> slips) {
    if (!sheet.isKnown(Figure.SD_CM2)) {
      return slips;
    }
    double diameter = Piston.EFFECTIVE_DIAMETER.at(sheet.of(Figure.SD_CM2));
    List<UnitSlip> fitting =
        slips.stream()
            .filter(s -> UsualRange.fitsNominal(diameter, nominal * s.factor(), small))
            .toList();
    return fitting.isEmpty() ? slips : fitting;
  }

  /** re over rated impedance; null without re. */
  Double reRatio() {
    if (!sheet.isKnown(Figure.RE_OHM)) {
      return null;
    }
    double re = sheet.of(Figure.RE_OHM);
    double rated = q.ratedOhm();
    double ratio = run.apply(RE_RATIO, re, rated);
    double low = tolerance.reRatioLow();
    double high = tolerance.reRatioHigh();
    double rounding = 1 + sheet.rounding(Figure.RE_OHM);
    String pointer = sheet.isGiven(Figure.RE_OHM) ? Figure.RE_OHM.pointer() : "/rated_ohm";
    if (ratio * GROSS_RATIO < low / rounding || ratio > high * GROSS_RATIO * rounding) {
      run.find(DriverFinding.RE_CONTRADICTS_RATED)
          .at(pointer)
          .value(re)
          .limit(ratio < low ? low * rated : high * rated)
          .with("rated", rated)
          .with("low", low * rated)
          .with("high", high * rated);
    } else if (ratio > high * rounding) {
      run.find(DriverFinding.RE_ABOVE_RATED)
          .at(pointer)
          .value(re)
          .limit(high * rated)
          .with("low", low * rated);
    } else if (ratio < low / rounding) {
      run.find(DriverFinding.RE_LOW_FOR_RATED)
          .at(pointer)
          .value(re)
          .limit(low * rated)
          .with("high", high * rated);
    }
    return ratio;
  }

  /** Peak over continuous power in dB; null without both. */
  Double peak() {
    if (q.peakPowerW() == null || q.continuousPowerW() == null) {
      return null;
    }
    double db = run.apply(PEAK, q.peakPowerW(), q.continuousPowerW());
    if (db < 0) {
      run.find(DriverFinding.PEAK_BELOW_CONTINUOUS)
          .at("/peak_power_w")
          .value(q.peakPowerW())
          .limit(q.continuousPowerW());
    } else if (db > tolerance.peakDb() + DB_ROUNDING) {
      run.find(DriverFinding.PEAK_INFLATED).at("/peak_power_w").value(db).limit(tolerance.peakDb());
    }
    return db;
  }

  /** Effective diameter in mm of a cone area; that of a known one is held against the nominal size. */
  double diameter(double area) {
    double diameter = run.apply(Piston.EFFECTIVE_DIAMETER, area);
    if (q.nominalMm() != null && sheet.isKnown(Figure.SD_CM2)) {
      double nominal = q.nominalMm();
      if (!UsualRange.DIAMETER.isSuspicious(nominal, small)
          && !UsualRange.fitsNominal(diameter, nominal, small)) {
        run.find(DriverFinding.SIZE_OFF)
            .at(NOMINAL)
            .value(diameter)
            .with("nominal", nominal)
            .with("low", UsualRange.leastDiameter(nominal, small))
            .with("high", UsualRange.mostDiameter(nominal, small));
      }
    }
    return diameter;
  }
}
