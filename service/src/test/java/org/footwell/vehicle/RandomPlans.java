package org.footwell.vehicle;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Random;

/**
 * Plans drawn from a seed, none of them silly: front channels, passive or active, perhaps a subwoofer;
 * one to three seats; amplifiers by rails or ratings, with or without a supply.
 */
public final class RandomPlans {

  private static final ObjectMapper JSON = new ObjectMapper();

  private final Random random;
  private final ObjectNode plan = JSON.createObjectNode();
  private final ArrayNode parts = plan.putArray("new_parts");
  private final ArrayNode drivers = plan.putArray("drivers");
  private final ArrayNode amplifiers = plan.putArray("amplifiers");
  private final ArrayNode channels = plan.putArray("channels");

  private RandomPlans(long seed) {
    random = new Random(seed);
  }

  public static ObjectNode of(long seed) {
    return new RandomPlans(seed).draw();
  }

  private ObjectNode draw() {
    ObjectNode vehicle = plan.putObject("vehicle").put("name", "Vehicle");
    vehicle.putObject("cabin").put("length_m", between(1.8, 5));
    vehicle.put("temperature_c", between(-5, 35));
    ArrayNode seats = plan.putArray("seats");
    for (int s = 0; s <= random.nextInt(3); s++) {
      ObjectNode seat = seats.addObject().put("name", "seat " + s).put("weight", 3 - s);
      position(seat, s > 1 ? -0.9 : 0, s == 1 ? -0.4 : 0.4, 1);
    }
    fronts();
    if (random.nextBoolean()) {
      subwoofer();
    }
    if (random.nextBoolean()) {
      plan.putObject("processor").put("rate_hz", 48_000);
    }
    if (random.nextInt(4) > 0) {
      signal();
    }
    if (random.nextBoolean()) {
      plan.putObject("programme").put("crest_factor_db", between(6, 18));
    }
    if (random.nextInt(3) > 0) {
      supply();
    }
    wishes();
    return plan;
  }

  private void wishes() {
    if (random.nextInt(3) == 0) {
      ObjectNode target = plan.putObject("target");
      target.putObject("curve").putObject("tilt").put("slope_db_per_octave", between(-1, 0));
      ArrayNode roles = target.putArray("roles");
      roles.addObject().put("role", "subwoofer").put("level_db", between(-3, 9));
      roles.addObject().put("role", "rear").put("level_db", between(-9, 0)).put("delay_ms", 5);
    }
    if (random.nextInt(4) == 0) {
      ArrayNode loss = plan.putObject("factory_signal").putArray("bass_loss");
      loss.addObject().put("frequency_hz", 40).put("level_db", between(-9, 0));
      loss.addObject().put("frequency_hz", 160).put("level_db", 0);
    }
  }

  private void fronts() {
    amplifier("main", 4, false);
    int count = 1 + random.nextInt(4);
    boolean ladder = random.nextBoolean();
    part("woofer", "woofer", 4, between(45, 90), 0);
    part("tweeter", "tweeter", 4, between(700, 1500), 0);
    boolean passive = random.nextBoolean();
    boolean highPass = random.nextBoolean();
    for (int c = 0; c < count; c++) {
      String side = c % 2 == 0 ? "left" : "right";
      String id = (c < 2 ? "front_" : "rear_") + side;
      double x = c < 2 ? 0.8 : -0.9;
      double y = c % 2 == 0 ? 0.7 : -0.7;
      ObjectNode channel = channels.addObject().put("id", id).put("role", c < 2 ? "front" : "rear");
      channel.put("amplifier", "main").putArray("outputs").add("out_" + (c + 1));
      driver(id + "_low", "woofer", x, y, 0.5, between(6, 25));
      if (passive) {
        driver(id + "_high", "tweeter", x + 0.1, y * 0.9, 0.9, 0);
        ArrayNode branches = channel.putArray("branches");
        ObjectNode low = branches.addObject().put("band", "low").put("network", id + "_low");
        ObjectNode high = branches.addObject().put("band", "high").put("network", id + "_high");
        if (ladder) {
          low.putArray("elements")
              .addObject()
              .put("place", "series")
              .put("inductance_mh", between(0.1, 0.6));
          high.putArray("elements")
              .addObject()
              .put("place", "series")
              .put("capacitance_uf", between(4, 15));
        } else {
          filter(high, "high_pass", 2, between(2000, 5000));
        }
      } else {
        channel.put("network", id + "_low");
      }
      if (highPass) {
        filter(channel, "high_pass", 4, 80);
      }
      finish(channel);
    }
  }

  private void subwoofer() {
    boolean bridged = random.nextBoolean();
    amplifier("bass", 2, true);
    int coils = 1 + random.nextInt(2);
    part("sub", "subwoofer", coils == 1 ? 4 : 2, between(24, 40), coils);
    driver("sub", "sub", -1.2, between(-0.6, 0.6), 0.4, between(15, 60));
    ObjectNode channel = channels.addObject().put("id", "bass").put("role", "subwoofer");
    ArrayNode outputs = channel.put("amplifier", "bass").putArray("outputs").add("out_1");
    if (bridged) {
      outputs.add("out_2");
    }
    channel.put(
        "network", coils == 1 ? "sub" : random.nextBoolean() ? "sub.1 + sub.2" : "sub.1 || sub.2");
    if (random.nextBoolean()) {
      filter(channel, "high_pass", 2 + random.nextInt(3), between(18, 35));
    }
    filter(channel, "low_pass", 4, 80);
    finish(channel);
    ArrayNode crossovers = plan.putArray("crossovers");
    for (int c = 0; c < Math.min(2, channels.size() - 1); c++) {
      crossovers
          .addObject()
          .put("lower", "bass")
          .put("upper", channels.get(c).get("id").asText())
          .put("frequency_hz", 80);
    }
  }

  private void finish(ObjectNode channel) {
    channel.putObject("cable").put("one_way_m", between(1, 6)).put("area_mm2", 2.5);
    channel.put("rms_limiter", random.nextBoolean());
    if (random.nextInt(3) == 0) {
      channel
          .putArray("equaliser")
          .addObject()
          .put("kind", "peak")
          .put("frequency_hz", between(60, 8000))
          .put("q", between(0.7, 4))
          .put("gain_db", between(-6, 4));
    }
    if (random.nextInt(6) == 0) {
      channel.put("polarity", -1);
    }
    if (random.nextInt(6) == 0) {
      channel.put("chain_delay_ms", between(0, 3));
    }
  }

  private void part(String id, String role, double rated, double fs, int coils) {
    ObjectNode part = parts.addObject().put("id", id).put("role", role);
    if (coils > 0) {
      part.put("coil_count", coils);
    }
    ObjectNode driver = part.putObject("driver").put("rated_ohm", rated);
    driver.put("continuous_power_w", between(10, 300)).put("xmax_mm", between(0.5, 12));
    boolean big = coils > 0;
    driver.put("sd_cm2", role.equals("tweeter") ? 7 : big ? 330 : 130);
    driver
        .putObject("sensitivity")
        .put("level_db_spl", between(83, 93))
        .put("basis", random.nextBoolean() ? "one_watt" : "two_point_eight_three_volt");
    if (random.nextInt(4) == 0 && !big) {
      driver.put("lower_limit_hz", fs);
      return;
    }
    driver.put("re_ohm", rated * between(0.75, 0.9)).put("le_mh", between(0.02, 0.8));
    driver.put("le_exponent", between(0.6, 1)).put("fs_hz", fs);
    driver.put("qms", between(2, 7)).put("qes", between(0.4, 1.2)).put("vas_l", big ? 40 : 10);
  }

  private void driver(String id, String part, double x, double y, double z, double litre) {
    ObjectNode driver = drivers.addObject().put("id", id).put("part", part);
    position(driver, x + between(-0.1, 0.1), y, z);
    if (litre == 0) {
      return;
    }
    switch (random.nextInt(4)) {
      case 0 -> driver.putObject("enclosure").putObject("closed").put("volume_l", litre);
      case 1 -> {
        ObjectNode vented = driver.putObject("enclosure").putObject("vented");
        vented.putObject("box").put("volume_l", litre).put("fb_hz", between(25, 60));
        vented.putObject("port").put("diameter_mm", 70);
      }
      case 2 ->
          driver
              .putObject("enclosure")
              .putObject("baffle")
              .put("volume_l", 2 * litre)
              .put("ql", between(0.3, 5))
              .put("leak_heard", random.nextBoolean());
      default -> {} // free air
    }
  }

  private void amplifier(String id, int outputs, boolean strong) {
    ObjectNode amplifier = amplifiers.addObject().put("id", id);
    amplifier.put("supply_regulated", random.nextBoolean());
    ObjectNode output = amplifier.putArray("outputs").addObject().put("id", "out");
    output.put("output_count", outputs).put("output_ohm", between(0, 0.1));
    output.putObject("sensitivity").put("min_v", 0.2).put("max_v", 4);
    if (random.nextBoolean()) {
      output
          .putObject("rails")
          .put("rail_v", strong ? between(25, 40) : between(16, 28))
          .put("supply_v", 14.4)
          .put("drop_v", between(1, 3))
          .put("sag_ohm", between(0, 0.3));
    } else {
      double four = strong ? between(150, 300) : between(40, 120);
      ObjectNode ratings = output.putObject("ratings").put("supply_v", 14.4).put("basis", "clean");
      ArrayNode points = ratings.putArray("points");
      points.addObject().put("load_ohm", 4).put("power_w", four);
      points.addObject().put("load_ohm", 2).put("power_w", four * between(1.3, 1.8));
    }
    if (random.nextInt(4) > 0) {
      amplifier
          .putObject("draw")
          .put("idle_a", between(0.3, 1.5))
          .put("full_efficiency", between(0.6, 0.85))
          .put("average_efficiency", between(0.3, 0.7));
      ObjectNode feed = amplifier.putObject("feed").put("return_path", "cable");
      feed.put("permitted_drop_v", 0.5);
      ObjectNode cable = feed.putObject("cable").put("one_way_m", between(1, 8));
      cable
          .put("material", "copper")
          .put("insulation_temperature_c", 105)
          .put("engine_space", true);
      if (random.nextBoolean()) {
        cable.put("area_mm2", 16);
      }
    }
  }

  private void signal() {
    ObjectNode signal = plan.putObject("signal");
    signal.putObject("head_unit").put("clean_output_v", 2);
    signal.put("overlap_db", random.nextBoolean() ? 0 : 3).put("test_tone_dbfs", -6);
    signal.put("terminals", random.nextBoolean() ? "open" : "loaded");
  }

  private void supply() {
    ObjectNode supply = plan.putObject("supply");
    supply
        .putObject("battery")
        .put("capacity_ah", 70)
        .put("resting_v", 12.4)
        .put("internal_ohm", random.nextInt(8) == 0 ? between(0.1, 0.6) : between(0.004, 0.03));
    if (random.nextInt(3) == 0) {
      supply.put("battery_v", between(11.5, 14.4));
      return;
    }
    supply
        .putObject("alternator")
        .put("idle_a", between(40, 70))
        .put("cruise_a", between(80, 160))
        .put("voltage_v", between(13.5, 14.6));
    supply
        .putObject("consumers")
        .put("running_a", between(20, 50))
        .put("engine_off_a", 4)
        .put("standby_ma", 25);
  }

  private void filter(ObjectNode of, String side, int order, double hz) {
    boolean even = order % 2 == 0;
    of.putObject(side)
        .put("kind", even && random.nextBoolean() ? "linkwitz_riley" : "butterworth")
        .put("order", order)
        .put("frequency_hz", hz);
  }

  private static void position(ObjectNode of, double x, double y, double z) {
    of.putObject("position").put("x_m", x).put("y_m", y).put("z_m", z);
  }

  private double between(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }
}
