package org.footwell.vehicle;

import java.util.Optional;
import org.footwell.acoustic.level.LevelFinding;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.acoustic.level.SoundLevelRequest;
import org.footwell.acoustic.level.SoundLevelRequestBuilder;
import org.footwell.acoustic.level.SoundLevelResult;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.parts.Cabin;
import org.footwell.parts.CabinBuilder;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Filter;
import org.footwell.parts.Position;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.physics.DriverOutput;

/** How loud one driver of a plan gets, and how far its cone is asked to move. */
final class DriverLevel {

  private static final SoundLevel SOUND_LEVEL = new SoundLevel();

  /** How finely, and how far from its corner, the skirt of a high-pass is looked at. */
  private static final int STEPS_PER_OCTAVE = 12;

  private static final int SKIRT_STEPS = 2 * STEPS_PER_OCTAVE;

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
   * @param displacementHz where its movement is to be judged, Hz, or null
   */
  Optional<SoundLevelResult> of(
      int channel, int driver, double cleanPowerW, Double displacementHz, Position ear) {
    VehiclePlan.Part part = resolved.part(driver);
    String partAt = "/new_parts/" + resolved.partOf(driver);
    Rebase places =
        Rebase.to("/channels/" + channel, plan.drivers().get(driver).id())
            .from("/driver", partAt)
            .with("/driver/rated_ohm", partAt + "/sensitivity_ohm")
            .with("/driver/xmax_mm", partAt)
            .with("/displacement_hz", "/channels/" + channel + "/high_pass/frequency_hz")
            .with("/cabin", "/vehicle/cabin_length_m")
            // The plan itself says what each sensitivity is for, and judges exposure on the whole.
            .without(
                LevelFinding.SENSITIVITY_BASIS,
                LevelFinding.CABIN_MODEL,
                LevelFinding.EXPOSURE_UNKNOWN,
                LevelFinding.CABIN_AT_OTHER_FREQUENCY);
    return level(driver, cleanPowerW, part.continuousPowerW(), displacementHz, ear, places);
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
      Double displacementHz,
      Position place,
      Rebase places) {
    VehiclePlan.Part part = resolved.part(driver);
    if (part.sensitivity() == null) {
      return Optional.empty();
    }
    SoundLevelRequest request =
        SoundLevelRequestBuilder.builder()
            .driver(
                DriverBuilder.builder()
                    .sensitivity(part.sensitivity())
                    .ratedOhm(part.sensitivityLoad())
                    .continuousPowerW(continuousPowerW)
                    .sdCm2(part.sdCm2())
                    .xmaxMm(part.xmaxMm())
                    .build())
            .powerW(run.apply(DriverOutput.MEAN_POWER, cleanPowerW, crest()))
            .distanceM(plan.drivers().get(driver).position().distanceTo(place))
            .cabin(cabin(plan))
            .crestFactorDb(crest())
            .displacementHz(displacementHz)
            .build();
    return run.call(SOUND_LEVEL, request, places);
  }

  /**
   * Where the movement of a cone is judged, Hz: at the lowest frequency its high-pass gives it: that of its passive
   * crossover, or that of the channel for the lowest driver in it. Null without one, or where the cone
   * is not known.
   */
  Double displacementHz(int channel, int driver) {
    VehiclePlan.Part part = resolved.part(driver);
    Filter passive = plan.drivers().get(driver).highPass();
    Filter active = plan.channels().get(channel).highPass();
    Filter highPass = passive != null || !lowestOfItsChannel(channel, part) ? passive : active;
    return part.sdCm2() == null || part.xmaxMm() == null || highPass == null
        ? null
        : (Double) asIfUnfiltered(highPass);
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
  static Cabin cabin(VehiclePlan plan) {
    return CabinBuilder.builder().lengthM(plan.vehicle().cabinLengthM()).build();
  }

  private double crest() {
    return plan.programme() == null ? Decibels.SINE_CREST : plan.programme().crestFactorDb();
  }
}
