package org.footwell.acoustic.seats;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.Driver;
import org.footwell.parts.Sensitivity.Basis;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.physics.DriverOutput;
import org.footwell.physics.Electricity;
import org.footwell.physics.FilterPrototype.Section;
import org.footwell.physics.Piston;
import org.footwell.physics.SensitivityBases;

/** How one source answers to the signal: its channel's filters and its own roll-off. */
final class SourceResponse {

  /** Power in W that filters and trim leave. */
  private static final Formula.Of2 POWER =
      Formula.of("power_w", "P·10^(H/10)", "W", Source.DEFINITION)
          .with("P", "H", (p, h) -> p * Decibels.toPower(h));

  /** Equal drivers that play as one, each with its power. */
  private static final Formula.Of1 COUNT =
      Formula.of("driver_count_db", "20·lg(N)", "dB", SeatLevels.SUPERPOSITION)
          .with("N", Decibels::ofAmplitude);

  private final SoundSource source;
  private final Driver driver;
  private final double density;
  private final List<AnalogFilter> channel = new ArrayList<>();
  private final AnalogFilter rollOff;

  SourceResponse(SoundSource source, double density) {
    this.source = source;
    this.driver = source.driver();
    this.density = density;
    if (source.highPass() != null) {
      channel.add(source.highPass().highPass());
    }
    if (source.lowPass() != null) {
      channel.add(source.lowPass().lowPass());
    }
    SoundSource.RollOff own = source.rollOff();
    this.rollOff =
        own == null
            ? null
            : new AnalogFilter(true, own.resonanceHz(), List.of(new Section(2, 1, own.q())));
  }

  SourceInBand at(double frequency) {
    double electrical = electricalDb(frequency);
    double acoustic = rollOff == null ? 0 : rollOff.magnitudeDb(frequency);
    double power = POWER.at(amplifierW(), electrical);
    return new SourceInBand(
        electrical,
        acoustic,
        power,
        DriverOutput.LEVEL.at(oneWatt(), power, acoustic + COUNT.at(source.driverCount())),
        phaseDeg(frequency),
        driver.continuousPowerW(),
        driver.displacementKnown() ? (Double) atXmax(frequency) : null);
  }

  /** Clean sine power of the amplifier for each driver, W. */
  double amplifierW() {
    return source.powerW() == null
        ? Electricity.POWER.at(source.voltageV(), driver.ratedOhm())
        : source.powerW();
  }

  private double oneWatt() {
    return driver
        .sensitivity()
        .oneWattDbSpl(SensitivityBases.BASIS_DIFFERENCE.at(driver.ratedOhm()));
  }

  private double atXmax(double frequency) {
    return Piston.LEVEL_OF_DISPLACEMENT.at(frequency, areaCm2(), driver.xmaxMm(), density);
  }

  /** Cones that move alike radiate as one of their area together. */
  private double areaCm2() {
    return source.driverCount() * driver.sdCm2();
  }

  private double electricalDb(double frequency) {
    double sum = source.trimDb();
    for (AnalogFilter filter : channel) {
      sum += filter.magnitudeDb(frequency);
    }
    return sum;
  }

  private double phaseDeg(double frequency) {
    double sum = source.polarity() == 1 ? 0 : 180;
    for (AnalogFilter filter : channel) {
      sum += filter.phaseDeg(frequency);
    }
    return rollOff == null ? sum : sum + rollOff.phaseDeg(frequency);
  }

  /** Notes how its level and limits in one band come about. */
  void note(double frequency, Run run) {
    SourceInBand band = at(frequency);
    if (driver.sensitivity().basis() != Basis.ONE_WATT) {
      run.apply(SensitivityBases.BASIS_DIFFERENCE, driver.ratedOhm());
    }
    double amplifier =
        source.powerW() == null
            ? run.apply(Electricity.POWER, source.voltageV(), driver.ratedOhm())
            : source.powerW();
    double power = run.apply(POWER, amplifier, band.electricalDb());
    double count = run.apply(COUNT, source.driverCount());
    run.apply(DriverOutput.LEVEL, oneWatt(), power, band.acousticDb() + count);
    if (driver.displacementKnown()) {
      run.apply(Piston.LEVEL_OF_DISPLACEMENT, frequency, areaCm2(), driver.xmaxMm(), density);
    }
    band.noteHeld(run);
  }
}
