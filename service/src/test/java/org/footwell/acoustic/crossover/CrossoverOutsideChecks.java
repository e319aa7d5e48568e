package org.footwell.acoustic.crossover;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleBinaryOperator;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.physics.Piston;
import org.footwell.physics.ProgrammeSpectrum;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class CrossoverOutsideChecks extends OutsideChecks {

  private static final double RHO = 1.2041;

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        check("programme spectrum, dB", "iec-60268-1-programme.csv")
            .printed("level_db")
            .computed(row -> inThirdOctave(row.number("frequency_hz")))
            .within(1e-9),
        check("whole programme over one band, dB", "iec-60268-1-programme.csv")
            .rows(row -> !row.text("whole_db").equals("-"))
            .printed("whole_db")
            .computed(row -> -thirdOctaveShareDb(row.number("frequency_hz")))
            .within(0.1),
        check("share of programme", "crossover-programme-shares.csv")
            .rows(row -> !row.text("programme").equals("circuit"))
            .printed("share")
            .computed(CrossoverOutsideChecks::share)
            .withinRelative(1e-3),
        // Two realisations of one signal: the circuit is up to 1.2 dB off the table in a band.
        check("share of programme, by circuit", "crossover-programme-shares.csv")
            .rows(row -> row.text("programme").equals("circuit"))
            .printed("share")
            .computed(CrossoverOutsideChecks::share)
            .withinRelative(0.14),
        check("lowest_hz by displacement", "crossover-displacement-limits.csv")
            .rows(row -> row.number("lowest_hz") > 0)
            .printed("lowest_hz")
            .computed(CrossoverOutsideChecks::lowestHz)
            .withinRelative(1e-5),
        check("lowest_hz over full_level_from_hz", "crossover-skirts-by-hand.csv")
            .printed("corner_ratio")
            .computed(CrossoverOutsideChecks::cornerRatio)
            .within(5e-6),
        capacitor("magnitude_db", SeriesCapacitor.LEVEL::at),
        capacitor("phase_deg", SeriesCapacitor.PHASE::at));
  }

  private static OutsideCheck check(String quantity, String table) {
    return OutsideCheck.of("crossover-plan", quantity, table);
  }

  private static OutsideCheck capacitor(String column, DoubleBinaryOperator formula) {
    return check("capacitor, " + column, "scipy-analog-filters.csv")
        .rows(
            row ->
                row.text("side").equals("high")
                    && row.number("order") == 1
                    && row.text("family").equals("butterworth"))
        .printed(column)
        .computed(row -> formula.applyAsDouble(1, row.number("w_rad_per_s")))
        .within(1e-5);
  }

  /** Level of the third octave at a nominal frequency, from the share of the whole in it. */
  private static double inThirdOctave(double nominal) {
    return thirdOctaveShareDb(nominal) - thirdOctaveShareDb(500);
  }

  private static double thirdOctaveShareDb(double nominal) {
    long band = Math.round(10 * Math.log10(nominal / 1000));
    ProgrammeSpectrum spectrum = ProgrammeSpectrum.simulated();
    double from = spectrum.below(1000 * Math.pow(10, (band - 0.5) / 10));
    double to = spectrum.below(1000 * Math.pow(10, (band + 0.5) / 10));
    return Decibels.ofPower(to - from);
  }

  private static double share(Row row) {
    ProgrammeSpectrum spectrum =
        row.text("programme").equals("pink")
            ? ProgrammeSpectrum.pink(20, 20000)
            : ProgrammeSpectrum.simulated();
    return spectrum.share(
        f -> power(row, "high_pass_hz", true, f) * power(row, "low_pass_hz", false, f));
  }

  private static double power(Row row, String column, boolean high, double f) {
    if (row.text(column).equals("-")) {
      return 1;
    }
    Filter filter = new Filter(kind(row), (int) row.number("order"), row.number(column), null);
    AnalogFilter analog = high ? filter.highPass() : filter.lowPass();
    return analog.squaredMagnitude(f);
  }

  private static Kind kind(Row row) {
    return Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT));
  }

  private static double lowestHz(Row row) {
    return new FilteredExcursion(
            row.number("sd_cm2"),
            row.number("xmax_mm"),
            row.number("fs_hz"),
            row.number("qts"),
            row.number("level_db_spl"),
            RHO)
        .lowestCorner(kind(row), (int) row.number("order"))
        .value();
  }

  /** With a resonance far below everything, so that it does not matter. */
  private static double cornerRatio(Row row) {
    FilteredExcursion excursion = new FilteredExcursion(10, 0.5, 0.01, 0.7, 100, RHO);
    double atOneHertz = Piston.DISPLACEMENT_OF_LEVEL.at(1, 10, 100, RHO);
    return excursion.lowestCorner(kind(row), (int) row.number("order")).value()
        / FilteredExcursion.FULL_LEVEL_FROM.at(atOneHertz, 0.5);
  }
}
