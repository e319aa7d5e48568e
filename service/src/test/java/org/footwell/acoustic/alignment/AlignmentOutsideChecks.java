package org.footwell.acoustic.alignment;

import java.util.List;
import java.util.Locale;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.BesselNormalisation;
import org.footwell.parts.Filter.Kind;
import org.footwell.physics.AnalogFilter;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class AlignmentOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("seat-delays", "speed_of_sound_m_per_s", "iso-9613-1-speed-of-sound.csv")
            .printed("speed_of_sound_m_per_s")
            .computed(AlignmentOutsideChecks::speedOfSound)
            .within(0.005001),
        OutsideCheck.of("seat-delays", "speed_of_sound_m_per_s", "handbook-speed-of-sound.csv")
            .printed("speed_of_sound_m_per_s")
            .computed(AlignmentOutsideChecks::speedOfSound)
            .within(0.1),
        OutsideCheck.of("seat-delays", "low_pass_delay_ms", "butterworth-group-delay.csv")
            .printed("group_delay_ms")
            .computed(AlignmentOutsideChecks::lowPassDelay)
            .within(0.0000501),
        OutsideCheck.of("seat-delays", "sum_loss_db", "cos-phase-sum.csv")
            .printed("change_db")
            .computed(row -> CrossoverSums.SUM_LOSS.at(row.number("phase_difference_deg")))
            .within(0.005001),
        filters("magnitude_db")
            .computed(row -> filter(row).magnitudeDb(row.number("w_rad_per_s") * CORNER_HZ))
            .within(0.0000011),
        filters("group_delay_s").computed(AlignmentOutsideChecks::groupDelay).within(0.000000011),
        filters("phase_deg")
            .printed(row -> 0)
            .computed(AlignmentOutsideChecks::phaseDifference)
            .within(0.0000011));
  }

  private static final double CORNER_HZ = 80;

  private static OutsideCheck filters(String column) {
    return OutsideCheck.of("seat-delays", "filter " + column, "scipy-analog-filters.csv")
        .printed(column);
  }

  private static double speedOfSound(Row row) {
    Setup setup = Setup.tape(new double[][] {{1}});
    setup.asked.temperatureC(row.number("temperature_c"));
    return setup.result().speedOfSoundMPerS();
  }

  private static double lowPassDelay(Row row) {
    Kind kind = Kind.valueOf(row.text("family").toUpperCase(Locale.ROOT).replace('-', '_'));
    Setup setup = Setup.tape(new double[][] {{1}, {1}});
    setup.filters(
        0, null, Setup.filter(kind, (int) row.number("order"), row.number("corner_hz")), null);
    return setup.result().channels().get(0).lowPassDelayMs();
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

  /** The table is for a corner of 1 rad/s. */
  private static double groupDelay(Row row) {
    double ms = filter(row).groupDelayMs(row.number("w_rad_per_s") * CORNER_HZ);
    return ms / 1000 * 2 * Math.PI * CORNER_HZ;
  }

  private static double phaseDifference(Row row) {
    double ours = filter(row).phaseDeg(row.number("w_rad_per_s") * CORNER_HZ);
    return CrossoverSums.PHASE_ERROR.at(ours, row.number("phase_deg"));
  }
}
