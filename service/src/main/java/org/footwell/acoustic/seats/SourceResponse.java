package org.footwell.acoustic.seats;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.Sensitivity.Basis;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.physics.Electricity;
import org.footwell.physics.FilterPrototype.Section;
import org.footwell.physics.Piston;
import org.footwell.physics.SensitivityBases;

/** How one source answers to the signal: its channel's filters and its own roll-off. */
final class SourceResponse {

  private static final Formula.Of2 PER_WATT =
      Formula.of(
              "one_watt_level_db_spl", "S − 10·lg(2.83²/R)", "dB SPL", SensitivityBases.IEC_60268_5)
          .with("S", "R", (s, r) -> s - SensitivityBases.BASIS_DIFFERENCE.at(r));

  /** Power in W that filters and trim leave. */
  private static final Formula.Of2 POWER =
      Formula.of("power_w", "P·10^(H/10)", "W", Source.DEFINITION)
          .with("P", "H", (p, h) -> p * Decibels.toPower(h));

  private static final Formula.Of3 LEVEL =
      Formula.of("level_db_spl", "S + 10·lg(P/1 W) + A", "dB SPL", Source.DEFINITION)
          .with("S", "P", "A", (s, p, a) -> s + Decibels.ofPower(p) + a);

  private final SoundSource source;
  private final double density;
  private final List<AnalogFilter> channel = new ArrayList<>();
  private final AnalogFilter rollOff;

  SourceResponse(SoundSource source, double density) {
    this.source = source;
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
        LEVEL.at(oneWatt(), power, acoustic),
        phaseDeg(frequency),
        source.continuousPowerW(),
        source.cone() == null ? null : Double.valueOf(atXmax(frequency)));
  }

  /** Clean sine power of the amplifier, W. */
  double amplifierW() {
    return source.powerW() == null
        ? Electricity.POWER.at(source.voltageV(), source.ratedOhm())
        : source.powerW();
  }

  private double oneWatt() {
    double stated = source.sensitivity().levelDbSpl();
    return source.sensitivity().basis() == Basis.ONE_WATT
        ? stated
        : PER_WATT.at(stated, source.ratedOhm());
  }

  private double atXmax(double frequency) {
    SoundSource.Cone cone = source.cone();
    return Piston.LEVEL_OF_DISPLACEMENT.at(frequency, cone.sdCm2(), cone.xmaxMm(), density);
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
    double oneWatt =
        source.sensitivity().basis() == Basis.ONE_WATT
            ? oneWatt()
            : run.apply(PER_WATT, source.sensitivity().levelDbSpl(), source.ratedOhm());
    double amplifier =
        source.powerW() == null
            ? run.apply(Electricity.POWER, source.voltageV(), source.ratedOhm())
            : source.powerW();
    double power = run.apply(POWER, amplifier, band.electricalDb());
    run.apply(LEVEL, oneWatt, power, band.acousticDb());
    if (source.cone() != null) {
      SoundSource.Cone cone = source.cone();
      run.apply(Piston.LEVEL_OF_DISPLACEMENT, frequency, cone.sdCm2(), cone.xmaxMm(), density);
    }
    band.noteHeld(run);
  }
}
