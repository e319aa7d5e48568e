package org.footwell.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.level.LevelFinding;
import org.footwell.level.SoundLevel;
import org.footwell.level.SoundLevelRequest;
import org.footwell.parts.Position;
import org.footwell.physics.Decibels;

/** How loud one channel gets at the main seat. */
final class ChannelLevel {

  private static final SoundLevel SOUND_LEVEL = new SoundLevel();

  /** Bands of one passive crossover should not be further apart, dB; common practice, no source. */
  private static final double BANDS_APART_DB = 3;

  private static final Formula.Of2 AVERAGE_POWER =
      Formula.of("average_power_w", "P·10^((3.01 − crest)/10)", "W", Source.DEFINITION)
          .with("P", "crest", (p, crest) -> p * Decibels.toPower(Decibels.SINE_CREST - crest));

  private final VehiclePlan plan;
  private final Resolved resolved;
  private final Run run;
  private final Position ear;

  ChannelLevel(VehiclePlan plan, Resolved resolved, Run run, Position ear) {
    this.plan = plan;
    this.resolved = resolved;
    this.run = run;
    this.ear = ear;
  }

  /**
   * Level of a channel at its clip point, dB SPL: drivers of one band add in phase, of bands the
   * weakest counts. Null when a driver has no sensitivity.
   */
  Double of(int channel, Map<Integer, Double> driverPowerW) {
    Map<String, Double> pressureOfBand = new HashMap<>();
    for (Map.Entry<Integer, Double> driver : driverPowerW.entrySet()) {
      Optional<Double> level = ofDriver(channel, driver.getKey(), driver.getValue());
      if (level.isEmpty()) {
        return null;
      }
      String band = plan.drivers().get(driver.getKey()).band();
      pressureOfBand.merge(
          band == null ? "" : band, Decibels.toAmplitude(level.get()), Double::sum);
    }
    double weakest = pressureOfBand.values().stream().mapToDouble(p -> p).min().orElseThrow();
    double strongest = pressureOfBand.values().stream().mapToDouble(p -> p).max().orElseThrow();
    double apart = Decibels.ofAmplitude(strongest / weakest);
    if (apart > BANDS_APART_DB) {
      run.find(PlanFinding.BANDS_UNEVEN)
          .at("/channels/" + channel + "/network")
          .value(apart)
          .limit(BANDS_APART_DB);
    }
    return Decibels.ofAmplitude(weakest);
  }

  private Optional<Double> ofDriver(int channel, int driver, double cleanPowerW) {
    VehiclePlan.Part part = resolved.part(driver);
    if (part.sensitivity() == null) {
      run.find(PlanFinding.LEVEL_NOT_KNOWN).at("/channels/" + channel);
      return Optional.empty();
    }
    double power = run.apply(AVERAGE_POWER, cleanPowerW, crest());
    SoundLevelRequest request =
        new SoundLevelRequest(
            part.sensitivity(),
            part.sensitivityOhm(),
            power,
            null,
            Positions.distance(plan.drivers().get(driver).position(), ear),
            null,
            null,
            null,
            new SoundLevelRequest.Cabin(plan.vehicle().cabinLengthM(), null, null, null),
            null,
            crest(),
            null,
            null,
            null,
            null,
            null,
            null);
    String partAt = "/new_parts/" + resolved.partOf(driver);
    Rebase places =
        Rebase.to("/drivers/" + driver, null)
            .with("/sensitivity", partAt + "/sensitivity")
            .with("/rated_ohm", partAt + "/sensitivity_ohm")
            .with("/cabin", "/vehicle/cabin_length_m")
            // The plan itself says what each sensitivity is for, and judges exposure on the whole.
            .without(LevelFinding.SENSITIVITY_BASIS, LevelFinding.EXPOSURE_UNKNOWN);
    return run.call(SOUND_LEVEL, request, places).map(result -> result.levelDbSpl());
  }

  private double crest() {
    return plan.programme() == null ? Decibels.SINE_CREST : plan.programme().crestFactorDb();
  }
}
