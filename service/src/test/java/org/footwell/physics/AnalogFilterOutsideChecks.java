package org.footwell.physics;

import java.util.List;
import java.util.Locale;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.BesselNormalisation;
import org.footwell.parts.Filter.Kind;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

/** Filters of analog form, under the calculations that ask them for each quantity. */
class AnalogFilterOutsideChecks extends OutsideChecks {

  private static final double CORNER_HZ = 80;

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        filters("seat-delays", "magnitude_db")
            .computed(row -> filter(row).magnitudeDb(frequency(row)))
            .within(0.0000011),
        filters("seat-delays", "phase_deg")
            .printed(row -> 0)
            .computed(AnalogFilterOutsideChecks::phaseDifference)
            .within(0.0000011),
        // Half a last digit of level and phase each, as parts of the gain.
        filters("seat-delays", "gain")
            .printed(row -> 0)
            .computed(AnalogFilterOutsideChecks::gainDifference)
            .within(7e-8),
        filters("closed-box", "group_delay_s")
            .computed(AnalogFilterOutsideChecks::groupDelay)
            .within(0.000000011),
        OutsideCheck.of(
                "closed-box", "filter group delay at 0 Hz, ms", "butterworth-group-delay.csv")
            .printed("group_delay_ms")
            .computed(AnalogFilterOutsideChecks::lowPassDelay)
            .within(0.0000501));
  }

  private static OutsideCheck filters(String calculation, String column) {
    return OutsideCheck.of(calculation, "filter " + column, "scipy-analog-filters.csv")
        .printed(column);
  }

  /** The table is for a corner of 1 rad/s. */
  private static double frequency(Row row) {
    return row.number("w_rad_per_s") * CORNER_HZ;
  }

  private static AnalogFilter filter(Row row) {
    Filter filter =
        new Filter(
            Kind.valueOf(row.text("family").toUpperCase(Locale.ROOT)),
            (int) row.number("order"),
            CORNER_HZ,
            row.text("normalisation").equals("-")
                ? null
                : BesselNormalisation.valueOf(row.text("normalisation").toUpperCase(Locale.ROOT)));
    return row.text("side").equals("low") ? filter.lowPass() : filter.highPass();
  }

  private static double groupDelay(Row row) {
    double ms = filter(row).groupDelayMs(frequency(row));
    return ms / 1000 * 2 * Math.PI * CORNER_HZ;
  }

  /** Whole turns do not count. */
  private static double phaseDifference(Row row) {
    double difference = filter(row).phaseDeg(frequency(row)) - row.number("phase_deg");
    return Math.IEEEremainder(difference, 360);
  }

  /** The complex gain, against its size. */
  private static double gainDifference(Row row) {
    double size = Decibels.toAmplitude(row.number("magnitude_db"));
    Phasor printed = Phasor.ofPolar(size, row.number("phase_deg"));
    return filter(row).at(frequency(row)).minus(printed).modulus() / size;
  }

  private static double lowPassDelay(Row row) {
    Kind kind = Kind.valueOf(row.text("family").toUpperCase(Locale.ROOT).replace('-', '_'));
    Filter filter = Filter.of(kind, (int) row.number("order"), row.number("corner_hz"));
    return filter.lowPass().groupDelayMs(0);
  }
}
