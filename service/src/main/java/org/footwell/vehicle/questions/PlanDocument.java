package org.footwell.vehicle.questions;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.footwell.calculation.Asked;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Document;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Names;
import org.footwell.electrical.load.LoadFault;
import org.footwell.parts.ConductorFault;
import org.footwell.parts.FilterFault;
import org.footwell.parts.MoneyFault;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanFault;
import org.footwell.parts.plan.PlanFigures;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.reading.OperatingFigures;
import org.footwell.vehicle.reading.PlanRefusal;
import org.footwell.vehicle.reading.ReadsPlan;

/** A vehicle plan, to which every calculation that declares so can be put. */
public final class PlanDocument implements Document<VehiclePlan>, ReadsPlan {

  private static final String ABOUT = "/about";

  @Override
  public Class<VehiclePlan> type() {
    return VehiclePlan.class;
  }

  @Override
  public List<FaultCode> refusals() {
    return List.of(FilterFault.and(faults()));
  }

  /** Why a plan does not hang together, or does not play where a question asks how it does. */
  public static FaultCode[] faults() {
    return Stream.<FaultCode[]>of(
            PlanFault.values(),
            MoneyFault.values(),
            // The coils of a plan are its drivers, which are looked for before.
            Stream.of(LoadFault.values())
                .filter(PlanDocument::ofNotation)
                .toArray(FaultCode[]::new),
            PlanRefusal.values(),
            ConductorFault.values())
        .flatMap(Stream::of)
        .toArray(FaultCode[]::new);
  }

  private static boolean ofNotation(LoadFault fault) {
    return fault.name().startsWith("NETWORK_");
  }

  @Override
  public List<String> places(Calculation<?, ?> calculation) {
    return asked(calculation)
        .map(ask -> ask.places().stream().map(PlanPlace::form).toList())
        .orElse(List.of());
  }

  /** How a calculation is put to a plan, if it can be. */
  static Optional<AskOfPlan<?>> asked(Calculation<?, ?> calculation) {
    return calculation instanceof AskOfPlan<?> ask ? Optional.of(ask) : Optional.empty();
  }

  @Override
  @SuppressWarnings("unchecked") // a calculation declares how its own request is read
  public <Q extends Record> Asked<Q> ask(
      Calculation<Q, ?> calculation, VehiclePlan plan, String about, Run run) {
    AskOfPlan<Q> ask = (AskOfPlan<Q>) calculation;
    PlanPlace.Place place = place(ask, plan, about);
    PlanIndex index = PlanIndex.of(plan, run);
    return ask(ask, index, new OperatingFigures(index, run), place);
  }

  static <Q extends Record> Asked<Q> ask(
      AskOfPlan<Q> ask, PlanIndex index, PlanFigures figures, PlanPlace.Place about) {
    PlanReader reader = new PlanReader(index, figures, about);
    return reader.asked(ask.ask(reader));
  }

  private static PlanPlace.Place place(AskOfPlan<?> ask, VehiclePlan plan, String about) {
    List<PlanPlace.Place> known = PlanPlace.in(plan, ask.places());
    return known.stream()
        .filter(place -> place.isAt(about))
        .findFirst()
        .orElseThrow(() -> noSuch(ask, known, about));
  }

  /** Nothing was said, or a place that is not there or of another kind. */
  private static Refused noSuch(AskOfPlan<?> ask, List<PlanPlace.Place> known, String about) {
    Faults faults = new Faults();
    List<String> forms =
        ask.places().stream().map(PlanPlace::form).filter(form -> !form.isEmpty()).toList();
    if (about.isEmpty()) {
      faults.add(CoreFault.REQUIRED).at(ABOUT).allowed(Allowed.fields(forms));
    } else if (forms.isEmpty()) {
      faults.add(CoreFault.NOT_ALLOWED).at(ABOUT).given(about).allowed(Allowed.absent());
    } else {
      List<String> addresses = known.stream().map(PlanPlace.Place::address).toList();
      faults
          .add(CoreFault.DANGLING_REFERENCE)
          .at(ABOUT)
          .given(about)
          .with("nearest", Names.didYouMean(about, addresses))
          .allowed(Allowed.fields(forms));
    }
    return new Refused(faults);
  }
}
