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
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Names;

/** The voice coils that the networks of a plan name. */
final class PlannedCoils {

  /** A word of a network: the id of a driver, with the number of a coil where it has several. */
  private static final Pattern WORD = Pattern.compile("([A-Za-z][A-Za-z0-9_-]*)(?:\\.([0-9]+))?");

  /** What a network can be written with. */
  private static final Pattern WRITTEN = Pattern.compile("[A-Za-z0-9_.+|()\\s-]*");

  private final VehiclePlan plan;
  private final Refusing to;
  private final Map<String, Integer> drivers;
  private final Set<String> coilsUsed = new HashSet<>();
  private final Map<Integer, String> networkOf = new HashMap<>();

  private PlannedCoils(VehiclePlan plan, Refusing to) {
    this.plan = plan;
    this.to = to;
    drivers = PlanIndex.byId(plan.drivers().stream().map(PlacedDriver::id).toList());
  }

  /** Those of each channel, in the order of its networks; refuses what is not there or used twice. */
  static List<List<PlanIndex.NamedCoil>> of(VehiclePlan plan, Refusing to) {
    PlannedCoils coils = new PlannedCoils(plan, to);
    List<List<PlanIndex.NamedCoil>> all = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      all.add(coils.channel(plan.channels().get(c), "/channels/" + c));
    }
    return all;
  }

  /** Whether a network can be written so and names nothing. */
  static boolean ofNumbersOnly(String network) {
    return WRITTEN.matcher(network).matches() && !WORD.matcher(network).find();
  }

  private List<PlanIndex.NamedCoil> channel(PlannedChannel channel, String at) {
    List<PlanIndex.NamedCoil> coils = new ArrayList<>();
    if (channel.network() != null) {
      read(channel.network(), at + "/network", -1, coils);
    }
    // With both a network and branches only the first is looked at: that both are there is told.
    for (int b = 0; channel.network() == null && b < channel.branchList().size(); b++) {
      read(channel.branchList().get(b).network(), at + "/branches/" + b + "/network", b, coils);
    }
    return coils;
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
        to.refuse(CoreFault.DANGLING_REFERENCE)
            .at(at)
            .given(words.group(1))
            .with("nearest", Names.didYouMean(words.group(1), drivers.keySet()))
            .allowed(Allowed.fields(List.of("drivers")));
        continue;
      }
      OptionalInt count = coilCount(driver);
      int number = words.group(2) == null ? 1 : number(words.group(2));
      boolean numbered = words.group(2) != null;
      if (count.isPresent()
          && (number < 1 || number > count.getAsInt() || numbered != count.getAsInt() > 1)) {
        to.refuse(PlanFault.COIL_NOT_THERE)
            .at(at)
            .given(word)
            .own("driver", words.group(1))
            .with("count", count.getAsInt());
      } else if (!coilsUsed.add(word) || !networkOf.computeIfAbsent(driver, d -> at).equals(at)) {
        // A driver moves by all its coils together: they belong into one network.
        to.refuse(PlanFault.DRIVER_USED_TWICE).at(at).given(word);
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
}
