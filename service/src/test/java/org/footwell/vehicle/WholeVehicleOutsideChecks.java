package org.footwell.vehicle;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;
import org.footwell.vehicle.chain.Borne;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.EngineState;
import org.footwell.vehicle.chain.Operation;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.PowerSource.Meeting;
import org.footwell.vehicle.chain.SoundField;
import org.footwell.vehicle.reading.Modelled;

/**
 * Whole vehicles against their second working in SciPy: other circuits (node equations), another
 * spectrum (48 places in a third octave), another search for supply and delays.
 */
class WholeVehicleOutsideChecks extends OutsideChecks {

  private static final String TABLE = "scipy-whole-vehicles.csv";
  private static final Map<String, Modelled> VEHICLES = new ConcurrentHashMap<>();

  private static final Map<String, PlanReviewResult> REVIEWS = new ConcurrentHashMap<>();

  /** What the places in a third octave may change in power, volts and travel: 0.02 dB. */
  private static final double GRID = 0.0046;

  private static final double GRID_DB = 0.02;

  /** Where phases of several channels turn within a place of the grid, one of them at 300 Hz. */
  private static final double SUM_DB = 0.04;

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        check("lowest_network_ohm").withinRelative(1e-6),
        check("lowest_terminal_ohm").withinRelative(1e-6),
        check("clip_v").withinRelative(1e-4),
        check("gain_v").withinRelative(1e-4),
        check("mean_power_w").withinRelative(GRID),
        check("trim_db").within(GRID_DB),
        check("limiter_rms_v").withinRelative(1e-6),
        check("sine_displacement_mm").withinRelative(GRID),
        check("largest_drive_db").within(GRID_DB),
        check("flight_delay_ms").within(1e-6),
        check("delay_ms").within(0.01),
        check("held_power_w").withinRelative(GRID),
        check("coil_heat_w").withinRelative(GRID),
        check("programme_mm").withinRelative(GRID),
        check("level_db_spl").within(GRID_DB),
        check("sum_db_spl").within(SUM_DB),
        check("sum_dba").within(SUM_DB),
        check("mean_battery_v").withinRelative(1e-5),
        check("mean_a").withinRelative(GRID),
        check("mean_v").withinRelative(1e-4),
        check("sine_battery_v").withinRelative(1e-6),
        check("sine_a").withinRelative(1e-6),
        check("sine_v").withinRelative(1e-6),
        check("crossover_loss_db").within(0.01),
        check("flight_loss_db").within(0.01));
  }

  private static OutsideCheck check(String quantity) {
    return OutsideCheck.of("plan-review", quantity, TABLE)
        .rows(row -> row.text("quantity").equals(quantity))
        .printed("value")
        .computed(WholeVehicleOutsideChecks::value);
  }

  private static double value(Row row) {
    Modelled vehicle =
        VEHICLES.computeIfAbsent(
            row.text("vehicle"), name -> ModelledPlans.modelled(ModelledPlans.json(name)));
    String place = row.text("place");
    String quantity = row.text("quantity");
    return switch (quantity) {
      case "level_db_spl", "sum_db_spl" -> level(vehicle, place).dbSpl();
      case "sum_dba" -> level(vehicle, place).dba();
      case "held_power_w", "coil_heat_w", "programme_mm" -> driver(vehicle, place, quantity);
      case "sine_displacement_mm" ->
          review(row.text("vehicle")).drivers().stream()
              .filter(driver -> driver.id().equals(place))
              .findFirst()
              .orElseThrow()
              .sineDisplacementMm();
      case "largest_drive_db" -> review(row.text("vehicle")).largest().driveDb();
      case "limiter_rms_v" ->
          review(row.text("vehicle")).channels().get(channel(vehicle, place)).limiterRmsV();
      case "crossover_loss_db" -> vehicle.alignment().matched().get(0).match().asGiven().lossDb();
      case "flight_loss_db" ->
          vehicle.alignment().matched().get(0).match().asGiven().flightLossDb();
      default ->
          (quantity.startsWith("mean_") && !quantity.equals("mean_power_w"))
                  || quantity.startsWith("sine_")
              ? supply(vehicle, place.split("/"), quantity)
              : channel(vehicle, channel(vehicle, place), quantity);
    };
  }

  private static PlanReviewResult review(String vehicle) {
    return REVIEWS.computeIfAbsent(
        vehicle, name -> PlanLaws.review(ModelledPlans.json(name)).result());
  }

  private static int channel(Modelled vehicle, String id) {
    VehiclePlan plan = vehicle.index().plan();
    return IntStream.range(0, plan.channels().size())
        .filter(c -> plan.channels().get(c).id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static double channel(Modelled vehicle, int c, String quantity) {
    PlayedChannel channel = vehicle.model().channels().get(c);
    Operation cruising = vehicle.levelled().cruising();
    return switch (quantity) {
      case "lowest_network_ohm" -> LowestOhm.of(channel.chain()).alone().value();
      case "lowest_terminal_ohm" -> LowestOhm.of(channel.chain()).withCable().value();
      case "clip_v" -> cruising.clipV().get(c);
      case "gain_v" -> vehicle.levelled().gains().get(c).volts();
      case "mean_power_w" -> cruising.meanW().get(c);
      case "trim_db" -> vehicle.advisedTrimDb(c);
      case "flight_delay_ms" -> vehicle.alignment().flightDelayMs(c);
      case "delay_ms" -> vehicle.alignment().delayMs(c);
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  private static double driver(Modelled vehicle, String id, String quantity) {
    VehiclePlan plan = vehicle.index().plan();
    for (int c = 0; c < plan.channels().size(); c++) {
      ChannelState heard = vehicle.heard().get(c);
      double volts = heard.sourceV() * Math.pow(10, heard.trimDb() / 20);
      for (Borne one : vehicle.model().channels().get(c).borne()) {
        if (plan.drivers().get(one.driver()).id().equals(id)) {
          return switch (quantity) {
            case "held_power_w" -> one.heldW() * volts * volts;
            case "coil_heat_w" -> one.coilW() * volts * volts;
            default -> one.movedMm() * volts;
          };
        }
      }
    }
    throw new IllegalArgumentException(id);
  }

  private static SoundField.Level level(Modelled vehicle, String place) {
    String[] parts = place.split("@", -1);
    VehiclePlan plan = vehicle.index().plan();
    int seat =
        IntStream.range(0, plan.seats().size())
            .filter(s -> plan.seats().get(s).name().equals(parts[1]))
            .findFirst()
            .orElseThrow();
    SoundField field = vehicle.model().field();
    return parts[0].isEmpty()
        ? field.together(seat, vehicle.heard())
        : field.alone(seat, vehicle.heard(), channel(vehicle, parts[0]));
  }

  private static double supply(Modelled vehicle, String[] place, String quantity) {
    Operation operation =
        vehicle.operations().get(EngineState.valueOf(place[0].toUpperCase(Locale.ROOT)));
    Meeting met = quantity.startsWith("mean") ? operation.mean() : operation.sine();
    if (quantity.endsWith("battery_v")) {
      return met.batteryV();
    }
    VehiclePlan plan = vehicle.index().plan();
    int amplifier =
        IntStream.range(0, plan.amplifiers().size())
            .filter(a -> plan.amplifiers().get(a).id().equals(place[1]))
            .findFirst()
            .orElseThrow();
    return quantity.endsWith("_a") ? met.currentA().get(amplifier) : met.loadV().get(amplifier);
  }
}
