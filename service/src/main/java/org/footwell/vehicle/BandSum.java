package org.footwell.vehicle;

import org.footwell.acoustic.level.SoundLevelResult;
import org.footwell.acoustic.level.SoundLevelResult.Holds;
import org.footwell.physics.Decibels;

/** The drivers of one band added up: in phase, held back by the first of them to reach a limit. */
final class BandSum {

  private double pressure;
  private boolean levelKnown = true;
  private double powerW;
  private double overload = Double.NEGATIVE_INFINITY;
  private boolean ratingKnown = true;
  private double room = Double.POSITIVE_INFINITY;
  private Holds heldBy;

  /**
   * One driver.
   *
   * @param powerW its clean sine power
   * @param continuousPowerW what it bears, or null
   * @param level its level and limits, or null
   * @param boxRoomDb how far the movement in its box holds the level back, at most 0 dB, or null
   */
  record Member(double powerW, Double continuousPowerW, SoundLevelResult level, Double boxRoomDb) {}

  void add(Member driver) {
    addPower(driver.powerW(), driver.continuousPowerW());
    if (driver.level() == null) {
      levelKnown = false;
      return;
    }
    double level = driver.level().levelDbSpl();
    pressure += Decibels.toAmplitude(level);
    SoundLevelResult.Limits limits = driver.level().limits();
    if (limits != null) {
      hold(limits.largestLevelDbSpl() - level, limits.holds());
    }
    if (driver.boxRoomDb() != null) {
      hold(driver.boxRoomDb(), driver.boxRoomDb() < 0 ? Holds.DISPLACEMENT : Holds.POWER);
    }
  }

  private void addPower(double watts, Double continuousPowerW) {
    ratingKnown &= continuousPowerW != null;
    double over = continuousPowerW == null ? watts : watts / continuousPowerW;
    if (over > overload) {
      overload = over;
      powerW = watts;
    }
  }

  private void hold(double roomDb, Holds by) {
    if (roomDb < room) {
      room = roomDb;
      heldBy = by;
    }
  }

  double powerW() {
    return powerW;
  }

  Double headroomDb() {
    return ratingKnown ? (Double) Decibels.ofPower(overload) : null;
  }

  Double levelDbSpl() {
    return levelKnown ? (Double) Decibels.ofAmplitude(pressure) : null;
  }

  Double largestDbSpl() {
    return levelKnown && heldBy != null ? (Double) (levelDbSpl() + room) : null;
  }

  Holds heldBy() {
    return levelKnown ? heldBy : null;
  }
}
