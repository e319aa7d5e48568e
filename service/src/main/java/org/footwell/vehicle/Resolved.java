package org.footwell.vehicle;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.footwell.calculation.Allowed;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Names;
import org.footwell.calculation.Phrase;
import org.footwell.calculation.Remark;
import org.footwell.calculation.Run;
import org.footwell.parts.Crossover;
import org.footwell.parts.Filter;

/** A plan whose references are followed: every id is unique and leads somewhere. */
final class Resolved {

  /** A word of a network: the id of a driver, with the number of a coil where it has several. */
  private static final Pattern WORD = Pattern.compile("([A-Za-z][A-Za-z0-9_-]*)(\\.[0-9]+)?");

  private final VehiclePlan plan;
  private final Run run;
  private final Map<String, Integer> factoryParts;
  private final Map<String, Integer> newParts;
  private final Map<String, Integer> drivers;
  private final Map<String, Integer> amplifiers;
  private final Map<Integer, Set<Integer>> driversOfChannel = new LinkedHashMap<>();

  /**
   * Follows every reference.
   *
   * @throws org.footwell.calculation.Refused with every duplicate and dangling id
   */
  Resolved(VehiclePlan plan, Run run) {
    this.plan = plan;
    this.run = run;
    factoryParts = index("/factory_parts", plan.factoryParts(), VehiclePlan.Part::id);
    newParts = index("/new_parts", plan.newParts(), VehiclePlan.Part::id);
    drivers = index("/drivers", plan.drivers(), VehiclePlan.Driver::id);
    amplifiers = index("/amplifiers", plan.amplifiers(), VehiclePlan.Amplifier::id);
    Map<String, Integer> channels = index("/channels", plan.channels(), VehiclePlan.Channel::id);
    checkDrivers();
    checkOutputs();
    checkNetworks();
    checkCrossovers(channels);
    run.requireNoFaults();
  }

  private <T> Map<String, Integer> index(String list, List<T> entries, Function<T, String> id) {
    Map<String, Integer> byId = new HashMap<>();
    for (int i = 0; i < entries.size(); i++) {
      String key = id.apply(entries.get(i));
      if (byId.putIfAbsent(key, i) != null) {
        run.refuse(CoreFault.DUPLICATE).at(list + "/" + i + "/id").given(key);
      }
    }
    return byId;
  }

  private void checkDrivers() {
    for (int i = 0; i < plan.drivers().size(); i++) {
      VehiclePlan.Driver driver = plan.drivers().get(i);
      Filter.require(driver.highPass(), "/drivers/" + i + "/high_pass", run);
      if (!newParts.containsKey(driver.part())) {
        dangling(
            "/drivers/" + i + "/part", driver.part(), Phrase.of(PlanWords.NEW_PARTS), newParts);
      }
      if (driver.replaces() != null && !factoryParts.containsKey(driver.replaces())) {
        dangling(
            "/drivers/" + i + "/replaces",
            driver.replaces(),
            Phrase.of(PlanWords.FACTORY_PARTS),
            factoryParts);
      }
    }
  }

  private void checkOutputs() {
    Set<String> used = new HashSet<>();
    for (int i = 0; i < plan.amplifiers().size(); i++) {
      index("/amplifiers/" + i + "/outputs", plan.amplifiers().get(i).outputs(), o -> o.id());
    }
    for (int i = 0; i < plan.channels().size(); i++) {
      VehiclePlan.Channel channel = plan.channels().get(i);
      Integer amplifier = amplifiers.get(channel.amplifier());
      if (amplifier == null) {
        dangling(
            "/channels/" + i + "/amplifier", channel.amplifier(), list("amplifiers"), amplifiers);
        continue;
      }
      Map<String, Integer> outputs = outputs(amplifier);
      for (int o = 0; o < channel.outputs().size(); o++) {
        String output = channel.outputs().get(o);
        String pointer = "/channels/" + i + "/outputs/" + o;
        if (!outputs.containsKey(output)) {
          dangling(
              pointer,
              output,
              Phrase.of(PlanWords.OUTPUTS_OF).own("amplifier", channel.amplifier()),
              outputs);
        } else if (o == 1 && output.equals(channel.outputs().get(0))) {
          run.refuse(PlanFault.BRIDGE_OF_ONE).at(pointer).given(output);
        } else if (o == 1 && unlike(amplifier, outputs, channel.outputs())) {
          run.refuse(PlanFault.BRIDGE_OF_UNLIKE).at(pointer).given(output);
        } else if (!used.add(channel.amplifier() + " " + output)) {
          run.refuse(PlanFault.OUTPUT_USED_TWICE)
              .at(pointer)
              .given(channel.amplifier() + "/" + output);
        }
      }
    }
  }

  /** Whether two outputs of a bridge differ in anything but their id. */
  private boolean unlike(int amplifier, Map<String, Integer> byId, List<String> pair) {
    List<VehiclePlan.Output> outputs = plan.amplifiers().get(amplifier).outputs();
    Integer first = byId.get(pair.get(0));
    return first != null && !outputs.get(first).isLike(outputs.get(byId.get(pair.get(1))));
  }

  private Map<String, Integer> outputs(int amplifier) {
    Map<String, Integer> byId = new HashMap<>();
    List<VehiclePlan.Output> outputs = plan.amplifiers().get(amplifier).outputs();
    for (int i = 0; i < outputs.size(); i++) {
      byId.putIfAbsent(outputs.get(i).id(), i);
    }
    return byId;
  }

  /** Which drivers each network names; the form of the network is wiring-load's to judge. */
  private void checkNetworks() {
    Map<Integer, Integer> channelOf = new HashMap<>();
    for (int i = 0; i < plan.channels().size(); i++) {
      Set<Integer> named = new TreeSet<>();
      Matcher words = WORD.matcher(plan.channels().get(i).network());
      while (words.find()) {
        Integer driver = drivers.get(words.group(1));
        if (driver == null) {
          dangling("/channels/" + i + "/network", words.group(1), list("drivers"), drivers);
          continue;
        }
        named.add(driver);
        Integer other = channelOf.putIfAbsent(driver, i);
        if (other != null && other != i) {
          run.refuse(PlanFault.DRIVER_USED_TWICE)
              .at("/channels/" + i + "/network")
              .given(words.group(1));
        }
      }
      driversOfChannel.put(i, named);
    }
  }

  private void checkCrossovers(Map<String, Integer> channels) {
    for (int i = 0; i < plan.crossovers().size(); i++) {
      Crossover crossover = plan.crossovers().get(i);
      if (!channels.containsKey(crossover.lower())) {
        dangling("/crossovers/" + i + "/lower", crossover.lower(), list("channels"), channels);
      }
      if (!channels.containsKey(crossover.upper())) {
        dangling("/crossovers/" + i + "/upper", crossover.upper(), list("channels"), channels);
      }
    }
  }

  private static Phrase list(String name) {
    return Allowed.fields(List.of(name));
  }

  private void dangling(String pointer, String given, Phrase among, Map<String, Integer> known) {
    Remark remark =
        run.refuse(CoreFault.DANGLING_REFERENCE)
            .at(pointer)
            .given(given)
            .with("nearest", Names.didYouMean(given, known.keySet()));
    remark.allowed(among);
  }

  /** Indexes of the drivers on a channel, in order of the plan. */
  Set<Integer> driversOf(int channel) {
    return driversOfChannel.get(channel);
  }

  int partOf(int driver) {
    return newParts.get(plan.drivers().get(driver).part());
  }

  VehiclePlan.Part part(int driver) {
    return plan.newParts().get(partOf(driver));
  }

  /** The factory part a driver replaces, or null. */
  VehiclePlan.Part replaced(int driver) {
    String id = plan.drivers().get(driver).replaces();
    return id == null ? null : plan.factoryParts().get(factoryParts.get(id));
  }

  int amplifierOf(int channel) {
    return amplifiers.get(plan.channels().get(channel).amplifier());
  }

  /** Index of the first output a channel uses. */
  int outputOf(int channel) {
    return outputs(amplifierOf(channel)).get(plan.channels().get(channel).outputs().get(0));
  }

  VehiclePlan.Output output(int channel) {
    return plan.amplifiers().get(amplifierOf(channel)).outputs().get(outputOf(channel));
  }
}
