package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The same loudspeaker at the same voltages is as loud behind a passive crossover as with two amplifiers. */
class ActivePassiveProperties {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final double SAME_DB = 1e-6;

  /** Stated filters say what voltage a driver gets, whatever its impedance does. */
  @Property(tries = 60)
  void withTheFiltersThatItsMakerStates(@ForAll long seed) {
    agree(new TwoWay(seed, true), false);
  }

  /** Drivers that are resistors, and the parts of a Butterworth filter into them. */
  @Property(tries = 60)
  void withThePartsOfTheSameFilters(@ForAll long seed) {
    agree(new TwoWay(seed, false), true);
  }

  private static void agree(TwoWay drawn, boolean parts) {
    PlanReviewResult passive = PlanLaws.review(drawn.passive(parts)).result();
    PlanReviewResult active = PlanLaws.review(drawn.active()).result();
    assertEquals(active.levelDbSpl(), passive.levelDbSpl(), SAME_DB);
    assertEquals(active.levelDba(), passive.levelDba(), SAME_DB);
    for (int d = 0; d < active.drivers().size(); d++) {
      double held = active.drivers().get(d).meanPowerW();
      assertEquals(held, passive.drivers().get(d).meanPowerW(), 1e-9 * held);
      double moved = active.drivers().get(d).displacementMm();
      assertEquals(moved, passive.drivers().get(d).displacementMm(), 1e-9 * moved);
    }
  }

  /** A woofer and a tweeter on ideal amplifiers. */
  private static final class TwoWay {

    private final Random random;
    private final boolean circuits;
    private final double hz;
    private final double gainV;
    private final ObjectNode common = JSON.createObjectNode();

    TwoWay(long seed, boolean circuits) {
      random = new Random(seed);
      this.circuits = circuits;
      hz = between(150, 4000);
      gainV = between(0.5, 4);
      ObjectNode vehicle = common.putObject("vehicle").put("name", "Vehicle");
      vehicle.putObject("cabin").put("length_m", between(1.8, 5));
      at(common.putArray("seats").addObject().put("name", "driver"), 0);
      ArrayNode drivers = common.putArray("drivers");
      for (String way : new String[] {"woofer", "tweeter"}) {
        part(way);
        at(drivers.addObject().put("id", way).put("part", way), 0.8);
      }
      ObjectNode amplifier = common.putArray("amplifiers").addObject().put("id", "amplifier");
      ObjectNode output = amplifier.putArray("outputs").addObject().put("id", "out");
      output.put("output_count", 2).putObject("sensitivity").put("min_v", 0.2).put("max_v", 4);
      output.putObject("rails").put("rail_v", 40).put("supply_v", 14.4).put("drop_v", 2);
      ObjectNode signal = common.putObject("signal").put("test_tone_dbfs", -6);
      signal.put("terminals", "open").putObject("head_unit").put("clean_output_v", 2);
    }

    private void part(String way) {
      boolean high = way.equals("tweeter");
      ObjectNode part = common.withArray("new_parts").addObject().put("id", way).put("role", way);
      ObjectNode driver =
          part.putObject("driver").put("rated_ohm", 4).put("sd_cm2", high ? 7 : 130);
      driver.put("xmax_mm", 8).put("continuous_power_w", 200);
      driver
          .putObject("sensitivity")
          .put("level_db_spl", between(84, 93))
          .put("basis", "two_point_eight_three_volt");
      if (circuits) {
        driver.put("re_ohm", 3.3).put("le_mh", between(0.02, 0.6));
        driver.put("fs_hz", high ? 1000 : 60).put("qms", 4).put("qes", between(0.4, 1));
      } else {
        driver.put("lower_limit_hz", high ? 1000 : 60);
      }
    }

    ObjectNode passive(boolean parts) {
      ObjectNode plan = common.deepCopy();
      ObjectNode channel = channel(plan, "both", 1);
      for (String way : new String[] {"woofer", "tweeter"}) {
        boolean high = way.equals("tweeter");
        ObjectNode branch = channel.withArray("branches").addObject();
        branch.put("band", high ? "high" : "low").put("network", way);
        if (parts) {
          double uf = 1e6 / (Math.sqrt(2) * 4 * 2 * Math.PI * hz);
          double mh = 1000 * Math.sqrt(2) * 4 / (2 * Math.PI * hz);
          ArrayNode elements = branch.putArray("elements");
          String coil = high ? "shunt" : "series";
          String capacitor = high ? "series" : "shunt";
          ObjectNode first = elements.addObject();
          ObjectNode second = elements.addObject();
          (high ? second : first).put("place", coil).put("inductance_mh", mh);
          (high ? first : second).put("place", capacitor).put("capacitance_uf", uf);
        } else {
          filter(branch, high);
        }
      }
      return plan;
    }

    ObjectNode active() {
      ObjectNode plan = common.deepCopy();
      filter(channel(plan, "woofer", 1).put("network", "woofer"), false);
      filter(channel(plan, "tweeter", 2).put("network", "tweeter"), true);
      return plan;
    }

    private ObjectNode channel(ObjectNode plan, String id, int output) {
      plan.withArray("settings")
          .addObject()
          .put("channel", id)
          .put("gain_v", gainV)
          .put("trim_db", 0)
          .put("delay_ms", 0)
          .put("polarity", 1);
      ObjectNode channel =
          plan.withArray("channels").addObject().put("id", id).put("role", "front");
      channel.put("amplifier", "amplifier").putArray("outputs").add("out_" + output);
      return channel;
    }

    private void filter(ObjectNode of, boolean high) {
      of.putObject(high ? "high_pass" : "low_pass")
          .put("kind", "butterworth")
          .put("order", 2)
          .put("frequency_hz", hz);
    }

    private void at(ObjectNode of, double x) {
      double y = between(-0.7, 0.7);
      of.putObject("position").put("x_m", x).put("y_m", y).put("z_m", between(0.4, 1));
    }

    private double between(double from, double to) {
      return from + (to - from) * random.nextDouble();
    }
  }
}
