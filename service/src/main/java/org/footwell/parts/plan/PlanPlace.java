package org.footwell.parts.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.footwell.parts.Crossover;

/** The kinds of places of a plan that a question can be about. */
public enum PlanPlace {
  /** The plan as a whole. */
  PLAN("") {
    @Override
    List<Place> in(VehiclePlan plan) {
      return List.of(new Place(this, "", "", null, -1, -1));
    }
  },
  /** A factory part. */
  FACTORY_PART("/factory_parts/{id}") {
    @Override
    List<Place> in(VehiclePlan plan) {
      return entries("/factory_parts", plan.factoryParts(), PlannedPart::id);
    }
  },
  /** A new part. */
  PART("/new_parts/{id}") {
    @Override
    List<Place> in(VehiclePlan plan) {
      return entries("/new_parts", plan.newParts(), PlannedPart::id);
    }
  },
  /** A part in its place. */
  DRIVER("/drivers/{id}") {
    @Override
    List<Place> in(VehiclePlan plan) {
      return entries("/drivers", plan.drivers(), PlacedDriver::id);
    }
  },
  /** An amplifier with all its outputs. */
  AMPLIFIER("/amplifiers/{id}") {
    @Override
    List<Place> in(VehiclePlan plan) {
      return entries("/amplifiers", plan.amplifiers(), PlannedAmplifier::id);
    }
  },
  /** Alike outputs of an amplifier. */
  OUTPUTS("/amplifiers/{id}/outputs/{id}") {
    @Override
    List<Place> in(VehiclePlan plan) {
      return within(
          AMPLIFIER.in(plan),
          "/outputs",
          amplifier -> plan.amplifiers().get(amplifier).outputs(),
          PlannedAmplifier.Outputs::id);
    }
  },
  /** A channel. */
  CHANNEL("/channels/{id}") {
    @Override
    List<Place> in(VehiclePlan plan) {
      return entries("/channels", plan.channels(), PlannedChannel::id);
    }
  },
  /** A branch of a passive crossover. */
  BRANCH("/channels/{id}/branches/{band}") {
    @Override
    List<Place> in(VehiclePlan plan) {
      return within(
          CHANNEL.in(plan),
          "/branches",
          channel -> plan.channels().get(channel).branchList(),
          Branch::band);
    }
  },
  /** Where two channels cross over. */
  CROSSOVER("/crossovers/{lower}/{upper}") {
    @Override
    List<Place> in(VehiclePlan plan) {
      return entries("/crossovers", plan.crossovers(), PlanPlace::ids);
    }
  };

  private final String form;

  PlanPlace(String form) {
    this.form = form;
  }

  /**
   * A place of a plan.
   *
   * @param kind what it is
   * @param address as a caller writes it, by ids
   * @param pointer JSON Pointer to it, by indexes
   * @param name what a person calls it, or null for the plan itself
   * @param index in its list, or of what it is within; −1 for the plan itself
   * @param inner index within that, or −1
   */
  public record Place(
      PlanPlace kind, String address, String pointer, String name, int index, int inner) {

    /** Whether a caller means it, by ids or by indexes. */
    public boolean isAt(String about) {
      return about.equals(address) || about.equals(pointer);
    }
  }

  /** How such places are written. */
  public String form() {
    return form;
  }

  /** All of them, in the order of the plan. */
  abstract List<Place> in(VehiclePlan plan);

  /** All places of some kinds. */
  public static List<Place> in(VehiclePlan plan, List<PlanPlace> kinds) {
    return kinds.stream().flatMap(kind -> kind.in(plan).stream()).toList();
  }

  private static String ids(Crossover crossover) {
    return crossover.lower() + "/" + crossover.upper();
  }

  <T> List<Place> entries(String list, List<T> entries, Function<T, String> id) {
    return IntStream.range(0, entries.size())
        .mapToObj(i -> place(list, list, id.apply(entries.get(i)), i, -1))
        .toList();
  }

  <T> List<Place> within(
      List<Place> around, String list, Function<Integer, List<T>> entries, Function<T, String> id) {
    List<Place> places = new ArrayList<>();
    for (Place outer : around) {
      List<T> inner = entries.apply(outer.index());
      for (int i = 0; i < inner.size(); i++) {
        places.add(
            place(
                outer.address() + list,
                outer.pointer() + list,
                id.apply(inner.get(i)),
                outer.index(),
                i));
      }
    }
    return places;
  }

  private Place place(String address, String pointer, String id, int index, int inner) {
    return new Place(
        this, address + "/" + id, pointer + "/" + (inner < 0 ? index : inner), id, index, inner);
  }
}
