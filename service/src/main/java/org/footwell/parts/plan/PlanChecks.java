package org.footwell.parts.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Given;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.Crossover;
import org.footwell.parts.Filter;
import org.footwell.parts.Position;
import org.footwell.parts.Seat;

/** What the declared rules of a plan cannot say: outputs, networks, filters and places. */
final class PlanChecks {

  /** A word of a network: the id of a driver, with the number of a coil where it has several. */
  private static final Pattern WORD = Pattern.compile("([A-Za-z][A-Za-z0-9_-]*)(?:\\.([0-9]+))?");

  /** What a network can be written with. */
  private static final Pattern WRITTEN = Pattern.compile("[A-Za-z0-9_.+|()\\s-]*");

  private final VehiclePlan plan;
  private final Run run;
  private final Map<String, Integer> drivers;
  private final Set<String> outputsUsed = new HashSet<>();
  private final Set<String> coilsUsed = new HashSet<>();
  private final Map<Integer, String> networkOf = new HashMap<>();

  PlanChecks(VehiclePlan plan, Run run) {
    this.plan = plan;
    this.run = run;
    drivers = PlanIndex.byId(plan.drivers().stream().map(PlacedDriver::id).toList());
  }

  /** The voice coils of each channel; everything else is checked on the way. */
  List<List<PlanIndex.NamedCoil>> coils() {
    checkPlaces();
    checkCrossovers();
    List<List<PlanIndex.NamedCoil>> all = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      PlannedChannel channel = plan.channels().get(c);
      String at = "/channels/" + c;
      Filter.require(channel.highPass(), at + "/high_pass", run);
      Filter.require(channel.lowPass(), at + "/low_pass", run);
      checkOutputs(channel, at);
      List<PlanIndex.NamedCoil> coils = new ArrayList<>();
      if (channel.network() != null) {
        read(channel.network(), at + "/network", -1, coils);
      }
      // With both a network and branches only the first is looked at: that both are there is told.
      for (int b = 0; channel.network() == null && b < channel.branchList().size(); b++) {
        Branch branch = channel.branches().get(b);
        String there = at + "/branches/" + b;
        Filter.require(branch.highPass(), there + "/high_pass", run);
        Filter.require(branch.lowPass(), there + "/low_pass", run);
        read(branch.network(), there + "/network", b, coils);
      }
      requireDriver(channel, at);
      all.add(coils);
    }
    return all;
  }

  /** Of numbers alone a channel would be a resistor. */
  private void requireDriver(PlannedChannel channel, String at) {
    List<String> networks =
        channel.network() == null
            ? channel.branchList().stream().map(Branch::network).toList()
            : List.of(channel.network());
    boolean numbersOnly =
        networks.stream()
            .allMatch(one -> WRITTEN.matcher(one).matches() && !WORD.matcher(one).find());
    if (numbersOnly && !networks.isEmpty()) {
      run.refuse(PlanFault.CHANNEL_WITHOUT_DRIVER)
          .at(at + (channel.network() == null ? "/branches" : "/network"))
          .given(String.join("; ", networks));
    }
  }

  private void checkOutputs(PlannedChannel channel, String at) {
    PlannedAmplifier amplifier =
        plan.amplifiers().stream()
            .filter(one -> one.id().equals(channel.amplifier()))
            .findFirst()
            .orElse(null);
    if (amplifier == null) {
      return; // told by the rule already
    }
    List<String> known = amplifier.outputs().stream().flatMap(o -> o.ids().stream()).toList();
    for (int o = 0; o < channel.outputs().size(); o++) {
      String output = channel.outputs().get(o);
      String pointer = at + "/outputs/" + o;
      if (!known.contains(output)) {
        dangling(
            pointer,
            output,
            Phrase.of(OutputsOf.OF_AMPLIFIER).own("amplifier", channel.amplifier()),
            known);
      } else if (o == 1 && output.equals(channel.outputs().get(0))) {
        run.refuse(PlanFault.BRIDGE_OF_ONE).at(pointer).given(output);
      } else if (o == 1 && !alike(amplifier, channel.outputs())) {
        run.refuse(PlanFault.BRIDGE_OF_UNLIKE).at(pointer).given(output);
      } else if (!outputsUsed.add(channel.amplifier() + "/" + output)) {
        run.refuse(PlanFault.OUTPUT_USED_TWICE)
            .at(pointer)
            .given(channel.amplifier() + "/" + output);
      }
    }
  }

  private static boolean alike(PlannedAmplifier amplifier, List<String> pair) {
    return amplifier.outputs().stream().anyMatch(group -> group.ids().containsAll(pair));
  }

  /** The coils a network names; its form is for who works it out, foreign signs in it too. */
  private void read(String network, String at, int branch, List<PlanIndex.NamedCoil> into) {
    if (!WRITTEN.matcher(network).matches()) {
      return;
    }
    Matcher words = WORD.matcher(network);
    while (words.find()) {
      String word = words.group();
      Integer driver = drivers.get(words.group(1));
      if (driver == null) {
        dangling(at, words.group(1), Allowed.fields(List.of("drivers")), drivers.keySet());
        continue;
      }
      OptionalInt count = coilCount(driver);
      int number = words.group(2) == null ? 1 : number(words.group(2));
      boolean numbered = words.group(2) != null;
      if (count.isPresent()
          && (number < 1 || number > count.getAsInt() || numbered != count.getAsInt() > 1)) {
        run.refuse(PlanFault.COIL_NOT_THERE)
            .at(at)
            .given(word)
            .own("driver", words.group(1))
            .with("count", count.getAsInt());
      } else if (!coilsUsed.add(word) || !networkOf.computeIfAbsent(driver, d -> at).equals(at)) {
        // A driver moves by all its coils together: they belong into one network.
        run.refuse(PlanFault.DRIVER_USED_TWICE).at(at).given(word);
      } else {
        into.add(new PlanIndex.NamedCoil(word, driver, number, branch));
      }
    }
  }

  private static int number(String digits) {
    return digits.length() > 3 ? Integer.MAX_VALUE : Integer.parseInt(digits);
  }

  /** None where the part is not there, which is told by a rule. */
  private OptionalInt coilCount(int driver) {
    String id = plan.drivers().get(driver).part();
    return plan.newParts().stream()
        .filter(part -> part.id().equals(id))
        .mapToInt(PlannedPart::coilCount)
        .findFirst();
  }

  /** Seats and loudspeakers lie within one vehicle: no farther apart than it is long, and then some. */
  private void checkPlaces() {
    double most = 2 * plan.vehicle().cabin().lengthM();
    for (int s = 0; s < plan.seats().size(); s++) {
      Seat seat = plan.seats().get(s);
      Position head = seat.head();
      if (head == null) {
        // Of one ear alone it is told that the other is needed.
        if (seat.leftEar() == null && seat.rightEar() == null) {
          run.refuse(CoreFault.REQUIRED).at("/seats/" + s + "/position");
        }
        continue;
      }
      double farthest =
          plan.drivers().stream()
              .mapToDouble(driver -> driver.position().distanceTo(head))
              .max()
              .orElse(0);
      if (farthest > most) {
        run.refuse(PlanFault.SEAT_OUTSIDE_VEHICLE)
            .at("/seats/" + s)
            .value(farthest)
            .limit(most)
            .own("name", seat.name());
      }
    }
  }

  /** From a channel to those above it: who comes back to itself would be below and above at once. */
  private void checkCrossovers() {
    List<Crossover> all = plan.crossovers();
    for (int i = 0; i < all.size(); i++) {
      Set<String> above = new HashSet<>(List.of(all.get(i).upper()));
      int before;
      do {
        before = above.size();
        all.stream()
            .filter(crossover -> above.contains(crossover.lower()))
            .map(Crossover::upper)
            .toList()
            .forEach(above::add);
      } while (above.size() > before);
      if (above.contains(all.get(i).lower())) {
        run.refuse(PlanFault.CROSSOVERS_IN_A_CIRCLE)
            .at("/crossovers/" + i)
            .given(Given.both(all.get(i).lower(), all.get(i).upper()));
      }
    }
  }

  private void dangling(String pointer, String given, Phrase among, Iterable<String> known) {
    List<String> names = new ArrayList<>();
    known.forEach(names::add);
    run.refuse(CoreFault.DANGLING_REFERENCE)
        .at(pointer)
        .given(given)
        .with("nearest", Names.didYouMean(given, names))
        .allowed(among);
  }
}
