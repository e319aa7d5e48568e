package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.footwell.calculation.Run;
import org.footwell.parts.Processor;
import org.footwell.parts.plan.ChannelSettings;
import org.footwell.parts.plan.MeasuredChannel;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.Signal;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Air;
import org.footwell.physics.Decibels;
import org.footwell.physics.ThirdOctaves;
import org.footwell.vehicle.PlanReviewResult.MeasuredLine;
import org.footwell.vehicle.PlanReviewResult.SetLine;
import org.footwell.vehicle.PlanReviewResult.SetupLine;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.WantedSound;
import org.footwell.vehicle.reading.Modelled;
import org.footwell.vehicle.reading.WantedReader;

/** The sheet to set the system by: advised, set and measured. */
final class SheetReview {

  /** What a cabin and a meter leave open, dB; common practice, no source. */
  private static final double LEVEL_OFF_DB = 3;

  /** Arrivals should agree to this with all delays set, ms; common practice, no source. */
  private static final double ARRIVAL_OFF_MS = 0.3;

  /** A meter, its leads and a warm coil explain so much, as a ratio; common practice, no source. */
  private static final double OHM_OFF = 0.15;

  private final Modelled modelled;
  private final PlanIndex index;
  private final VehiclePlan plan;
  private final Run run;
  private final List<Double> gainTargets;

  SheetReview(Modelled modelled, Run run) {
    this.modelled = modelled;
    this.index = modelled.index();
    this.plan = index.plan();
    this.run = run;
    gainTargets = plan.signal() == null ? null : gainTargets(plan.signal());
  }

  List<SetupLine> lines() {
    List<SetupLine> lines = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      lines.add(line(c));
    }
    return lines;
  }

  /** RMS voltage at the terminals with the test tone, V; null where the plan has no signal. */
  Double gainTargetV(int c) {
    return gainTargets == null ? null : gainTargets.get(c);
  }

  private List<Double> gainTargets(Signal signal) {
    List<Double> targets = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      double source = modelled.levelled().gains().get(c).volts();
      targets.add(WantedReader.gainV(source, signal, chain(c), run));
    }
    return targets;
  }

  private PlayedChannel channel(int c) {
    return modelled.model().channels().get(c);
  }

  private ChannelChain chain(int c) {
    return channel(c).chain();
  }

  Double limiterRmsV(int c) {
    return channel(c).limiterRmsV();
  }

  /** Of the amplifier while cruising, V. */
  double limiterPeakV(int c) {
    return channel(c).limiterPeakV(modelled.levelled().cruising().clipV().get(c));
  }

  Double levelDbSpl(int c) {
    return chain(c).heard()
        ? (Double) modelled.model().field().alone(plan.mainSeat(), modelled.heard(), c).dbSpl()
        : null;
  }

  private SetupLine line(int c) {
    PlannedChannel channel = plan.channels().get(c);
    ChannelState advised = modelled.advised().get(c);
    WantedSound wanted = modelled.model().wanted().get(c);
    double delay = advised.delayMs() - wanted.chainDelayMs();
    Processor processor = plan.processor();
    Signal signal = plan.signal();
    remarkLongest(c, delay);
    return PlanReviewResultSetupLineBuilder.builder()
        .id(channel.id())
        .amplifier(channel.amplifier())
        .outputs(channel.outputs())
        .highPass(channel.highPass())
        .lowPass(channel.lowPass())
        .equaliser(channel.equaliser().isEmpty() ? null : channel.equaliser())
        .toneHz(signal == null ? null : (Double) toneHz(c))
        .toneDbfs(signal == null ? null : signal.testToneDbfs())
        .volumeStep(signal == null ? null : signal.volumeStep())
        .terminals(signal == null ? null : signal.terminals())
        .meterOhm(chain(c).meterOhm())
        .gainTargetV(gainTargetV(c))
        .trimDb(modelled.advisedTrimDb(c))
        .delayMs(delay)
        .delaySamples(processor == null ? null : (Double) (delay * processor.rateHz() / 1000))
        .delayMm(delay * Air.SPEED_OF_SOUND.at(plan.vehicle().temperatureC()))
        .polarity(modelled.alignment().turn(c))
        .limiterRmsV(limiterRmsV(c))
        .limiterPeakV(limiterPeakV(c))
        .set(set(c))
        .levelDbSpl(levelDbSpl(c))
        .measured(measured(c))
        .build();
  }

  private void remarkLongest(int c, double delay) {
    Processor processor = plan.processor();
    if (processor != null
        && processor.maximumDelayMs() != null
        && delay > processor.maximumDelayMs()) {
      run.find(PlanFinding.DELAY_TOO_LONG)
          .at("/processor/maximum_delay_ms")
          .value(delay)
          .limit(processor.maximumDelayMs())
          .own("name", plan.channels().get(c).id());
    }
  }

  /** The nominal third octave in the middle of the channel's band: its filters are flat there. */
  private double toneHz(int c) {
    WantedSound wanted = modelled.model().wanted().get(c);
    return ThirdOctaves.nominalHz(
        modelled.grid().bands()[(wanted.fromBand() + wanted.toBand()) / 2]);
  }

  private SetLine set(int c) {
    ChannelSettings set = index.settingsOf(c);
    if (set == null) {
      return null;
    }
    Double target = gainTargetV(c);
    Double off =
        set.gainV() == null || target == null
            ? null
            : (Double) Decibels.ofAmplitude(set.gainV() / target);
    return new SetLine(set.gainV(), off, set.trimDb(), set.delayMs(), set.polarity());
  }

  private MeasuredLine measured(int c) {
    String id = plan.channels().get(c).id();
    for (int row = 0; row < plan.measured().size(); row++) {
      if (plan.measured().get(row).channel().equals(id)) {
        return measured(c, row);
      }
    }
    return null;
  }

  private MeasuredLine measured(int c, int row) {
    MeasuredChannel measured = plan.measured().get(row);
    String at = "/measured/" + row;
    String id = measured.channel();
    Double predicted = levelDbSpl(c);
    Double off =
        measured.levelDbSpl() == null || predicted == null
            ? null
            : (Double) (measured.levelDbSpl() - predicted);
    if (off != null && Math.abs(off) > LEVEL_OFF_DB) {
      run.find(PlanFinding.MEASURED_LEVEL_OFF)
          .at(at + "/level_db_spl")
          .value(off)
          .limit(LEVEL_OFF_DB)
          .own("channel", id);
    }
    Double late = late(row);
    double wanted = plan.target().of(plan.channels().get(c).role()).delayMs();
    if (late != null && Math.abs(late - wanted) > ARRIVAL_OFF_MS && !modelled.movedForPhase(c)) {
      run.find(PlanFinding.MEASURED_ARRIVAL_OFF)
          .at(at + "/arrival_ms")
          .value(late)
          .limit(ARRIVAL_OFF_MS)
          .own("channel", id);
    }
    Boolean right =
        measured.polarity() == null
            ? null
            : (Boolean) (measured.polarity() == modelled.states().get(c).polarity());
    if (right != null && !right) {
      run.find(PlanFinding.MEASURED_POLARITY_WRONG).at(at + "/polarity").own("channel", id);
    }
    Double expected = chain(c).meterOhm();
    if (measured.meterOhm() != null
        && expected != null
        && Math.abs(measured.meterOhm() / expected - 1) > OHM_OFF) {
      run.find(PlanFinding.MEASURED_OHM_OFF)
          .at(at + "/meter_ohm")
          .value(measured.meterOhm())
          .limit(expected)
          .own("channel", id);
    }
    return new MeasuredLine(
        measured.levelDbSpl(),
        off,
        measured.meterOhm(),
        expected,
        late,
        measured.polarity(),
        right);
  }

  /** How much later than the earliest channel it arrived, ms. */
  private Double late(int row) {
    Double own = plan.measured().get(row).arrivalMs();
    List<Double> all =
        plan.measured().stream().map(MeasuredChannel::arrivalMs).filter(Objects::nonNull).toList();
    return own == null || all.size() < 2
        ? null
        : (Double) (own - all.stream().mapToDouble(d -> d).min().orElseThrow());
  }
}
