package org.footwell.vehicle.questions;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** The demo plan, one that knows more of the same vehicle, and one that knows little. */
public final class PlansUnderTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** By their names. */
  static final Map<String, JsonNode> NAMED = new LinkedHashMap<>();

  static {
    NAMED.put("demo", demo());
    NAMED.put("richer", richer());
    NAMED.put("poorer", poorer());
  }

  private PlansUnderTest() {}

  /** The demo plan, a copy of its own. */
  public static ObjectNode demo() {
    return object(DemoPlan.json());
  }

  private static ObjectNode object(String json) {
    try {
      return (ObjectNode) MAPPER.readTree(json);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Parts instead of stated filters, a vented box, a door, laid cables, settings, a spectrum. */
  private static ObjectNode richer() {
    ObjectNode plan = demo();
    ObjectNode high = (ObjectNode) plan.at("/channels/0/branches/1");
    high.remove("high_pass");
    ArrayNode elements = high.putArray("elements");
    elements.add(object("{\"place\": \"series\", \"capacitance_uf\": 8.2}"));
    elements.add(object("{\"place\": \"shunt\", \"inductance_mh\": 0.3}"));
    for (int part = 0; part < 4; part++) {
      ((ObjectNode) plan.at("/new_parts/" + part + "/driver")).put("vas_l", 12);
    }
    ((ObjectNode) plan.at("/drivers/0"))
        .set("enclosure", object("{\"baffle\": {\"volume_l\": 40, \"ql\": 2}}"));
    ((ObjectNode) plan.at("/drivers/2"))
        .set(
            "enclosure",
            object(
                "{\"vented\": {\"box\": {\"volume_l\": 15, \"fb_hz\": 60},"
                    + " \"port\": {\"diameter_mm\": 50}}}"));
    for (int amplifier = 0; amplifier < 2; amplifier++) {
      ((ObjectNode) plan.at("/amplifiers/" + amplifier + "/feed/cable")).put("area_mm2", 21.15);
      ((ObjectNode) plan.at("/amplifiers/" + amplifier)).put("fuse_a", 40).put("minimum_v", 10);
    }
    plan.putArray("settings")
        .add(object("{\"channel\": \"bass\", \"trim_db\": -3, \"delay_ms\": 2.5}"));
    plan.putArray("extras")
        .add(object("{\"name\": \"Ring\", \"extra_count\": 4, \"mass_g\": 90, \"price\": 7.5}"));
    ((ObjectNode) plan.at("/programme"))
        .putArray("spectrum")
        .add(object("{\"frequency_hz\": 63, \"level_db\": 0}"))
        .add(object("{\"frequency_hz\": 1000, \"level_db\": -6}"));
    return plan;
  }

  /** Hardly more than what a plan must have. */
  private static ObjectNode poorer() {
    ObjectNode plan = demo();
    for (String name : new String[] {"supply", "signal", "processor", "crossovers", "programme"}) {
      plan.remove(name);
    }
    for (JsonNode part : plan.get("new_parts")) {
      ObjectNode driver = (ObjectNode) part.get("driver");
      driver.retain("rated_ohm", "name");
      ((ObjectNode) part).remove("role");
    }
    for (JsonNode amplifier : plan.get("amplifiers")) {
      ((ObjectNode) amplifier).remove(java.util.List.of("draw", "feed"));
      for (JsonNode outputs : amplifier.get("outputs")) {
        ((ObjectNode) outputs).remove("sensitivity");
      }
    }
    return plan;
  }
}
