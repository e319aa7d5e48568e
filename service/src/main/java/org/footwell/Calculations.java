package org.footwell;

import java.util.List;
import org.footwell.alignment.SeatDelays;
import org.footwell.amplifier.AmplifierRatings;
import org.footwell.amplifier.RailMatch;
import org.footwell.arrival.ArrivalTimes;
import org.footwell.balance.LevelAndBalance;
import org.footwell.calculation.Calculation;
import org.footwell.carpentry.BoxPanels;
import org.footwell.clipping.ClipPoint;
import org.footwell.comparison.DriverComparison;
import org.footwell.correction.ResponseCorrection;
import org.footwell.crossover.CrossoverPlan;
import org.footwell.driver.DriverCheck;
import org.footwell.enclosure.ClosedBox;
import org.footwell.enclosure.VentedBox;
import org.footwell.exposure.SoundExposure;
import org.footwell.factorysignal.SignalSum;
import org.footwell.filters.CrossoverFilters;
import org.footwell.fit.AdapterRing;
import org.footwell.gain.GainChain;
import org.footwell.handover.LoudspeakerSum;
import org.footwell.heat.AmplifierHeat;
import org.footwell.impedance.ImpedanceCurve;
import org.footwell.impedance.ImpedanceFit;
import org.footwell.level.SoundLevel;
import org.footwell.load.WiringLoad;
import org.footwell.load.WiringOptions;
import org.footwell.loudness.EqualLoudness;
import org.footwell.passive.PassiveFilter;
import org.footwell.passive.PassiveNetwork;
import org.footwell.plan.PlanReview;
import org.footwell.rolloff.BassRolloff;
import org.footwell.seatlevel.SeatLevels;
import org.footwell.supply.SupplyBudget;
import org.footwell.supply.SupplyCable;

/** Every calculation of the service, one line each. */
public final class Calculations {

  public static final List<Calculation<?, ?>> ALL =
      List.of(
          new WiringLoad(),
          new WiringOptions(),
          new RailMatch(),
          new SoundLevel(),
          new SeatDelays(),
          new PlanReview(),
          new AmplifierRatings(),
          new AmplifierHeat(),
          new GainChain(),
          new ImpedanceCurve(),
          new ImpedanceFit(),
          new PassiveNetwork(),
          new PassiveFilter(),
          new SupplyCable(),
          new SupplyBudget(),
          new CrossoverPlan(),
          new AdapterRing(),
          new DriverComparison(),
          new SoundExposure(),
          new EqualLoudness(),
          new SeatLevels(),
          new CrossoverFilters(),
          new DriverCheck(),
          new ArrivalTimes(),
          new ClosedBox(),
          new VentedBox(),
          new BoxPanels(),
          new LevelAndBalance(),
          new ResponseCorrection(),
          new LoudspeakerSum(),
          new SignalSum(),
          new BassRolloff(),
          new ClipPoint());

  private Calculations() {}
}
