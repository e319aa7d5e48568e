package org.footwell.vehicle;

import java.util.Optional;
import org.footwell.acoustic.level.LevelFinding;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.acoustic.level.SoundLevelRequest;
import org.footwell.acoustic.level.SoundLevelRequestBuilder;
import org.footwell.acoustic.level.SoundLevelResult;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.Filter;
import org.footwell.parts.Position;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;

/** How loud one driver of a plan gets, and how far its cone is asked to move. */
final class DriverLevel {

  private static final SoundLevel SOUND_LEVEL = new SoundLevel();

  /** How finely, and how far from its corner, the skirt of a high-pass is looked at. */
  private static final int STEPS_PER_OCTAVE = 12;

  private static final int SKIRT_STEPS = 2 * STEPS_PER_OCTAVE;

  private static final Formula.Of2 AVERAGE_POWER =
      Formula.of("average_power_w", "P·10^((3.01 − crest)/10)", "W", Source.DEFINITION)
          .with("P", "crest", (p, crest) -> p * Decibels.toPower(Decibels.SINE_CREST - crest));

  private final VehiclePlan plan;
  private final Resolved resolved;
  private final Run run;

  DriverLevel(VehiclePlan plan, Resolved resolved, Run run) {
    this.plan = plan;
    this.resolved = resolved;
    this.run = run;
  }

  /**
   * Its level at an ear and the limits known of it; empty without a sensitivity.
   *
   * @param cleanPowerW sine power at the clip point
   * @param cone what is to be judged of its movement, or null
   */
  Optional<SoundLevelResult> of(
      int channel, int driver, double cleanPowerW, SoundLevelRequest.Cone cone, Position ear) {
    VehiclePlan.Part part = resolved.part(driver);
    String partAt = "/new_parts/" + resolved.partOf(driver);
    Rebase places =
        Rebase.to("/channels/" + channel, plan.drivers().get(driver).id())
            .from("", partAt)
            .with("/rated_ohm", partAt + "/sensitivity_ohm")
            .from("/cone", partAt)
            .with("/cone/frequency_hz", "/channels/" + channel + "/high_pass/frequency_hz")
            .with("/cabin", "/vehicle/cabin_length_m")
            // The plan itself says what each sensitivity is for, and judges exposure on the whole.
            .without(
                LevelFinding.SENSITIVITY_BASIS,
                LevelFinding.CABIN_MODEL,
                LevelFinding.EXPOSURE_UNKNOWN,
                LevelFinding.CABIN_AT_OTHER_FREQUENCY);
    return level(driver, cleanPowerW, part.continuousPowerW(), cone, ear, places);
  }

  /** Its level at another place, dB SPL, of which nothing more is said; empty as above. */
  Optional<Double> at(int driver, double cleanPowerW, Position place) {
    Rebase silent = Rebase.to("", null).without(LevelFinding.values());
    return level(driver, cleanPowerW, null, null, place, silent).map(SoundLevelResult::levelDbSpl);
  }

  private Optional<SoundLevelResult> level(
      int driver,
      double cleanPowerW,
      Double continuousPowerW,
      SoundLevelRequest.Cone cone,
      Position place,
      Rebase places) {
    VehiclePlan.Part part = resolved.part(driver);
    if (part.sensitivity() == null) {
      return Optional.empty();
    }
    SoundLevelRequest request =
        SoundLevelRequestBuilder.builder()
            .sensitivity(part.sensitivity())
            .ratedOhm(part.sensitivityLoad())
            .powerW(run.apply(AVERAGE_POWER, cleanPowerW, crest()))
            .distanceM(Positions.distance(plan.drivers().get(driver).position(), place))
            .cabin(cabin(plan))
            .crestFactorDb(crest())
            .continuousPowerW(continuousPowerW)
            .cone(cone)
            .build();
    return run.call(SOUND_LEVEL, request, places);
  }

  /**
   * The cone of a driver at the lowest frequency its high-pass gives it: that of its passive
   * crossover, or that of the channel for the lowest driver in it. Null without one.
   */
  SoundLevelRequest.Cone cone(int channel, int driver) {
    VehiclePlan.Part part = resolved.part(driver);
    Filter passive = plan.drivers().get(driver).highPass();
    Filter active = plan.channels().get(channel).highPass();
    Filter highPass = passive != null || !lowestOfItsChannel(channel, part) ? passive : active;
    return part.sdCm2() == null || part.xmaxMm() == null || highPass == null
        ? null
        : new SoundLevelRequest.Cone(part.sdCm2(), part.xmaxMm(), asIfUnfiltered(highPass));
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
