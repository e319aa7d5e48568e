package org.footwell.vehicle.reading;

import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.parts.plan.PlanFigures;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehicleSupply;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.PowerSource;

/**
 * Figures of a plan from the model that its review is read from: the system while cruising, with the
 * settings that were made, else those advised. Rated loads need no more than the channels; the rest is worked out when it is
 * first asked for.
 */
public final class OperatingFigures implements PlanFigures {

  private final PlanIndex index;
  private final Run run;
  private final List<PlayedChannel> channels;
  private Modelled modelled;

  /** Refuses networks that cannot be read. */
  public OperatingFigures(PlanIndex index, Run run) {
    this.index = index;
    this.run = run;
    channels = new ModelReader(index, run).channels();
  }

  /** The system as it plays; refuses a plan that does not. */
  private Modelled modelled() {
    if (modelled == null) {
      run.hold(index.plan(), PlaysPlan.class);
      run.requireNoFaults();
      modelled = Modelled.of(index, run);
    }
    return modelled;
  }

  private ChannelChain chain(int channel) {
    return channels.get(channel).chain();
  }

  @Override
  public Double engineV() {
    VehicleSupply supply = index.plan().supply();
    return supply == null ? null : (Double) PlannedFeed.startV(supply);
  }

  @Override
  public double operatingV(int amplifier) {
    return modelled().cruisingV(amplifier);
  }

  @Override
  public double statedV(int amplifier) {
    return PlannedSource.ratedV(index.plan().amplifiers().get(amplifier));
  }

  @Override
  public double networkOhm(int channel) {
    return chain(channel).ratedOhm();
  }

  @Override
  public double branchOhm(int channel, int branch) {
    return chain(channel).branchOhm(branch);
  }

  @Override
  public double loadOhm(int channel) {
    return chain(channel).output().loadOhm();
  }

  @Override
  public double cleanW(int channel, double supplyV) {
    return chain(channel).output().cleanW(supplyV);
  }

  @Override
  public double outputV(int channel) {
    return chain(channel).output().cleanV(operatingV(index.amplifierOf(channel)));
  }

  @Override
  public Double driverW(int driver) {
    int channel = index.channelOf(driver);
    return channel < 0
        ? null
        : (Double) modelled().cleanW(channel, chain(channel).drivers().indexOf(driver));
  }

  @Override
  public Double sineDbSpl(int channel) {
    return chain(channel).heard() ? (Double) modelled().sineDbSpl(channel) : null;
  }

  @Override
  public Double bearableW(int channel) {
    ChannelChain chain = chain(channel);
    double bearable = Double.POSITIVE_INFINITY;
    for (int d = 0; d < chain.drivers().size(); d++) {
      Double own = chain.model(d).part().driver().continuousPowerW();
      if (own == null) {
        return null;
      }
      bearable = Math.min(bearable, own / chain.ratedWPerSquareVolt(d));
    }
    return bearable / chain.ratedOhm();
  }

  @Override
  public Double fullSineA(int amplifier) {
    boolean known =
        index.plan().supply() != null && index.plan().amplifiers().get(amplifier).draw() != null;
    PowerSource.Meeting sine = known ? modelled().levelled().cruising().sine() : null;
    return sine == null ? null : sine.currentA().get(amplifier);
  }
}
