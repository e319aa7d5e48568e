package org.footwell.plan;

import java.util.Collection;
import java.util.Collections;
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
import org.footwell.level.SoundLevelResult;
import org.footwell.level.SoundLevelResult.Holds;
import org.footwell.parts.Filter;
import org.footwell.parts.Position;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;

/** How loud one channel gets at the main seat. */
final class ChannelLevel {

  private static final SoundLevel SOUND_LEVEL = new SoundLevel();

  /** Bands of one passive crossover should not be further apart, dB; common practice, no source. */
  private static final double BANDS_APART_DB = 3;

  /** How finely, and how far from its corner, the skirt of a high-pass is looked at. */
  private static final int STEPS_PER_OCTAVE = 12;

  private static final int SKIRT_STEPS = 2 * STEPS_PER_OCTAVE;

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
   * How loud a channel gets.
   *
   * @param levelDbSpl at its clip point
   * @param largestDbSpl held back by heat and movement as well; null where they are not known
   * @param heldBy what holds that back
   */
  record Loudness(double levelDbSpl, Double largestDbSpl, Holds heldBy) {}

  /**
   * Drivers of one band add in phase, of bands the weakest counts; the first driver to reach a limit
   * holds back the others. Empty when a driver has no sensitivity.
   */
  Optional<Loudness> of(int channel, Map<Integer, Double> driverPowerW) {
    Map<String, Double> pressureOfBand = new HashMap<>();
    double room = Double.POSITIVE_INFINITY;
    Holds heldBy = null;
    for (Map.Entry<Integer, Double> driver : driverPowerW.entrySet()) {
      Optional<SoundLevelResult> result = ofDriver(channel, driver.getKey(), driver.getValue());
      if (result.isEmpty()) {
        return Optional.empty();
      }
      double level = result.get().levelDbSpl();
      String band = plan.drivers().get(driver.getKey()).band();
      pressureOfBand.merge(band == null ? "" : band, Decibels.toAmplitude(level), Double::sum);
      SoundLevelResult.Limits limits = result.get().limits();
      if (limits != null && limits.largestLevelDbSpl() - level < room) {
        room = limits.largestLevelDbSpl() - level;
        heldBy = limits.holds();
      }
    }
    remarkMovement(channel);
    double level = weakest(channel, pressureOfBand.values());
    return Optional.of(
        new Loudness(level, heldBy == null ? null : (Double) (level + room), heldBy));
  }

  private void remarkMovement(int channel) {
    boolean judged =
        resolved.driversOf(channel).stream().anyMatch(driver -> cone(channel, driver) != null);
    if (!judged) {
      run.find(PlanFinding.MOVEMENT_NOT_JUDGED)
          .at("/channels/" + channel)
          .with("channel", plan.channels().get(channel).id());
    }
  }

  private double weakest(int channel, Collection<Double> pressures) {
    double weakest = Collections.min(pressures);
    double apart = Decibels.ofAmplitude(Collections.max(pressures) / weakest);
    if (apart > BANDS_APART_DB) {
      run.find(PlanFinding.BANDS_UNEVEN)
          .at("/channels/" + channel + "/network")
          .value(apart)
          .limit(BANDS_APART_DB);
    }
    return Decibels.ofAmplitude(weakest);
  }

  private Optional<SoundLevelResult> ofDriver(int channel, int driver, double cleanPowerW) {
    VehiclePlan.Part part = resolved.part(driver);
    if (part.sensitivity() == null) {
      run.find(PlanFinding.LEVEL_NOT_KNOWN).at("/channels/" + channel);
      return Optional.empty();
    }
    double power = run.apply(AVERAGE_POWER, cleanPowerW, crest());
    SoundLevelRequest request =
        new SoundLevelRequest(
            part.sensitivity(),
            part.sensitivityLoad(),
            power,
            null,
            Positions.distance(plan.drivers().get(driver).position(), ear),
            null,
            null,
            null,
            cabin(plan),
            null,
            crest(),
            null,
            null,
            null,
            null,
            part.continuousPowerW(),
            cone(channel, driver));
    String partAt = "/new_parts/" + resolved.partOf(driver);
    Rebase places =
        Rebase.to("/channels/" + channel, plan.drivers().get(driver).id())
            .with("/sensitivity", partAt + "/sensitivity")
            .with("/rated_ohm", partAt + "/sensitivity_ohm")
            .with("/continuous_power_w", partAt + "/continuous_power_w")
            .with("/cone", partAt)
            .with("/cone/frequency_hz", "/channels/" + channel + "/high_pass/frequency_hz")
            .with("/cabin", "/vehicle/cabin_length_m")
            // The plan itself says what each sensitivity is for, and judges exposure on the whole.
            .without(
                LevelFinding.SENSITIVITY_BASIS,
                LevelFinding.CABIN_MODEL,
                LevelFinding.EXPOSURE_UNKNOWN,
                LevelFinding.CABIN_AT_OTHER_FREQUENCY);
    return run.call(SOUND_LEVEL, request, places);
  }

  /**
   * The cone of a driver at the lowest frequency the high-pass of its channel gives it. Null without
   * one, where the box decides, and where a passive crossover keeps the bass away.
   */
  private SoundLevelRequest.Cone cone(int channel, int driver) {
    VehiclePlan.Part part = resolved.part(driver);
    Filter highPass = plan.channels().get(channel).highPass();
    boolean known = part.sdCm2() != null && part.xmaxMm() != null && highPass != null;
    return known && lowestOfItsChannel(channel, part)
        ? new SoundLevelRequest.Cone(part.sdCm2(), part.xmaxMm(), asIfUnfiltered(highPass))
        : null;
  }

  /**
   * The frequency, Hz, at which a cone without the high-pass moves as far as it does at most with it:
   * at the same level a cone moves with 1/f², and the filter takes from that below its corner.
   */
  private static double asIfUnfiltered(Filter highPass) {
    AnalogFilter filter = highPass.highPass();
    double corner = highPass.frequencyHz();
    double most = 0;
    for (int step = -SKIRT_STEPS; step <= SKIRT_STEPS; step++) {
      double x = Math.pow(2, (double) step / STEPS_PER_OCTAVE);
      most = Math.max(most, Decibels.toAmplitude(filter.magnitudeDb(x * corner)) / (x * x));
    }
    return corner / Math.sqrt(most);
  }

  private boolean lowestOfItsChannel(int channel, VehiclePlan.Part part) {
    return resolved.driversOf(channel).stream()
        .map(resolved::part)
        .allMatch(
            other ->
                other.equals(part)
                    || (part.impedance() != null
                        && other.impedance() != null
                        && part.impedance().fsHz() <= other.impedance().fsHz()));
  }

  /** The inside of the vehicle as the level takes it. */
  static SoundLevelRequest.Cabin cabin(VehiclePlan plan) {
    return new SoundLevelRequest.Cabin(plan.vehicle().cabinLengthM(), null, null, null);
  }

  private double crest() {
    return plan.programme() == null ? Decibels.SINE_CREST : plan.programme().crestFactorDb();
  }
}
