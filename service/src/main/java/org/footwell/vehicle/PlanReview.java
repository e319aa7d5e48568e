package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.footwell.acoustic.level.LevelFinding;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.View;
import org.footwell.calculation.text.Span;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Decibels;
import org.footwell.physics.Electricity;
import org.footwell.physics.NoiseDose;
import org.footwell.vehicle.PlanReviewResult.ChannelLine;
import org.footwell.vehicle.PlanReviewResult.LargestLine;
import org.footwell.vehicle.PlanReviewResult.SeatLine;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.SoundField;
import org.footwell.vehicle.chain.VehicleModel;
import org.footwell.vehicle.reading.Modelled;
import org.footwell.vehicle.reading.PlaysPlan;

/** The whole vehicle plan, read from one model in one state, with one verdict. */
public final class PlanReview implements Calculation<VehiclePlan, PlanReviewResult>, PlaysPlan {

  private final Card<VehiclePlan, PlanReviewResult> card;

  public PlanReview() {
    card = PlanCard.CARD;
  }

  /** With more forms of its answer, which are drawn from it elsewhere. */
  public PlanReview(List<View<VehiclePlan, PlanReviewResult>> views) {
    card = PlanCard.CARD.with(views);
  }

  @Override
  public Card<VehiclePlan, PlanReviewResult> card() {
    return card;
  }

  @Override
  public PlanReviewResult compute(VehiclePlan plan, Run run) {
    PlanIndex index = PlanIndex.of(plan, run);
    PlanCaution.say(plan, run);
    Modelled modelled = Modelled.of(index, run);
    List<Optional<LowestOhm>> lowest =
        modelled.model().channels().stream()
            .map(PlayedChannel::chain)
            .map(PlanReview::lowest)
            .toList();
    ChannelRemarks remarks = new ChannelRemarks(modelled, lowest, run);
    remarks.remark();
    SheetReview sheet = new SheetReview(modelled, run);
    DriverReview drivers = new DriverReview(modelled, run);
    CrossoverReview crossovers = new CrossoverReview(modelled, run);
    SupplyReview supply = new SupplyReview(modelled, run);
    Replacements replacements = new Replacements(index);
    Totals totals = new Totals(index, run);
    PlanReviewResultBuilder result =
        PlanReviewResultBuilder.builder()
            .mainSeat(plan.seats().get(plan.mainSeat()).name())
            .drivers(drivers.lines())
            .crossovers(orNone(crossovers.lines()))
            .supply(orNone(supply.situations()))
            .cables(orNone(supply.cables()))
            .setupSheet(sheet.lines())
            .causes(plan.measured().isEmpty() ? null : new CauseReview(modelled, run).lines())
            .notJudged(new NotJudgedList(index, replacements).list(run))
            .replacements(orNone(replacements.lines()))
            .fits(orNone(new FitReview(index, run).lines()))
            .restore(new Restoring(plan).lines())
            .bassStepDb(totals.bassStepDb())
            .massChangeG(totals.massChange())
            .price(totals.price())
            .quote(Quoting.of(index));
    List<ChannelLine> channels = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      channels.add(line(c, modelled, lowest.get(c), remarks, sheet, run));
    }
    levels(modelled, run, result);
    return result.channels(channels).balance(totals.balance(channels)).build();
  }

  private static <T> List<T> orNone(List<T> lines) {
    return lines.isEmpty() ? null : lines;
  }

  private static Optional<LowestOhm> lowest(ChannelChain chain) {
    return chain.impedanceKnown() ? Optional.of(LowestOhm.of(chain)) : Optional.empty();
  }

  private static ChannelLine line(
      int c,
      Modelled modelled,
      Optional<LowestOhm> lowest,
      ChannelRemarks remarks,
      SheetReview sheet,
      Run run) {
    VehiclePlan plan = modelled.index().plan();
    PlannedChannel planned = plan.channels().get(c);
    PlayedChannel channel = modelled.model().channels().get(c);
    ChannelChain chain = channel.chain();
    double amplifierV = modelled.cruisingV(chain.output().amplifier());
    double below = remarks.below(c);
    return PlanReviewResultChannelLineBuilder.builder()
        .id(planned.id())
        .role(planned.role())
        .loadOhm(chain.ratedOhm())
        .lowestOhm(lowest.map(one -> one.alone().value()).orElse(null))
        .lowestHz(lowest.map(one -> one.alone().frequencyHz()).orElse(null))
        .lowestWithCableOhm(lowest.map(one -> one.withCable().value()).orElse(null))
        .cleanPowerW(
            run.apply(
                Electricity.POWER, chain.output().cleanV(amplifierV), chain.output().loadOhm()))
        .gainReductionDb(below == 0 ? 0 : -below)
        .gainHeldBy(modelled.levelled().gains().get(c).by())
        .gainTargetV(sheet.gainTargetV(c))
        .trimDb(modelled.advisedTrimDb(c))
        .delayMs(modelled.advised().get(c).delayMs() - planned.chainDelayMs())
        .flightDelayMs(modelled.alignment().flightDelayMs(c))
        .meanPowerW(modelled.levelled().cruising().meanW().get(c))
        .limiterRmsV(sheet.limiterRmsV(c))
        .limiterPeakV(sheet.limiterPeakV(c))
        .levelDbSpl(sheet.levelDbSpl(c))
        .verdict(run.verdictOn("/channels/" + c))
        .build();
  }

  private static void levels(Modelled modelled, Run run, PlanReviewResultBuilder result) {
    VehiclePlan plan = modelled.index().plan();
    boolean heard =
        modelled.model().channels().stream().allMatch(channel -> channel.chain().heard());
    SoundField field = modelled.model().field();
    List<SeatLine> seats = new ArrayList<>();
    SoundField.Level main = null;
    for (int s = 0; s < plan.seats().size(); s++) {
      SoundField.Level level = heard ? field.together(s, modelled.heard()) : null;
      main = s == plan.mainSeat() ? level : main;
      seats.add(seat(s, level, modelled));
    }
    result.seats(seats);
    if (main == null) {
      return;
    }
    result.bandsHz(Arrays.stream(modelled.grid().bands()).boxed().toList());
    double dba = main.dba();
    double hours = run.apply(NoiseDose.NIOSH_ALLOWED_H, dba);
    Double noise = plan.vehicle().roadNoiseDba();
    remarkLevels(plan, dba, hours, run);
    result
        .levelDbSpl(main.dbSpl())
        .levelDba(dba)
        .overRoadNoiseDb(noise == null ? null : (Double) (dba - noise))
        .exposureAllowedH(hours)
        .largest(largest(modelled));
  }

  private static void remarkLevels(VehiclePlan plan, double dba, double hours, Run run) {
    if (dba > NoiseDose.NIOSH_EIGHT_HOUR_DBA) {
      run.find(PlanFinding.LOUD).value(dba).with("time", Span.of(hours));
    }
    Double wanted = plan.programme().durationH();
    if (wanted != null && wanted > hours) {
      run.find(PlanFinding.EXPOSURE_EXCEEDED)
          .at("/programme/duration_h")
          .value(wanted)
          .limit(hours)
          .with("time", Span.of(hours));
    }
    Double noise = plan.vehicle().roadNoiseDba();
    if (noise != null && dba < noise) {
      run.find(LevelFinding.BELOW_ROAD_NOISE)
          .at("/vehicle/road_noise_dba")
          .value(noise - dba)
          .limit(0);
    }
  }

  private static SeatLine seat(int s, SoundField.Level level, Modelled modelled) {
    VehiclePlan plan = modelled.index().plan();
    double first = Double.POSITIVE_INFINITY;
    double last = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < plan.channels().size(); c++) {
      double arrival =
          modelled.model().channels().get(c).chain().flightMs(s)
              + modelled.states().get(c).delayMs()
              - modelled.model().wanted().get(c).delayMs();
      first = Math.min(first, arrival);
      last = Math.max(last, arrival);
    }
    double loss = modelled.alignment().lossDb(s, modelled.states());
    List<Double> bands = new ArrayList<>();
    for (int b = 0; level != null && b < level.bandPower().length; b++) {
      bands.add(level.bandDbSpl(b));
    }
    return new SeatLine(
        plan.seats().get(s).name(),
        level == null ? null : (Double) level.dbSpl(),
        level == null ? null : (Double) level.dba(),
        level == null ? null : bands,
        last - first,
        Double.isNaN(loss) ? null : (Double) loss);
  }

  private static LargestLine largest(Modelled modelled) {
    VehiclePlan plan = modelled.index().plan();
    VehicleModel.Largest largest =
        modelled.model().largest(modelled.states(), modelled.levelled().cruising());
    double drive = Decibels.toAmplitude(largest.driveDb());
    List<ChannelState> quieter =
        modelled.states().stream()
            .map(
                state ->
                    new ChannelState(
                        state.sourceV() * drive, state.trimDb(), state.polarity(), state.delayMs()))
            .toList();
    SoundField.Level level = modelled.model().field().together(plan.mainSeat(), quieter);
    return new LargestLine(
        level.dbSpl(),
        level.dba(),
        largest.driveDb(),
        largest.by(),
        largest.channel() < 0 ? null : plan.channels().get(largest.channel()).id(),
        largest.driver() < 0 ? null : plan.drivers().get(largest.driver()).id());
  }
}
