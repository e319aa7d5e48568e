package org.footwell.vehicle;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.footwell.acoustic.enclosure.ClosedBox;
import org.footwell.acoustic.enclosure.ClosedBoxRequest;
import org.footwell.acoustic.enclosure.ClosedBoxRequestBuilder;
import org.footwell.acoustic.enclosure.ClosedBoxResult;
import org.footwell.acoustic.enclosure.VentedBox;
import org.footwell.acoustic.enclosure.VentedBoxRequest;
import org.footwell.acoustic.enclosure.VentedBoxRequestBuilder;
import org.footwell.acoustic.enclosure.VentedBoxResult;
import org.footwell.acoustic.enclosure.lowend.BoxFinding;
import org.footwell.acoustic.enclosure.lowend.BoxLimits;
import org.footwell.acoustic.enclosure.lowend.BoxResponse;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.parts.Cabin;
import org.footwell.parts.CabinBuilder;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Filter;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.PlanReviewResult.BoxLine;

/** What the box, door or shelf behind a driver makes of it, behind the filters of its channel. */
final class BoxReview {

  private static final ClosedBox CLOSED_BOX = new ClosedBox();
  private static final VentedBox VENTED_BOX = new VentedBox();

  private final VehiclePlan plan;
  private final Resolved resolved;
  private final Run run;

  BoxReview(VehiclePlan plan, Resolved resolved, Run run) {
    this.plan = plan;
    this.resolved = resolved;
    this.run = run;
  }

  /** Refuses enclosures that are undecided, or whose driver is not known well enough. */
  void check() {
    for (int d = 0; d < plan.drivers().size(); d++) {
      Enclosure enclosure = plan.drivers().get(d).enclosure();
      if (enclosure == null) {
        continue;
      }
      Map<String, Object> kinds = new HashMap<>();
      kinds.put("closed", enclosure.closed());
      kinds.put("vented", enclosure.vented());
      kinds.put("baffle", enclosure.baffle());
      run.exactlyOneOf("/drivers/" + d + "/enclosure", kinds);
      VehiclePlan.Part part = resolved.part(d);
      if (part.sdCm2() == null || part.impedance() == null || part.impedance().vasL() == null) {
        run.refuse(PlanFault.BOXED_PART_INCOMPLETE)
            .at("/new_parts/" + resolved.partOf(d))
            .given(part.id());
      }
    }
  }

  /**
   * What the box of a driver makes of it.
   *
   * @param roomDb how far below its peaks the channel must stay for the cone to keep within its
   *     limit, dB, never above 0; null where the limit is not known
   */
  record Boxed(BoxLine line, Double roomDb) {}

  /** The driver in its box at the peaks of a clean sine power in W; empty without a box. */
  Optional<Boxed> of(int channel, int driver, double peakPowerW) {
    Enclosure enclosure = plan.drivers().get(driver).enclosure();
    if (enclosure == null) {
      return Optional.empty();
    }
    return enclosure.vented() == null
        ? closed(channel, driver, peakPowerW)
        : vented(channel, driver, peakPowerW);
  }

  private Optional<Boxed> closed(int channel, int driver, double powerW) {
    Enclosure enclosure = plan.drivers().get(driver).enclosure();
    ClosedBoxRequest request =
        ClosedBoxRequestBuilder.builder()
            .driver(boxDriver(driver))
            .box(enclosure.closed())
            .baffle(enclosure.baffle())
            .powerW(powerW)
            .temperatureC(plan.vehicle().temperatureC())
            .highPass(highPass(channel, driver))
            .lowPass(plan.channels().get(channel).lowPass())
            .cabin(cabin())
            .build();
    return run.call(CLOSED_BOX, request, places(CLOSED_BOX, channel, driver))
        .map(result -> boxed(driver, result));
  }

  private Optional<Boxed> vented(int channel, int driver, double powerW) {
    Enclosure.Vented vented = plan.drivers().get(driver).enclosure().vented();
    VentedBoxRequest request =
        VentedBoxRequestBuilder.builder()
            .driver(boxDriver(driver))
            .box(vented.box())
            .port(vented.port())
            .powerW(powerW)
            .temperatureC(plan.vehicle().temperatureC())
            .highPass(highPass(channel, driver))
            .lowPass(plan.channels().get(channel).lowPass())
            .cabin(cabin())
            .build();
    return run.call(VENTED_BOX, request, places(VENTED_BOX, channel, driver))
        .map(result -> boxed(driver, result));
  }

  /**
   * The part of a driver as a box takes it. Impedances are those of one voice coil: with all coils
   * driven alike, power into the rated impedance and all else are the same for any way to join them.
   */
  private Driver boxDriver(int driver) {
    VehiclePlan.Part part = resolved.part(driver);
    Driver coil = part.impedance();
    return DriverBuilder.builder(coil)
        .ratedOhm(part.ratedOhm())
        .sdCm2(part.sdCm2())
        .xmaxMm(part.xmaxMm())
        .continuousPowerW(part.continuousPowerW())
        .build();
  }

  private Filter highPass(int channel, int driver) {
    Filter passive = plan.drivers().get(driver).highPass();
    return passive == null ? plan.channels().get(channel).highPass() : passive;
  }

  private Cabin cabin() {
    return CabinBuilder.builder().lengthM(plan.vehicle().cabinLengthM()).build();
  }

  private Rebase places(Calculation<?, ?> box, int channel, int driver) {
    String part = "/new_parts/" + resolved.partOf(driver);
    String enclosure = "/drivers/" + driver + "/enclosure";
    Rebase places =
        Rebase.to("/channels/" + channel, plan.drivers().get(driver).id())
            .from("/driver", part + "/impedance")
            .with("/driver/rated_ohm", part + "/rated_ohm")
            .with("/driver/sd_cm2", part + "/sd_cm2")
            .with("/driver/xmax_mm", part + "/xmax_mm")
            .with("/driver/continuous_power_w", part + "/continuous_power_w")
            // The plan judges power, unknown limits and the cabin for all drivers alike, and shows
            // no curve.
            .without(
                BoxFinding.POWER_BEYOND_RATING,
                BoxFinding.CONTINUOUS_POWER_NOT_GIVEN,
                BoxFinding.XMAX_NOT_GIVEN,
                BoxFinding.CABIN_RISE_MODEL,
                BoxFinding.LUMPED_MODEL_LIMIT);
    return box == VENTED_BOX
        ? places.from("", enclosure + "/vented", "/channels/" + channel)
        : places.from("", enclosure, "/channels/" + channel).with("/box", enclosure + "/closed");
  }

  private Boxed boxed(int driver, ClosedBoxResult box) {
    return boxed(driver, box.fcHz(), box.qtc(), box.response(), box.limits(), null);
  }

  private Boxed boxed(int driver, VentedBoxResult box) {
    return boxed(
        driver, box.fbHz(), null, box.response(), box.limits(), box.vent().largestVelocityMPerS());
  }

  private Boxed boxed(
      int driver,
      double resonanceHz,
      Double qtc,
      BoxResponse response,
      BoxLimits limits,
      Double portVelocity) {
    Double allowed = limits.displacementPowerW();
    Double room =
        allowed == null ? null : (Double) Math.min(0, Decibels.ofPower(allowed / limits.powerW()));
    BoxLine line =
        new BoxLine(
            plan.drivers().get(driver).id(),
            resonanceHz,
            qtc,
            response.f3Hz(),
            limits.largestDisplacementMm(),
            limits.largestDisplacementHz(),
            portVelocity,
            limits.subsonic());
    return new Boxed(line, room);
  }
}
