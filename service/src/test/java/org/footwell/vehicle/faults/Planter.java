package org.footwell.vehicle.faults;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.footwell.vehicle.faults.PlantedFault.Dead;

/** Plants faults into the JSON of a plan. */
final class Planter {

  private static final String OPEN_OHM = "1000000";

  private final ObjectNode plan;
  private final Random random;

  Planter(ObjectNode plan, Random random) {
    this.plan = plan;
    this.random = random;
  }

  private static ObjectNode channel(ObjectNode of, int c) {
    return (ObjectNode) of.get("channels").get(c);
  }

  private String id(int c) {
    return channel(plan, c).get("id").asText();
  }

  private double between(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  private PlantedFault of(FaultKind kind, int c, String part, ObjectNode vehicle) {
    return new PlantedFault(Set.of(kind), List.of(id(c)), part, vehicle, 0, 0, null);
  }

  void addOf(int c, List<PlantedFault> all) {
    ObjectNode inverted = plan.deepCopy();
    int polarity = channel(plan, c).path("polarity").asInt(1);
    channel(inverted, c).put("polarity", -polarity);
    all.add(of(FaultKind.POLARITY_INVERTED, c, null, inverted));
    filter(
        c,
        "high_pass",
        all,
        FaultKind.HIGH_PASS_MISSING,
        FaultKind.HIGH_PASS_OFF,
        FaultKind.HIGH_PASS_ORDER);
    filter(
        c,
        "low_pass",
        all,
        FaultKind.LOW_PASS_MISSING,
        FaultKind.LOW_PASS_OFF,
        FaultKind.LOW_PASS_ORDER);
    double louder = between(3.5, 12) * (random.nextBoolean() ? 1 : -1);
    all.add(
        new PlantedFault(
            Set.of(FaultKind.GAIN_OFF), List.of(id(c)), null, plan.deepCopy(), louder, 0, null));
    if (c + 1 < plan.get("channels").size() && amplifier(c).equals(amplifier(c + 1))) {
      swapped(c, c + 1, all);
    }
    JsonNode network = channel(plan, c).get("network");
    if (network != null) {
      network(c, network.asText(), all);
    } else {
      branches(c, all);
    }
    boxes(c, all);
  }

  private String amplifier(int c) {
    return channel(plan, c).get("amplifier").asText();
  }

  private void filter(
      int c,
      String side,
      List<PlantedFault> all,
      FaultKind missing,
      FaultKind off,
      FaultKind order) {
    JsonNode filter = channel(plan, c).get(side);
    if (filter == null) {
      return;
    }
    ObjectNode without = plan.deepCopy();
    channel(without, c).remove(side);
    all.add(of(missing, c, null, without));
    ObjectNode moved = plan.deepCopy();
    double factor = random.nextBoolean() ? between(0.35, 0.65) : between(1.6, 3);
    ((ObjectNode) channel(moved, c).get(side))
        .put("frequency_hz", filter.get("frequency_hz").asDouble() * factor);
    all.add(of(off, c, null, moved));
    int was = filter.get("order").asInt();
    ObjectNode other = plan.deepCopy();
    ((ObjectNode) channel(other, c).get(side)).put("order", was == 2 ? 4 : was == 8 ? 4 : 2);
    all.add(of(order, c, null, other));
  }

  private void swapped(int one, int two, List<PlantedFault> all) {
    ObjectNode vehicle = plan.deepCopy();
    for (String field : List.of("network", "branches", "cable", "polarity")) {
      JsonNode first = channel(plan, one).get(field);
      JsonNode second = channel(plan, two).get(field);
      put(channel(vehicle, one), field, second);
      put(channel(vehicle, two), field, first);
    }
    all.add(
        new PlantedFault(
            Set.of(FaultKind.WIRES_SWAPPED), List.of(id(one), id(two)), null, vehicle, 0, 0, null));
  }

  private static void put(ObjectNode into, String field, JsonNode value) {
    if (value == null) {
      into.remove(field);
    } else {
      into.set(field, value.deepCopy());
    }
  }

  private PlantedFault dead(FaultKind kind, int c, String coil, Dead how) {
    return new PlantedFault(Set.of(kind), List.of(id(c)), coil, plan.deepCopy(), 0, 0, how);
  }

  private PlantedFault rewired(FaultKind kind, int c, String coil, String network) {
    ObjectNode vehicle = plan.deepCopy();
    channel(vehicle, c).put("network", network);
    return of(kind, c, coil, vehicle);
  }

  /** Networks of one or two coils, or of two groups of two. */
  private void network(int c, String network, List<PlantedFault> all) {
    String[] coils = network.replaceAll("[()]", "").split(" *(\\|\\||\\+) *", -1);
    if (coils.length == 1) {
      all.add(dead(FaultKind.COIL_OPEN, c, coils[0], Dead.OPEN));
      all.add(dead(FaultKind.COIL_SHORTED, c, coils[0], Dead.SHORTED));
    } else if (coils.length == 2) {
      String coil = coils[random.nextInt(2)];
      String other = coil.equals(coils[0]) ? coils[1] : coils[0];
      boolean series = network.contains("+");
      all.add(
          series
              ? dead(FaultKind.COIL_OPEN, c, coil, Dead.OPEN)
              : rewired(FaultKind.COIL_OPEN, c, coil, other));
      all.add(
          series
              ? rewired(FaultKind.COIL_SHORTED, c, coil, other)
              : dead(FaultKind.COIL_SHORTED, c, coil, Dead.SHORTED));
      all.add(
          rewired(
              FaultKind.WIRED_OTHERWISE,
              c,
              null,
              series ? network.replace("+", "||") : network.replace("||", "+")));
    } else {
      String inner = network.replace("||", "&").replace("+", "||").replace("&", "+");
      all.add(rewired(FaultKind.WIRED_OTHERWISE, c, null, turned(network, inner)));
    }
  }

  /** Two groups of two in parentheses turned over need parentheses where the series is. */
  private static String turned(String network, String inner) {
    return network.startsWith("(") ? inner : "(" + inner.replace(" || ", ") || (") + ")";
  }

  private void branches(int c, List<PlantedFault> all) {
    ArrayNode branches = (ArrayNode) channel(plan, c).get("branches");
    for (int b = 0; b < branches.size(); b++) {
      JsonNode branch = branches.get(b);
      String coil = branch.get("network").asText();
      ObjectNode open = plan.deepCopy();
      ObjectNode cut = (ObjectNode) channel(open, c).get("branches").get(b);
      cut.put("network", OPEN_OHM + " + " + coil);
      if (coil.matches("[A-Za-z0-9_]+")) {
        all.add(of(FaultKind.COIL_OPEN, c, coil, open));
      }
      boolean filtered =
          branch.has("elements") || branch.has("high_pass") || branch.has("low_pass");
      if (filtered) {
        ObjectNode bare = plan.deepCopy();
        ObjectNode plain = (ObjectNode) channel(bare, c).get("branches").get(b);
        plain.remove(List.of("elements", "high_pass", "low_pass", "pad_db"));
        all.add(of(FaultKind.CROSSOVER_BRIDGED, c, branch.get("band").asText(), bare));
      }
    }
  }

  private void boxes(int c, List<PlantedFault> all) {
    String text = channel(plan, c).toString();
    for (int d = 0; d < plan.get("drivers").size(); d++) {
      JsonNode driver = plan.get("drivers").get(d);
      String id = driver.get("id").asText();
      if (text.matches(".*\\b" + id + "\\b.*") && driver.at("/enclosure/closed").isObject()) {
        ObjectNode vehicle = plan.deepCopy();
        ((ObjectNode) vehicle.get("drivers").get(d).at("/enclosure/closed"))
            .put("ql", between(1, 3));
        all.add(of(FaultKind.BOX_LEAKS, c, id, vehicle));
      }
    }
  }

  void addJoints(List<PlantedFault> all) {
    for (JsonNode amplifier : plan.get("amplifiers")) {
      if (amplifier.has("draw") && plan.has("supply")) {
        all.add(
            new PlantedFault(
                Set.of(FaultKind.GROUND_RESISTANCE),
                List.of(amplifier.get("id").asText()),
                null,
                plan.deepCopy(),
                0,
                Math.pow(10, between(-1.3, -0.3)),
                null));
      }
    }
  }
}
