package org.footwell.acoustic.level;

import static org.footwell.acoustic.level.LevelFinding.CABIN_AT_OTHER_FREQUENCY;
import static org.footwell.acoustic.level.LevelFinding.CONE_NOT_A_PISTON;
import static org.footwell.acoustic.level.LevelFinding.DISPLACEMENT_LIMIT_PASSED;
import static org.footwell.acoustic.level.LevelFinding.THERMAL_LIMIT_PASSED;

import org.footwell.acoustic.level.SoundLevelResult.Holds;
import org.footwell.acoustic.level.SoundLevelResult.Limits;
import org.footwell.calculation.Run;
import org.footwell.parts.Driver;
import org.footwell.physics.Air;
import org.footwell.physics.DriverOutput;
import org.footwell.physics.Piston;

/** What heat and cone movement allow beside the power given. */
final class DriverLimits {

  /** Above this ka a cone is no small piston any more. */
  private static final double SMALL_KA = 1;

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
      return run.apply(DriverOutput.LEVEL, oneWatt, power, gain - compression(power));
    }

    private double compression(double power) {
      return perWattOfHeat == 0 ? 0 : Compression.LOSS_DB.at(perWattOfHeat, power);
    }
  }

  /** The limits, or null when no figures for them are given. */
  static Limits of(SoundLevelRequest q, Played played, Run run) {
    Double bears = q.driver().continuousPowerW();
    if (bears == null && q.displacementHz() == null) {
      return null;
    }
    double level = played.level(played.powerW(), run);
    Double thermal = bears == null ? null : (Double) thermal(bears, played, run);
    Double displaced =
        q.displacementHz() == null ? null : (Double) displaced(q, played.gain(), run);
    Double movement = displaced == null ? null : (Double) movement(q, level, displaced, run);
    double largest = level;
    Holds holds = Holds.POWER;
    if (thermal != null && played.powerW() > bears) {
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

  private static double thermal(double bears, Played played, Run run) {
    double level = played.level(bears, run);
    if (played.powerW() > bears) {
      run.find(THERMAL_LIMIT_PASSED)
          .at("/driver/continuous_power_w")
          .value(played.powerW())
          .limit(bears)
          .with("level", level);
    }
    return level;
  }

  private static double displaced(SoundLevelRequest q, double gain, Run run) {
    Driver driver = q.driver();
    double frequency = q.displacementHz();
    double ka = run.apply(Piston.KA, frequency, driver.sdCm2(), Air.REFERENCE_SPEED_M_PER_S);
    if (ka > SMALL_KA) {
      run.find(CONE_NOT_A_PISTON)
          .at("/displacement_hz")
          .value(ka)
          .limit(SMALL_KA)
          .with("frequency", frequency);
    }
    if (q.frequencyHz() != null && q.frequencyHz() != frequency) {
      run.find(CABIN_AT_OTHER_FREQUENCY)
          .at("/displacement_hz")
          .value(frequency)
          .limit(q.frequencyHz());
    }
    double sine =
        run.apply(
            Piston.LEVEL_OF_DISPLACEMENT,
            frequency,
            driver.sdCm2(),
            driver.xmaxMm(),
            Air.REFERENCE_DENSITY_KG_PER_M3);
    return run.apply(DriverOutput.LEVEL_AT_XMAX, sine, gain, q.crestFactorDb());
  }

  private static double movement(SoundLevelRequest q, double level, double displaced, Run run) {
    double xmax = q.driver().xmaxMm();
    double movement = run.apply(DriverOutput.DISPLACEMENT, xmax, level, displaced);
    if (movement > xmax) {
      run.find(DISPLACEMENT_LIMIT_PASSED)
          .at("/driver/xmax_mm")
          .value(movement)
          .limit(xmax)
          .with("frequency", q.displacementHz())
          .with("level", displaced);
    }
    return movement;
  }
}
