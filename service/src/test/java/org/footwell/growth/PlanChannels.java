package org.footwell.growth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** More channels for a plan: copies of the one with the most drivers, each with its own and its own output. */
final class PlanChannels {

  private static final String ID = "id";
  private static final String NETWORK = "network";
  private static final String OUTPUTS = "outputs";
  private static final String COUNT = "output_count";

  private final JsonNode plan;

  private PlanChannels(JsonNode plan) {
    this.plan = plan;
  }

  /** Whether a schema is that of a plan. */
  static boolean isPlan(JsonNode schema) {
    return schema.path("properties").has("factory_parts");
  }

  /** Changes a plan to have so many. */
  static void grow(JsonNode plan, int count) {
    new PlanChannels(plan).grow(count);
  }

  private void grow(int count) {
    ArrayNode channels = (ArrayNode) plan.get("channels");
    List<JsonNode> own = new ArrayList<>();
    channels.forEach(own::add);
    JsonNode widest = own.stream().max(Comparator.comparing(this::drivers)).orElseThrow();
    for (int c = own.size(); c < count; c++) {
      ObjectNode channel = widest.deepCopy();
      String ending = "_" + c;
      channel.put(ID, "channel" + ending);
      networks(channel).forEach(spot -> spot.set(named(spot.get().asText(), ending)));
      channel.putArray(OUTPUTS).add(freshOutput(channel.path("amplifier").asText(), widest));
      channels.add(channel);
    }
  }

  private static List<Spot> networks(JsonNode channel) {
    List<Spot> all = new ArrayList<>(Spot.given(channel, NETWORK));
    all.addAll(Spot.given(channel, "branches.*." + NETWORK));
    return all;
  }

  private int drivers(JsonNode channel) {
    return (int)
        Spot.given(plan, "drivers.*.id").stream()
            .map(spot -> spot.get().asText())
            .filter(id -> networks(channel).stream().anyMatch(n -> n.get().asText().contains(id)))
            .count();
  }

  /** A network of copies of its drivers, which are put into the plan. */
  private JsonNode named(String network, String ending) {
    ArrayNode drivers = (ArrayNode) plan.get("drivers");
    String renamed = network;
    for (int i = drivers.size() - 1; i >= 0; i--) {
      String id = drivers.get(i).path(ID).asText();
      String changed = renamed.replaceAll("\\b" + id + "\\b", id + ending);
      if (!changed.equals(renamed)) {
        ObjectNode driver = drivers.get(i).deepCopy();
        drivers.add(driver.put(ID, id + ending));
      }
      renamed = changed;
    }
    return drivers.textNode(renamed);
  }

  /** The next output of the group in which the first output of a channel is. */
  @SuppressWarnings("ReferenceEquality") // of these very outputs, not of some that look like them
  private String freshOutput(String amplifier, JsonNode channel) {
    String used = channel.at("/" + OUTPUTS + "/0").asText();
    for (Spot group : Spot.given(plan, "amplifiers.*.outputs.*")) {
      String id = group.get().path(ID).asText();
      boolean ofAmplifier =
          Spot.given(plan, "amplifiers.*").stream()
              .map(Spot::get)
              .anyMatch(
                  one ->
                      one.path(ID).asText().equals(amplifier)
                          && one.path(OUTPUTS) == group.holder());
      if (ofAmplifier && used.startsWith(id + "_")) {
        int count = group.get().path(COUNT).asInt(1) + 1;
        ((ObjectNode) group.get()).set(COUNT, IntNode.valueOf(count));
        return id + "_" + count;
      }
    }
    return used;
  }
}
