package org.footwell.acoustic.level;

import static org.footwell.acoustic.level.LevelFinding.CABIN_AT_OTHER_FREQUENCY;
import static org.footwell.acoustic.level.LevelFinding.CONE_NOT_A_PISTON;
import static org.footwell.acoustic.level.LevelFinding.DISPLACEMENT_LIMIT_PASSED;
import static org.footwell.acoustic.level.LevelFinding.THERMAL_LIMIT_PASSED;

import org.footwell.acoustic.level.SoundLevelRequest.Cone;
import org.footwell.acoustic.level.SoundLevelResult.Holds;
import org.footwell.acoustic.level.SoundLevelResult.Limits;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.physics.Air;
import org.footwell.physics.Decibels;
import org.footwell.physics.Piston;

/** What heat and cone movement allow beside the power given. */
final class DriverLimits {

  /** Above this ka a cone is no small piston any more. */
  private static final double SMALL_KA = 1;

  /** Level of the programme whose peaks are as high as those of a sine. */
  private static final Formula.Of3 AT_XMAX =
      Formula.of("displacement_level_db_spl", "L + G + 3.01 − crest", "dB SPL", Source.DEFINITION)
          .with("L", "G", "crest", (l, g, crest) -> l + g + Decibels.SINE_CREST - crest);

  private static final Formula.Of3 DISPLACEMENT =
      Formula.of("displacement_mm", "xmax·10^((L − Lmax)/20)", "mm", Source.DEFINITION)
          .with("xmax", "L", "Lmax", (x, l, most) -> x * Decibels.toAmplitude(l - most));

  private DriverLimits() {}

  /**
   * One driver as it is played.
   *
   * @param oneWatt its level per watt at 1 m, dB SPL
   * @param powerW its average power, W
   * @param gain from there to all drivers at the seat, dB
   * @param perWattOfHeat compression per watt, 1/W
   */
  record Played(double oneWatt, double powerW, double gain, double perWattOfHeat) {
    double level(double power, Run run) {
      return run.apply(SoundLevel.LEVEL, oneWatt, power, gain, compression(power));
    }

    private double compression(double power) {
      return perWattOfHeat == 0 ? 0 : Compression.LOSS_DB.at(perWattOfHeat, power);
    }
  }

  /** The limits, or null when no figures for them are given. */
  static Limits of(SoundLevelRequest q, Played played, Run run) {
    if (q.continuousPowerW() == null && q.cone() == null) {
      return null;
    }
    double level = played.level(played.powerW(), run);
    Double thermal = q.continuousPowerW() == null ? null : thermal(q, played, run);
    Double displaced = q.cone() == null ? null : displaced(q, played.gain(), run);
    Double movement =
        displaced == null ? null : run.apply(DISPLACEMENT, q.cone().xmaxMm(), level, displaced);
    if (movement != null && movement > q.cone().xmaxMm()) {
      run.find(DISPLACEMENT_LIMIT_PASSED)
          .at("/cone")
          .value(movement)
          .limit(q.cone().xmaxMm())
          .with("frequency", q.cone().frequencyHz())
          .with("level", displaced);
    }
    double largest = level;
    Holds holds = Holds.POWER;
    if (thermal != null && played.powerW() > q.continuousPowerW()) {
      // Past its limit the compression model has the level fall with power: never above this.
      largest = thermal;
      holds = Holds.THERMAL;
    }
    if (displaced != null && displaced < largest) {
      largest = displaced;
      holds = Holds.DISPLACEMENT;
    }
    return new Limits(largest, holds, thermal, displaced, movement);
  }

  private static double thermal(SoundLevelRequest q, Played played, Run run) {
    double level = played.level(q.continuousPowerW(), run);
    if (played.powerW() > q.continuousPowerW()) {
      run.find(THERMAL_LIMIT_PASSED)
          .at("/continuous_power_w")
          .value(played.powerW())
          .limit(q.continuousPowerW())
          .with("level", level);
    }
    return level;
  }

  private static double displaced(SoundLevelRequest q, double gain, Run run) {
    Cone cone = q.cone();
    double ka = run.apply(Piston.KA, cone.frequencyHz(), cone.sdCm2(), Air.REFERENCE_SPEED_M_PER_S);
    if (ka > SMALL_KA) {
      run.find(CONE_NOT_A_PISTON)
          .at("/cone/frequency_hz")
          .value(ka)
          .limit(SMALL_KA)
          .with("frequency", cone.frequencyHz());
    }
    Double cabinHz = q.cabin() == null ? null : q.cabin().frequencyHz();
    if (cabinHz != null && !cabinHz.equals(cone.frequencyHz())) {
      run.find(CABIN_AT_OTHER_FREQUENCY)
          .at("/cone/frequency_hz")
          .value(cone.frequencyHz())
          .limit(cabinHz);
    }
    double sine =
        run.apply(
            Piston.LEVEL_OF_DISPLACEMENT,
            cone.frequencyHz(),
            cone.sdCm2(),
            cone.xmaxMm(),
            Air.REFERENCE_DENSITY_KG_PER_M3);
    return run.apply(AT_XMAX, sine, gain, q.crestFactorDb());
  }
}
