package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.footwell.acoustic.level.SoundLevelResult.Holds;
import org.footwell.calculation.Run;
import org.footwell.parts.Position;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.PlanReviewResult.BandLine;
import org.footwell.vehicle.PlanReviewResult.BoxLine;

/** How loud one channel gets at the main seat, band by band. */
final class ChannelLevel {

  /** Bands of one passive crossover should not be further apart, dB; common practice, no source. */
  private static final double BANDS_APART_DB = 3;

  private final VehiclePlan plan;
  private final Resolved resolved;
  private final Run run;
  private final DriverLevel drivers;
  private final BoxReview boxes;
  private final Position ear;

  ChannelLevel(VehiclePlan plan, Resolved resolved, Run run, Position ear) {
    this.plan = plan;
    this.resolved = resolved;
    this.run = run;
    this.drivers = new DriverLevel(plan, resolved, run);
    this.boxes = new BoxReview(plan, resolved, run);
    this.ear = ear;
  }

  /**
   * How loud a channel gets.
   *
   * @param levelDbSpl at its clip point, that of its weakest band; null when a driver has no
   *     sensitivity
   * @param largestDbSpl held back by heat and movement as well; null where they are not known
   * @param heldBy what holds that back
   */
  record Loudness(
      Double levelDbSpl,
      Double largestDbSpl,
      Holds heldBy,
      List<BandLine> bands,
      List<BoxLine> boxes) {}

  /** The first driver to reach a limit holds back all others of the channel. */
  Loudness of(int channel, Map<Integer, Double> driverPowerW) {
    List<BandLine> bands = new ArrayList<>();
    List<BoxLine> boxed = new ArrayList<>();
    List<String> unjudged = new ArrayList<>();
    inBands(channel)
        .forEach(
            (name, members) -> {
              BandSum band = new BandSum();
              members.forEach(
                  d -> band.add(driver(channel, d, driverPowerW.get(d), boxed, unjudged)));
              bands.add(
                  new BandLine(
                      plan.channels().get(channel).id(),
                      name.isEmpty() ? null : name,
                      members.stream().map(d -> plan.drivers().get(d).id()).toList(),
                      band.powerW(),
                      band.headroomDb(),
                      band.levelDbSpl(),
                      band.largestDbSpl(),
                      band.heldBy()));
            });
    if (!unjudged.isEmpty()) {
      run.find(PlanFinding.MOVEMENT_NOT_JUDGED).at("/channels/" + channel).own("names", unjudged);
    }
    return together(channel, bands, boxed);
  }

  private BandSum.Member driver(
      int channel, int driver, double powerW, List<BoxLine> boxed, List<String> unjudged) {
    Optional<BoxReview.Boxed> box = boxes.of(channel, driver, powerW);
    box.map(BoxReview.Boxed::line).ifPresent(boxed::add);
    Double room = box.map(BoxReview.Boxed::roomDb).orElse(null);
    Double displacementHz = box.isPresent() ? null : drivers.displacementHz(channel, driver);
    if (displacementHz == null && room == null) {
      unjudged.add(plan.drivers().get(driver).id());
    }
    return new BandSum.Member(
        powerW,
        resolved.part(driver).continuousPowerW(),
        drivers.of(channel, driver, powerW, displacementHz, ear).orElse(null),
        room);
  }

  private Loudness together(int channel, List<BandLine> bands, List<BoxLine> boxed) {
    if (bands.stream().anyMatch(band -> band.levelDbSpl() == null)) {
      run.find(PlanFinding.LEVEL_NOT_KNOWN).at("/channels/" + channel);
      return new Loudness(null, null, null, bands, boxed);
    }
    double weakest = bands.stream().mapToDouble(BandLine::levelDbSpl).min().orElseThrow();
    double apart = bands.stream().mapToDouble(BandLine::levelDbSpl).max().orElseThrow() - weakest;
    if (apart > BANDS_APART_DB) {
      run.find(PlanFinding.BANDS_UNEVEN)
          .at("/channels/" + channel + "/network")
          .value(apart)
          .limit(BANDS_APART_DB);
    }
    BandLine tightest =
        bands.stream()
            .filter(band -> band.heldBy() != null)
            .min(Comparator.comparing(band -> band.largestLevelDbSpl() - band.levelDbSpl()))
            .orElse(null);
    return tightest == null
        ? new Loudness(weakest, null, null, bands, boxed)
        : new Loudness(
            weakest,
            weakest + tightest.largestLevelDbSpl() - tightest.levelDbSpl(),
            tightest.heldBy(),
            bands,
            boxed);
  }

  /** Level of a channel at another place, dB SPL; null when a driver has no sensitivity. */
  Double levelAt(int channel, Map<Integer, Double> driverPowerW, Position place) {
    double weakest = Double.POSITIVE_INFINITY;
    for (List<Integer> members : inBands(channel).values()) {
      double pressure = 0;
      for (int driver : members) {
        Optional<Double> level = drivers.at(driver, driverPowerW.get(driver), place);
        if (level.isEmpty()) {
          return null;
        }
        pressure += Decibels.toAmplitude(level.get());
      }
      weakest = Math.min(weakest, Decibels.ofAmplitude(pressure));
    }
    return weakest;
  }

  /** The drivers of a channel by band, in order of the plan; "" stands for no passive crossover. */
  private Map<String, List<Integer>> inBands(int channel) {
    return resolved.driversOf(channel).stream()
        .collect(
            Collectors.groupingBy(
                driver -> Objects.requireNonNullElse(plan.drivers().get(driver).band(), ""),
                LinkedHashMap::new,
                Collectors.toList()));
  }
}
