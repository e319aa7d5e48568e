package org.footwell.acoustic.seats;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.physics.DriverOutput;

/**
 * One source in one band at full drive.
 *
 * @param electricalDb what filters and trim take, dB
 * @param acousticDb what its own roll-off takes, dB
 * @param powerW power each of its drivers takes, W
 * @param levelDbSpl level of a sine at 1 m in half space, dB SPL
 * @param phaseDeg phase of filters, roll-off and polarity, degrees
 * @param continuousW continuous power of one driver, W, or null
 * @param xmaxDbSpl level at which its cones reach xmax, dB SPL, or null
 */
record SourceInBand(
    double electricalDb,
    double acousticDb,
    double powerW,
    double levelDbSpl,
    double phaseDeg,
    Double continuousW,
    Double xmaxDbSpl) {

  /** Drive in dB at which the cone reaches xmax. */
  static final Formula.Of2 CONE_DRIVE =
      Formula.of("displacement_drive_db", "Lx − L", "dB", Source.DEFINITION)
          .with("Lx", "L", (most, level) -> most - level);

  /**
   * How far below full drive a source must stay.
   *
   * @param driveDb 0 or less
   */
  record Held(double driveDb, SourceLimit by) {
    Held or(double drive, SourceLimit limit) {
      return drive < driveDb ? new Held(drive, limit) : this;
    }
  }

  Held held() {
    Held held = new Held(0, SourceLimit.AMPLIFIER);
    if (continuousW != null) {
      held = held.or(DriverOutput.POWER_LEFT.at(continuousW, powerW), SourceLimit.THERMAL);
    }
    if (xmaxDbSpl != null) {
      held = held.or(CONE_DRIVE.at(xmaxDbSpl, levelDbSpl), SourceLimit.DISPLACEMENT);
    }
    return held;
  }

  /** The same, noted. */
  void noteHeld(Run run) {
    if (continuousW != null) {
      run.apply(DriverOutput.POWER_LEFT, continuousW, powerW);
    }
    if (xmaxDbSpl != null) {
      run.apply(CONE_DRIVE, xmaxDbSpl, levelDbSpl);
    }
  }
}
