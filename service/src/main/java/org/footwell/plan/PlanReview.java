package org.footwell.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.footwell.alignment.AlignmentFinding;
import org.footwell.alignment.SeatDelays;
import org.footwell.alignment.SeatDelaysRequest;
import org.footwell.alignment.SeatDelaysResult;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.level.Exposure;
import org.footwell.level.LevelFinding;
import org.footwell.parts.Position;
import org.footwell.plan.PlanReviewResult.AmplifierLine;
import org.footwell.plan.PlanReviewResult.ChannelLine;
import org.footwell.plan.PlanReviewResult.CrossoverLine;
import org.footwell.plan.PlanReviewResult.SeatLine;
import org.footwell.plan.PlanReviewResult.SetupLine;

/** The whole vehicle plan, every channel run through the calculations, with one verdict. */
public final class PlanReview implements Calculation<VehiclePlan, PlanReviewResult> {

  private static final SeatDelays SEAT_DELAYS = new SeatDelays();

  /** Drivers of one channel further apart than this cannot share a delay; common practice, m. */
  private static final double APART_M = 1;

  @Override
  public Card<VehiclePlan, PlanReviewResult> card() {
    return PlanCard.CARD;
  }

  @Override
  public PlanReviewResult compute(VehiclePlan plan, Run run) {
    Resolved resolved = new Resolved(plan, run);
    Handover handover = new Handover(plan, run);
    List<Optional<ChannelReview.Powered>> powered =
        IntStream.range(0, plan.channels().size())
            .mapToObj(i -> new ChannelReview(plan, resolved, run, i).powered())
            .toList();
    Optional<SeatDelaysResult> delays =
        run.call(SEAT_DELAYS, delays(plan, resolved, run), places(levelsKnown(plan)));
    run.requireNoFaults();
    remarkUnused(plan, resolved, run);

    SeatDelaysRequest.Seat main =
        plan.seats().stream()
            .max(Comparator.comparing(SeatDelaysRequest.Seat::weight))
            .orElseThrow();
    ChannelLevel level = new ChannelLevel(plan, resolved, run, Positions.head(main));
    List<Optional<ChannelLevel.Loudness>> loudness =
        IntStream.range(0, plan.channels().size())
            .mapToObj(i -> level.of(i, powered.get(i).orElseThrow().driverPowerW()))
            .toList();
    List<Double> levels =
        loudness.stream()
            .map(known -> known.map(ChannelLevel.Loudness::levelDbSpl).orElse(null))
            .toList();
    if (levels.stream().anyMatch(Objects::nonNull)) {
      run.find(LevelFinding.CABIN_MODEL)
          .at("/vehicle/cabin_length_m")
          .value(ChannelLevel.cabin(plan).criticalDistanceM());
    }
    run.requireNoFaults();
    List<ChannelReview.Powered> channels = powered.stream().map(Optional::orElseThrow).toList();
    LowestLoad lowest = new LowestLoad(plan, resolved, run);
    GainReview gain = new GainReview(plan, resolved, run);
    List<Double> lowestOhm = new ArrayList<>();
    List<Double> gainTargetV = new ArrayList<>();
    for (int i = 0; i < channels.size(); i++) {
      lowestOhm.add(lowest.of(i, channels.get(i).load()));
      gainTargetV.add(gain.targetV(i, channels.get(i)));
    }
    List<AmplifierLine> amplifiers =
        new AmplifierReview(plan, resolved, run, channels, lowestOhm).lines();
    CrossoverReview crossing = new CrossoverReview(plan, resolved, run, levels);
    crossing.remarkFilters();
    List<CrossoverLine> crossovers = crossing.lines();
    run.requireNoFaults();

    List<Double> trims = trims(levels, delays.orElseThrow());
    List<SetupLine> sheet = new ArrayList<>();
    List<ChannelLine> lines = new ArrayList<>();
    for (int i = 0; i < channels.size(); i++) {
      Figures figures =
          new Figures(
              loudness.get(i).orElse(null), trims.get(i), lowestOhm.get(i), gainTargetV.get(i));
      SeatDelaysResult.Channel delay = delays.orElseThrow().channels().get(i);
      // What was measured is judged here and so counts for the verdict of the line below.
      sheet.add(setup(plan.channels().get(i), channels.get(i), figures, delay, handover));
      lines.add(line(plan, i, channels.get(i), figures, delay, run));
    }
    return system(
        plan, resolved, main, lines, amplifiers, crossovers, sheet, delays.orElseThrow(), run);
  }

  /**
   * What brings every channel down to the level of the quietest, dB; where a level is not known, the
   * trims of the distance law.
   */
  private static List<Double> trims(List<Double> levels, SeatDelaysResult delays) {
    if (levels.contains(null)) {
      return delays.channels().stream().map(SeatDelaysResult.Channel::trimDb).toList();
    }
    double quietest = levels.stream().mapToDouble(level -> level).min().orElseThrow();
    return levels.stream().map(level -> quietest - level).toList();
  }

  /** Figures of a channel that may not be known. */
  private record Figures(
      ChannelLevel.Loudness loudness, double trimDb, Double lowestOhm, Double gainTargetV) {

    Double levelDbSpl() {
      return loudness == null ? null : (Double) loudness.levelDbSpl();
    }
  }

  private static SetupLine setup(
      VehiclePlan.Channel channel,
      ChannelReview.Powered powered,
      Figures figures,
      SeatDelaysResult.Channel delay,
      Handover handover) {
    return new SetupLine(
        channel.id(),
        channel.amplifier(),
        channel.outputs(),
        channel.highPass(),
        channel.lowPass(),
        figures.gainTargetV(),
        figures.trimDb(),
        delay.settingMs() == null ? delay.delayMs() : delay.settingMs(),
        delay.delaySamples(),
        delay.pathMm(),
        channel.polarity(),
        powered.power().limiterRmsV(),
        powered.power().limiterPeakV(),
        channel.filters(),
        figures.levelDbSpl(),
        handover.line(
            channel.id(), figures.levelDbSpl(), figures.gainTargetV(), channel.polarity()));
  }

  private static ChannelLine line(
      VehiclePlan plan,
      int index,
      ChannelReview.Powered powered,
      Figures figures,
      SeatDelaysResult.Channel delay,
      Run run) {
    ChannelLevel.Loudness loudness = figures.loudness();
    VehiclePlan.Channel channel = plan.channels().get(index);
    return new ChannelLine(
        channel.id(),
        channel.role(),
        powered.load().loadOhm(),
        figures.lowestOhm(),
        powered.power().cleanPowerW(),
        powered.power().headroomDb(),
        powered.power().limiterRmsV(),
        powered.power().limiterPeakV(),
        figures.levelDbSpl(),
        loudness == null ? null : loudness.largestDbSpl(),
        loudness == null ? null : loudness.heldBy(),
        figures.gainTargetV(),
        delay.delayMs(),
        figures.trimDb(),
        run.verdictOn("/channels/" + index));
  }

  private static PlanReviewResult system(
      VehiclePlan plan,
      Resolved resolved,
      SeatDelaysRequest.Seat main,
      List<ChannelLine> lines,
      List<AmplifierLine> amplifiers,
      List<CrossoverLine> crossovers,
      List<SetupLine> sheet,
      SeatDelaysResult delays,
      Run run) {
    Totals totals = new Totals(plan, resolved, run);
    Double level = Totals.together(lines);
    Double levelDba = totals.weighted(level);
    return new PlanReviewResult(
        main.name(),
        lines,
        totals.balance(lines),
        amplifiers.isEmpty() ? null : amplifiers,
        crossovers.isEmpty() ? null : crossovers,
        sheet,
        delays.seats().stream().map(s -> new SeatLine(s.name(), s.spreadMs())).toList(),
        level,
        levelDba,
        totals.overRoadNoise(levelDba),
        level == null ? null : Exposure.judge(levelDba, level, totals.peak(level), run),
        totals.massChange(),
        totals.price());
  }

  private static SeatDelaysRequest delays(VehiclePlan plan, Resolved resolved, Run run) {
    List<SeatDelaysRequest.Channel> channels = new ArrayList<>();
    for (int i = 0; i < plan.channels().size(); i++) {
      VehiclePlan.Channel channel = plan.channels().get(i);
      Collection<Position> places =
          resolved.driversOf(i).stream().map(d -> plan.drivers().get(d).position()).toList();
      double apart = Positions.extent(places);
      if (apart > APART_M) {
        run.find(PlanFinding.DRIVERS_APART).at("/channels/" + i + "/network").value(apart);
      }
      channels.add(
          new SeatDelaysRequest.Channel(
              channel.id(),
              Positions.middle(places),
              channel.chainDelayMs(),
              channel.highPass(),
              channel.lowPass(),
              channel.fullRange(),
              channel.polarity()));
    }
    return new SeatDelaysRequest(
        channels,
        plan.seats(),
        null,
        plan.crossovers().isEmpty() ? null : plan.crossovers(),
        plan.processor(),
        plan.vehicle().temperatureC());
  }

  /** The request of seat-delays is built like the plan, so most places are where they were. */
  private static Rebase places(boolean levelsKnown) {
    Rebase places = Rebase.to("", null);
    if (levelsKnown) {
      // The plan trims by its levels then.
      places.without(AlignmentFinding.TRIM_DISTANCE_LAW);
    }
    return places
        .with("/channels", "/channels")
        .with("/seats", "/seats")
        .with("/crossovers", "/crossovers")
        .with("/processor", "/processor")
        .with("/temperature_c", "/vehicle/temperature_c");
  }

  private static boolean levelsKnown(VehiclePlan plan) {
    return plan.newParts().stream().allMatch(part -> part.sensitivity() != null);
  }

  private static void remarkUnused(VehiclePlan plan, Resolved resolved, Run run) {
    for (int d = 0; d < plan.drivers().size(); d++) {
      int driver = d;
      if (IntStream.range(0, plan.channels().size())
          .noneMatch(c -> resolved.driversOf(c).contains(driver))) {
        run.find(PlanFinding.DRIVER_NOT_CONNECTED)
            .at("/drivers/" + d)
            .with("name", plan.drivers().get(d).id());
      }
    }
    for (int p = 0; p < plan.newParts().size(); p++) {
      int part = p;
      if (IntStream.range(0, plan.drivers().size()).noneMatch(d -> resolved.partOf(d) == part)) {
        run.find(PlanFinding.PART_NOT_USED)
            .at("/new_parts/" + p)
            .with("name", plan.newParts().get(p).id());
      }
    }
  }
}
