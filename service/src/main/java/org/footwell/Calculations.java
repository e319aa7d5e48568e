package org.footwell;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.footwell.acoustic.alignment.SeatDelays;
import org.footwell.acoustic.crossover.CrossoverPlan;
import org.footwell.acoustic.driver.DriverCheck;
import org.footwell.acoustic.driver.VoiceCoilHeat;
import org.footwell.acoustic.enclosure.ClosedBox;
import org.footwell.acoustic.enclosure.VentedBox;
import org.footwell.acoustic.exposure.SoundExposure;
import org.footwell.acoustic.filters.CrossoverFilters;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.acoustic.loudness.EqualLoudness;
import org.footwell.acoustic.seats.SeatLevels;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Document;
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
import org.footwell.vehicle.curves.PlanCurves;
import org.footwell.vehicle.faults.FaultFinder;
import org.footwell.vehicle.packages.PackageOptions;
import org.footwell.vehicle.questions.PlanDocument;
import org.footwell.vehicle.questions.PlanQuestions;
import org.footwell.vehicle.repair.PlanRepair;
import org.footwell.vehicle.sheets.PlanSheets;

/** Every calculation of the service, one line each; none is loaded before it is asked for. */
public final class Calculations {

  /** How to make each of them, by its id, in the order they are listed. */
  public static final Map<String, Supplier<Calculation<?, ?>>> BY_ID = byId();

  private static Map<String, Supplier<Calculation<?, ?>>> byId() {
    Map<String, Supplier<Calculation<?, ?>>> byId = new LinkedHashMap<>();
    byId.put("wiring-load", () -> new WiringLoad());
    byId.put("wiring-options", () -> new WiringOptions());
    byId.put("rail-match", () -> new RailMatch());
    byId.put("sound-level", () -> new SoundLevel());
    byId.put("seat-delays", () -> new SeatDelays());
    byId.put("plan-review", () -> new PlanReview(PlanSheets.VIEWS));
    byId.put("fault-finder", () -> new FaultFinder());
    byId.put("plan-repair", () -> new PlanRepair());
    byId.put("amplifier-ratings", () -> new AmplifierRatings());
    byId.put("amplifier-heat", () -> new AmplifierHeat());
    byId.put("gain-chain", () -> new GainChain());
    byId.put("impedance-curve", () -> new ImpedanceCurve());
    byId.put("impedance-fit", () -> new ImpedanceFit());
    byId.put("passive-network", () -> new PassiveNetwork());
    byId.put("passive-filter", () -> new PassiveFilter());
    byId.put("supply-cable", () -> new SupplyCable());
    byId.put("supply-budget", () -> new SupplyBudget());
    byId.put("crossover-plan", () -> new CrossoverPlan());
    byId.put("adapter-ring", () -> new AdapterRing());
    byId.put("driver-comparison", () -> new DriverComparison());
    byId.put("sound-exposure", () -> new SoundExposure());
    byId.put("equal-loudness", () -> new EqualLoudness());
    byId.put("seat-levels", () -> new SeatLevels());
    byId.put("crossover-filters", () -> new CrossoverFilters());
    byId.put("driver-check", () -> new DriverCheck());
    byId.put("voice-coil-heat", () -> new VoiceCoilHeat());
    byId.put("arrival-times", () -> new ArrivalTimes());
    byId.put("closed-box", () -> new ClosedBox());
    byId.put("vented-box", () -> new VentedBox());
    byId.put("box-panels", () -> new BoxPanels());
    byId.put("level-and-balance", () -> new LevelAndBalance());
    byId.put("response-correction", () -> new ResponseCorrection());
    byId.put("loudspeaker-sum", () -> new LoudspeakerSum());
    byId.put("signal-sum", () -> new SignalSum());
    byId.put("bass-rolloff", () -> new BassRolloff());
    byId.put("clip-point", () -> new ClipPoint());
    byId.put("plan-curves", () -> new PlanCurves());
    byId.put("package-options", () -> new PackageOptions(PlanSheets.OF_PACKAGES));
    byId.put("plan-questions", () -> new PlanQuestions(Calculations::all));
    return Collections.unmodifiableMap(byId);
  }

  /** The document that many of them can be put to. */
  public static final Document<?> PLAN = new PlanDocument();

  private Calculations() {}

  /** All of them, made anew. */
  public static List<Calculation<?, ?>> all() {
    return BY_ID.values().stream().<Calculation<?, ?>>map(Supplier::get).toList();
  }
}
