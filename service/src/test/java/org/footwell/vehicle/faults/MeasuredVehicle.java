package org.footwell.vehicle.faults;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import org.footwell.vehicle.ModelledPlans;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.SoundField;
import org.footwell.vehicle.reading.Modelled;

/**
 * Measures a vehicle with a planted fault: it is read into the model from its own plan, with the
 * settings of the sound one. Errors are normal, with the deviations that the finder takes as usual.
 */
final class MeasuredVehicle {

  private static final double[] RESPONSE_HZ = {
    25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 630, 1000, 1600, 2500, 4000, 6300,
    10_000
  };
  private static final double[] IMPEDANCE_HZ = {20, 40, 80, 160, 400, 1000, 3000, 8000};

  private final ObjectNode plan;
  private final PlantedFault fault;
  private final RandomGenerator random;
  private final RandomGenerator errors;
  private final Kind kind;
  private final Modelled sound;
  private final Modelled real;

  /** How what is measured differs from what the plan says besides the fault. */
  enum Kind {
    /** Not at all. */
    EXACT,
    /** By errors of measuring, as large as the finder takes them to be. */
    MEASURED,
    /** By them and by parts that are not quite as their data sheets have them. */
    WITH_TOLERANCES
  }

  /**
   * A vehicle to be measured.
   *
   * @param seed draws what is measured and with which errors
   */
  MeasuredVehicle(ObjectNode plan, PlantedFault fault, long seed, Kind kind) {
    this.plan = plan;
    this.fault = fault;
    random = new SplittableRandom(seed);
    errors = new SplittableRandom(-seed);
    this.kind = kind;
    sound = ModelledPlans.modelled(plan);
    ObjectNode vehicle = fault.vehicle().deepCopy();
    if (kind == Kind.WITH_TOLERANCES) {
      vehicle.get("new_parts").forEach(part -> spread((ObjectNode) part.get("driver")));
    }
    real = ModelledPlans.modelled(vehicle);
  }

  /** Usual tolerances of data sheets as standard deviations; common practice, no source. */
  private void spread(ObjectNode driver) {
    Map<String, Double> usual =
        Map.of("fs_hz", 0.06, "qes", 0.08, "qms", 0.1, "re_ohm", 0.03, "vas_l", 0.08, "le_mh", 0.1);
    new TreeMap<>(usual)
        .forEach(
            (field, deviation) -> {
              double factor = Math.exp(errors.nextGaussian() * deviation);
              if (driver.has(field)) {
                driver.put(field, driver.get(field).asDouble() * factor);
              }
            });
    if (driver.has("sensitivity")) {
      ObjectNode sensitivity = (ObjectNode) driver.get("sensitivity");
      double db = sensitivity.get("level_db_spl").asDouble() + 0.7 * errors.nextGaussian();
      sensitivity.put("level_db_spl", db);
    }
  }

  private double error(double deviation) {
    double drawn = errors.nextGaussian() * deviation;
    return kind == Kind.EXACT ? 0 : drawn;
  }

  private boolean often(double share) {
    return random.nextDouble() < share;
  }

  /** The plan of the sound vehicle with what was measured in the real one. */
  ObjectNode measured() {
    ObjectNode with = plan.deepCopy();
    ArrayNode rows = with.putArray("measured");
    List<PlayedChannel> channels = new ArrayList<>();
    List<ChannelState> states = new ArrayList<>();
    for (int c = 0; c < sound.heard().size(); c++) {
      channels.add(real.model().channels().get(c));
      states.add(state(c));
    }
    SoundField field =
        new SoundField(
            channels.stream().map(PlayedChannel::chain).toList(),
            channels.stream().map(PlayedChannel::drive).toList(),
            real.grid(),
            Modelled.INCOHERENT_ABOVE_HZ);
    for (int c = 0; c < states.size(); c++) {
      ObjectNode row = rows.addObject().put("channel", id(c));
      boolean dead = fault.dead() != null && fault.channels().contains(id(c));
      if (dead) {
        dead(c, row);
      } else {
        row(c, row, field, states);
      }
    }
    with.putArray("measured_supply");
    if (with.has("supply")) {
      drops(with, channels, states);
    }
    return with;
  }

  private String id(int c) {
    return plan.get("channels").get(c).get("id").asText();
  }

  private int polarity(ObjectNode of, int c) {
    return of.get("channels").get(c).path("polarity").asInt(1);
  }

  private ChannelState state(int c) {
    ChannelState planned = sound.heard().get(c);
    boolean louder = fault.louderDb() != 0 && fault.channels().contains(id(c));
    double volts = planned.sourceV() * Math.pow(10, (louder ? fault.louderDb() : 0) / 20);
    int turned = planned.polarity() * polarity(plan, c) * polarity(fault.vehicle(), c);
    return new ChannelState(volts, planned.trimDb(), turned, planned.delayMs());
  }

  /** Of a channel that is cut off or shorted a meter shows it, and a microphone the room. */
  private void dead(int c, ObjectNode row) {
    boolean open = fault.dead() == PlantedFault.Dead.OPEN;
    double cable = Math.max(0.05, sound.model().channels().get(c).chain().cableOhm());
    if (often(0.85)) {
      row.put("level_db_spl", 35 + error(1.5));
    }
    if (often(0.7) && sound.model().channels().get(c).chain().meterOhm() != null) {
      row.put("meter_ohm", open ? 5000 : Math.max(0.05, cable * Math.exp(error(0.1))));
    }
  }

  private void row(int c, ObjectNode row, SoundField field, List<ChannelState> states) {
    ChannelChain chain = real.model().channels().get(c).chain();
    int seat = sound.index().plan().mainSeat();
    double level = Math.max(30, field.alone(seat, states, c).dbSpl());
    boolean heard = level > 45;
    if (often(0.85)) {
      row.put("level_db_spl", level + error(1.5));
    }
    if (often(0.6) && heard) {
      ArrayNode response = row.putArray("response");
      for (double hz : RESPONSE_HZ) {
        double db = 10 * Math.log10(1e-9 + chain.squareAt(seat, hz, hz <= 300)) + error(2) + 60;
        response.addObject().put("frequency_hz", hz).put("level_db", db);
      }
    }
    Double dc = chain.dcOhm();
    if (often(0.7) && dc != null) {
      row.put("meter_ohm", Math.min(5000, Math.max(0.05, dc * Math.exp(error(0.1)))));
    }
    if (often(0.4) && chain.terminalsKnown()) {
      ArrayNode impedance = row.putArray("impedance");
      for (double hz : IMPEDANCE_HZ) {
        double ohm = Math.min(9000, chain.ohmAt(hz, true).modulus() * Math.exp(error(0.15)));
        impedance.addObject().put("frequency_hz", hz).put("modulus_ohm", Math.max(0.02, ohm));
      }
    }
    if (often(0.6) && heard) {
      row.put("arrival_ms", 7 + chain.flightMs(seat) + states.get(c).delayMs() + error(0.3));
    }
    if (often(0.6) && heard) {
      boolean wrong = errors.nextDouble() < 0.002 && kind != Kind.EXACT;
      row.put("polarity", states.get(c).polarity() * (wrong ? -1 : 1));
    }
  }

  /** Constant power behind a resistance, by the quadratic equation. */
  private void drops(ObjectNode with, List<PlayedChannel> channels, List<ChannelState> states) {
    for (int a = 0; a < plan.get("amplifiers").size(); a++) {
      String id = plan.get("amplifiers").get(a).get("id").asText();
      if (!plan.get("amplifiers").get(a).has("draw") || !often(0.7)) {
        continue;
      }
      double out = 0;
      for (int c = 0; c < channels.size(); c++) {
        boolean own = plan.get("channels").get(c).get("amplifier").asText().equals(id);
        boolean dead = fault.dead() != null && fault.channels().contains(id(c));
        double volts = states.get(c).sourceV() * Math.pow(10, states.get(c).trimDb() / 20);
        out += own && !dead ? channels.get(c).meanW() * volts * volts : 0;
      }
      double watts = sound.amplifiers().get(a).meanW(out);
      boolean bad = fault.jointOhm() > 0 && fault.channels().contains(id);
      double ohm = sound.amplifiers().get(a).loopOhm() + (bad ? fault.jointOhm() : 0);
      double battery = 13.6;
      double root = battery * battery - 4 * watts * ohm;
      double drop = root < 0 ? battery / 2 : (battery - Math.sqrt(root)) / 2;
      drop = Math.max(0, drop + error(0.05));
      ((ArrayNode) with.get("measured_supply"))
          .addObject()
          .put("amplifier", id)
          .put("at_battery_v", battery)
          .put("at_amplifier_v", battery - drop);
    }
  }
}
