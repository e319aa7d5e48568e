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
    byId.put("wiring-load", new OfNothing(WiringLoad.class));
    byId.put("wiring-options", new OfNothing(WiringOptions.class));
    byId.put("rail-match", new OfNothing(RailMatch.class));
    byId.put("sound-level", new OfNothing(SoundLevel.class));
    byId.put("seat-delays", new OfNothing(SeatDelays.class));
    byId.put("plan-review", () -> new PlanReview(PlanSheets.VIEWS));
    byId.put("fault-finder", new OfNothing(FaultFinder.class));
    byId.put("plan-repair", new OfNothing(PlanRepair.class));
    byId.put("amplifier-ratings", new OfNothing(AmplifierRatings.class));
    byId.put("amplifier-heat", new OfNothing(AmplifierHeat.class));
    byId.put("gain-chain", new OfNothing(GainChain.class));
    byId.put("impedance-curve", new OfNothing(ImpedanceCurve.class));
    byId.put("impedance-fit", new OfNothing(ImpedanceFit.class));
    byId.put("passive-network", new OfNothing(PassiveNetwork.class));
    byId.put("passive-filter", new OfNothing(PassiveFilter.class));
    byId.put("supply-cable", new OfNothing(SupplyCable.class));
    byId.put("supply-budget", new OfNothing(SupplyBudget.class));
    byId.put("crossover-plan", new OfNothing(CrossoverPlan.class));
    byId.put("adapter-ring", new OfNothing(AdapterRing.class));
    byId.put("driver-comparison", new OfNothing(DriverComparison.class));
    byId.put("sound-exposure", new OfNothing(SoundExposure.class));
    byId.put("equal-loudness", new OfNothing(EqualLoudness.class));
    byId.put("seat-levels", new OfNothing(SeatLevels.class));
    byId.put("crossover-filters", new OfNothing(CrossoverFilters.class));
    byId.put("driver-check", new OfNothing(DriverCheck.class));
    byId.put("voice-coil-heat", new OfNothing(VoiceCoilHeat.class));
    byId.put("arrival-times", new OfNothing(ArrivalTimes.class));
    byId.put("closed-box", new OfNothing(ClosedBox.class));
    byId.put("vented-box", new OfNothing(VentedBox.class));
    byId.put("box-panels", new OfNothing(BoxPanels.class));
    byId.put("level-and-balance", new OfNothing(LevelAndBalance.class));
    byId.put("response-correction", new OfNothing(ResponseCorrection.class));
    byId.put("loudspeaker-sum", new OfNothing(LoudspeakerSum.class));
    byId.put("signal-sum", new OfNothing(SignalSum.class));
    byId.put("bass-rolloff", new OfNothing(BassRolloff.class));
    byId.put("clip-point", new OfNothing(ClipPoint.class));
    byId.put("plan-curves", new OfNothing(PlanCurves.class));
    byId.put("package-options", () -> new PackageOptions(PlanSheets.OF_PACKAGES));
    byId.put("plan-questions", () -> new PlanQuestions(Calculations::all));
    return Collections.unmodifiableMap(byId);
  }

  /** One that is made of nothing. Where this were a lambda, the list would take a twentieth of the start. */
  private record OfNothing(Class<? extends Calculation<?, ?>> type)
      implements Supplier<Calculation<?, ?>> {

    @Override
    public Calculation<?, ?> get() {
      try {
        return type.getConstructor().newInstance();
      } catch (ReflectiveOperationException impossible) {
        throw new IllegalStateException("no public constructor in " + type, impossible);
      }
    }
  }

  /** The document that many of them can be put to. */
  public static final Document<?> PLAN = new PlanDocument();

  private Calculations() {}

  /** All of them, made anew. */
  public static List<Calculation<?, ?>> all() {
    return BY_ID.values().stream().<Calculation<?, ?>>map(Supplier::get).toList();
  }
}
