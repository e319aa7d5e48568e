package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.footwell.acoustic.alignment.SeatDelaysResult;
import org.footwell.acoustic.level.Exposure;
import org.footwell.acoustic.level.LevelFinding;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.parts.Seat;
import org.footwell.vehicle.PlanReviewResult.AmplifierLine;
import org.footwell.vehicle.PlanReviewResult.ChannelLine;
import org.footwell.vehicle.PlanReviewResult.CrossoverLine;
import org.footwell.vehicle.PlanReviewResult.SeatLine;
import org.footwell.vehicle.PlanReviewResult.SetupLine;

/** The whole vehicle plan, every channel run through the calculations, with one verdict. */
public final class PlanReview implements Calculation<VehiclePlan, PlanReviewResult> {

  @Override
  public Card<VehiclePlan, PlanReviewResult> card() {
    return PlanCard.CARD;
  }

  @Override
  public PlanReviewResult compute(VehiclePlan plan, Run run) {
    Resolved resolved = new Resolved(plan, run);
    Handover handover = new Handover(plan, run);
    new BoxReview(plan, resolved, run).check();
    List<Optional<ChannelReview.Powered>> powered =
        IntStream.range(0, plan.channels().size())
            .mapToObj(i -> new ChannelReview(plan, resolved, run, i).powered())
            .toList();
    Optional<SeatDelaysResult> aligned = new DelayReview(plan, resolved, run).delays();
    run.requireNoFaults();
    remarkUnused(plan, resolved, run);
    new PartReview(plan, run).remark();

    Seat main = plan.seats().stream().max(Comparator.comparing(Seat::weight)).orElseThrow();
    ChannelLevel level = new ChannelLevel(plan, resolved, run, main.head());
    List<ChannelReview.Powered> channels = powered.stream().map(Optional::orElseThrow).toList();
    SeatDelaysResult delays = aligned.orElseThrow();
    List<ChannelLevel.Loudness> loudness =
        IntStream.range(0, channels.size())
            .mapToObj(i -> level.of(i, channels.get(i).driverPowerW()))
            .toList();
    List<Double> levels =
        loudness.stream().map(ChannelLevel.Loudness::levelDbSpl).collect(Collectors.toList());
    if (levels.stream().anyMatch(Objects::nonNull)) {
      run.find(LevelFinding.CABIN_MODEL)
          .at("/vehicle/cabin_length_m")
          .value(DriverLevel.cabin(plan).criticalDistanceM());
    }
    run.requireNoFaults();
    ChannelLowestLoad lowest = new ChannelLowestLoad(plan, resolved, run);
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

    List<Double> trims = trims(levels, delays);
    List<SetupLine> sheet = new ArrayList<>();
    List<ChannelLine> lines = new ArrayList<>();
    for (int i = 0; i < channels.size(); i++) {
      Figures figures =
          new Figures(loudness.get(i), trims.get(i), lowestOhm.get(i), gainTargetV.get(i));
      SeatDelaysResult.ChannelDelay delay = delays.channels().get(i);
      // What was measured is judged here and so counts for the verdict of the line below.
      sheet.add(setup(plan.channels().get(i), channels.get(i), figures, delay, handover));
      lines.add(line(plan, i, channels.get(i), figures, delay, run));
    }
    List<SeatLine> seats = seats(plan, level, channels, delays);
    Totals totals = new Totals(plan, resolved, run);
    Double together = Totals.together(levels);
    Double levelDba = totals.weighted(together);
    return PlanReviewResultBuilder.builder()
        .mainSeat(main.name())
        .channels(lines)
        .bands(loudness.stream().flatMap(channel -> channel.bands().stream()).toList())
        .boxes(orNone(loudness.stream().flatMap(channel -> channel.boxes().stream()).toList()))
        .balance(totals.balance(lines))
        .amplifiers(orNone(amplifiers))
        .crossovers(orNone(crossovers))
        .setupSheet(sheet)
        .seats(seats)
        .levelDbSpl(together)
        .levelDba(levelDba)
        .overRoadNoiseDb(totals.overRoadNoise(levelDba))
        .exposureAllowedH(
            together == null
                ? null
                : Exposure.judge(levelDba, together, null, totals.peak(together), run))
        .massChangeG(totals.massChange())
        .price(totals.price())
        .build();
  }

  private static <T> List<T> orNone(List<T> lines) {
    return lines.isEmpty() ? null : lines;
  }

  /** Each seat: all channels together there, and what is left between their arrivals. */
  private static List<SeatLine> seats(
      VehiclePlan plan,
      ChannelLevel level,
      List<ChannelReview.Powered> channels,
      SeatDelaysResult delays) {
    return IntStream.range(0, plan.seats().size())
        .mapToObj(
            s -> {
              Seat seat = plan.seats().get(s);
              List<Double> levels =
                  IntStream.range(0, channels.size())
                      .mapToObj(c -> level.levelAt(c, channels.get(c).driverPowerW(), seat.head()))
                      .collect(Collectors.toList());
              return new SeatLine(
                  seat.name(), Totals.together(levels), delays.seats().get(s).spreadMs());
            })
        .toList();
  }

  /**
   * What brings every channel down to the level of the quietest, dB; where a level is not known, the
   * trims of the distance law.
   */
  private static List<Double> trims(List<Double> levels, SeatDelaysResult delays) {
    if (levels.contains(null)) {
      return delays.channels().stream().map(SeatDelaysResult.ChannelDelay::trimDb).toList();
    }
    double quietest = levels.stream().mapToDouble(level -> level).min().orElseThrow();
    return levels.stream().map(level -> quietest - level).toList();
  }

  /** Figures of a channel that may not be known. */
  private record Figures(
      ChannelLevel.Loudness loudness, double trimDb, Double lowestOhm, Double gainTargetV) {

    Double levelDbSpl() {
      return loudness.levelDbSpl();
    }
  }

  private static SetupLine setup(
      VehiclePlan.Channel channel,
      ChannelReview.Powered powered,
      Figures figures,
      SeatDelaysResult.ChannelDelay delay,
      Handover handover) {
    return PlanReviewResultSetupLineBuilder.builder()
        .id(channel.id())
        .amplifier(channel.amplifier())
        .outputs(channel.outputs())
        .highPass(channel.highPass())
        .lowPass(channel.lowPass())
        .gainTargetV(figures.gainTargetV())
        .trimDb(figures.trimDb())
        .delayMs(delay.settingMs() == null ? delay.delayMs() : delay.settingMs())
        .delaySamples(delay.delaySamples())
        .delayMm(delay.pathMm())
        .polarity(channel.polarity())
        .limiterRmsV(powered.power().limiterRmsV())
        .limiterPeakV(powered.power().limiterPeakV())
        .filters(channel.filters())
        .levelDbSpl(figures.levelDbSpl())
        .measured(
            handover.line(
                channel.id(), figures.levelDbSpl(), figures.gainTargetV(), channel.polarity()))
        .build();
  }

  private static ChannelLine line(
      VehiclePlan plan,
      int index,
      ChannelReview.Powered powered,
      Figures figures,
      SeatDelaysResult.ChannelDelay delay,
      Run run) {
    ChannelLevel.Loudness loudness = figures.loudness();
    VehiclePlan.Channel channel = plan.channels().get(index);
    return PlanReviewResultChannelLineBuilder.builder()
        .id(channel.id())
        .role(channel.role())
        .loadOhm(powered.load().loadOhm())
        .lowestOhm(figures.lowestOhm())
        .cleanPowerW(powered.power().cleanPowerW())
        .headroomDb(powered.power().headroomDb())
        .limiterRmsV(powered.power().limiterRmsV())
        .limiterPeakV(powered.power().limiterPeakV())
        .levelDbSpl(figures.levelDbSpl())
        .largestLevelDbSpl(loudness.largestDbSpl())
        .heldBy(loudness.heldBy())
        .gainTargetV(figures.gainTargetV())
        .delayMs(delay.delayMs())
        .trimDb(figures.trimDb())
        .verdict(run.verdictOn("/channels/" + index))
        .build();
  }

  private static void remarkUnused(VehiclePlan plan, Resolved resolved, Run run) {
    for (int d = 0; d < plan.drivers().size(); d++) {
      int driver = d;
      if (IntStream.range(0, plan.channels().size())
          .noneMatch(c -> resolved.driversOf(c).contains(driver))) {
        run.find(PlanFinding.DRIVER_NOT_CONNECTED)
            .at("/drivers/" + d)
            .own("name", plan.drivers().get(d).id());
      }
    }
    for (int p = 0; p < plan.newParts().size(); p++) {
      int part = p;
      if (IntStream.range(0, plan.drivers().size()).noneMatch(d -> resolved.partOf(d) == part)) {
        run.find(PlanFinding.PART_NOT_USED)
            .at("/new_parts/" + p)
            .own("name", plan.newParts().get(p).id());
      }
    }
  }
}
