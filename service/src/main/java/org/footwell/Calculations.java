package org.footwell;

import java.util.List;
import org.footwell.acoustic.alignment.SeatDelays;
import org.footwell.acoustic.crossover.CrossoverPlan;
import org.footwell.acoustic.driver.DriverCheck;
import org.footwell.acoustic.enclosure.ClosedBox;
import org.footwell.acoustic.enclosure.VentedBox;
import org.footwell.acoustic.exposure.SoundExposure;
import org.footwell.acoustic.filters.CrossoverFilters;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.acoustic.loudness.EqualLoudness;
import org.footwell.acoustic.seats.SeatLevels;
import org.footwell.calculation.Calculation;
import org.footwell.electrical.amplifier.AmplifierRatings;
import org.footwell.electrical.amplifier.RailMatch;
import org.footwell.electrical.gain.GainChain;
import org.footwell.electrical.heat.AmplifierHeat;
import org.footwell.electrical.impedance.ImpedanceCurve;
import org.footwell.electrical.impedance.ImpedanceFit;
import org.footwell.electrical.load.WiringLoad;
import org.footwell.electrical.load.WiringOptions;
import org.footwell.electrical.passive.PassiveFilter;
import org.footwell.electrical.passive.PassiveNetwork;
import org.footwell.electrical.supply.SupplyBudget;
import org.footwell.electrical.supply.SupplyCable;
import org.footwell.factory.clip.ClipPoint;
import org.footwell.factory.rolloff.BassRolloff;
import org.footwell.factory.sum.SignalSum;
import org.footwell.fitting.carpentry.BoxPanels;
import org.footwell.fitting.comparison.DriverComparison;
import org.footwell.fitting.ring.AdapterRing;
import org.footwell.measured.arrival.ArrivalTimes;
import org.footwell.measured.balance.LevelAndBalance;
import org.footwell.measured.correction.ResponseCorrection;
import org.footwell.measured.sum.LoudspeakerSum;
import org.footwell.vehicle.PlanReview;

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
