package org.footwell.acoustic.alignment;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Phasor;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

/**
 * Our frequencies lie four times wider apart than those of the table, which is what the tolerances
 * allow for. Near a null the loss changes fast between two of them.
 */
class PhaseMatchOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        check("delay_ms", PhaseMatch.Setting::delayMs).within(0.01),
        check("largest_loss_db", PhaseMatch.Setting::lossDb).within(0.005),
        check("flight_loss_db", PhaseMatch.Setting::flightLossDb)
            .rows(row -> row.number("flight_loss_db") > -10)
            .within(0.005),
        check("deep flight_loss_db", PhaseMatch.Setting::flightLossDb)
            .rows(row -> row.number("flight_loss_db") <= -10)
            .within(0.1));
  }

  private static OutsideCheck check(String column, ToDoubleFunction<PhaseMatch.Setting> ours) {
    return OutsideCheck.of("seat-delays", "match " + column, "scipy-phase-matches.csv")
        .printed(column.replace("deep ", ""))
        .computed(row -> ours.applyAsDouble(setting(row)));
  }

  private static PhaseMatch.Setting setting(Row row) {
    AnalogFilter subsonic = highPass(row.text("lower_high_pass"));
    AnalogFilter low = filter(row.text("lower_low_pass")).lowPass();
    AnalogFilter high = highPass(row.text("upper_high_pass"));
    double late = row.number("late_ms");
    DoubleFunction<Phasor> lower =
        f -> through(subsonic, f).times(low.at(f)).times(Phasor.ofPolar(1, -0.36 * f * late));
    DoubleFunction<Phasor> upper = f -> through(high, f);
    PhaseMatch match =
        PhaseMatch.of(
            lower,
            Collections.nCopies((int) row.number("uppers"), upper),
            row.number("crossover_hz"),
            high != null);
    return row.number("polarity") == 1 ? match.asGiven() : match.inverted();
  }

  private static Phasor through(AnalogFilter filter, double frequencyHz) {
    return filter == null ? Phasor.ONE : filter.at(frequencyHz);
  }

  private static AnalogFilter highPass(String text) {
    return text.equals("-") ? null : filter(text).highPass();
  }

  private static Filter filter(String text) {
    String[] parts = text.split(" ", -1);
    return Filter.of(
        Kind.valueOf(parts[0].toUpperCase(Locale.ROOT)),
        Integer.parseInt(parts[1]),
        Double.parseDouble(parts[2]));
  }
}
