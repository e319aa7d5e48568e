package org.footwell.vehicle.packages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.parts.CableBuilder;
import org.footwell.parts.offer.OfferedAmplifier;
import org.footwell.parts.offer.OfferedCable;
import org.footwell.parts.offer.OfferedDriver;
import org.footwell.parts.plan.AmplifierFeedBuilder;
import org.footwell.parts.plan.Extra;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlacedDriverBuilder;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.PlannedAmplifierBuilder;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlannedChannelBuilder;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.parts.plan.VehiclePlanBuilder;
import org.footwell.vehicle.PlanReview;
import org.footwell.vehicle.PlanReviewResult;

/**
 * Every package there is of a small offer for the plan of {@link SmallJob}, put together and reviewed one by
 * one: nothing is cut off, and what can be built and what it costs is what the review says.
 */
final class BruteForce {

  /** What must not be found in a package. */
  private static final Set<String> FORBIDDEN =
      Set.of(
          "load-below-minimum",
          "supply-fails",
          "amplifier-starves",
          "cable-overloaded",
          "cable-drops-too-much",
          "no-cable-fits",
          "fuse-too-small",
          "fuse-too-large",
          "no-fuse-fits");

  /** A package with what the review says. */
  record Whole(VehiclePlan plan, PlanReviewResult review) {}

  private final PackageOptionsRequest q;
  private final List<Whole> all = new ArrayList<>();

  BruteForce(PackageOptionsRequest q) {
    this.q = q;
  }

  /** All that can be built. */
  List<Whole> all() {
    for (String front : parts("woofer")) {
      for (String bass : parts("sub")) {
        for (boolean inSeries : coils(bass) == 2 ? new boolean[] {false, true} : new boolean[1]) {
          amplifiers(front, bass, inSeries);
        }
      }
    }
    return all;
  }

  private List<String> parts(String kind) {
    Set<String> ids = new TreeSet<>();
    ids.add(kind.equals("woofer") ? "woofer_now" : "sub_now");
    for (OfferedDriver driver : q.offer().drivers()) {
      if (driver.id().contains(kind)) {
        ids.add(driver.id());
      }
    }
    return List.copyOf(ids);
  }

  private PlannedPart part(String id) {
    for (OfferedDriver driver : q.offer().drivers()) {
      if (driver.id().equals(id)) {
        return driver.part();
      }
    }
    return q.plan().newParts().stream().filter(one -> one.id().equals(id)).findFirst().get();
  }

  private int coils(String id) {
    return part(id).coilCount();
  }

  /** Which amplifier drives the front and which the bass: that of the plan, or one or two new ones. */
  private void amplifiers(String front, String bass, boolean inSeries) {
    List<PlannedAmplifier> every = new ArrayList<>(q.plan().amplifiers());
    q.offer().amplifiers().stream().map(OfferedAmplifier::amplifier).forEach(every::add);
    for (PlannedAmplifier one : every) {
      for (boolean frontBridged : new boolean[] {false, true}) {
        for (boolean bassBridged : new boolean[] {false, true}) {
          Wanted wanted = new Wanted(front, bass, inSeries, frontBridged, bassBridged);
          together(wanted, one);
          for (PlannedAmplifier other : every) {
            apart(wanted, one, other);
          }
        }
      }
    }
  }

  private record Wanted(
      String front, String bass, boolean inSeries, boolean frontBridged, boolean bassBridged) {}

  private static int outputs(PlannedAmplifier amplifier) {
    return amplifier.outputs().get(0).outputCount();
  }

  private static boolean bridges(PlannedAmplifier amplifier) {
    return amplifier.outputs().get(0).minimumBridgedOhm() != null;
  }

  private void together(Wanted wanted, PlannedAmplifier one) {
    int needed = (wanted.frontBridged ? 4 : 2) + (wanted.bassBridged ? 2 : 1);
    boolean bridged = wanted.frontBridged || wanted.bassBridged;
    if (needed <= outputs(one) && (!bridged || bridges(one))) {
      fed(wanted, List.of(one), 0);
    }
  }

  private void apart(Wanted wanted, PlannedAmplifier one, PlannedAmplifier other) {
    boolean sameOfPlan = one.id().equals(other.id()) && one.id().equals("now");
    if (!sameOfPlan
        && (wanted.frontBridged ? 4 : 2) <= outputs(one)
        && (wanted.bassBridged ? 2 : 1) <= outputs(other)
        && (!wanted.frontBridged || bridges(one))
        && (!wanted.bassBridged || bridges(other))) {
      fed(wanted, List.of(one, other), 1);
    }
  }

  /** With every cable for every new amplifier. */
  private void fed(Wanted wanted, List<PlannedAmplifier> amplifiers, int ofBass) {
    List<List<PlannedAmplifier>> ways = List.of(List.of());
    for (int i = 0; i < amplifiers.size(); i++) {
      PlannedAmplifier amplifier = amplifiers.get(i);
      List<List<PlannedAmplifier>> longer = new ArrayList<>();
      for (List<PlannedAmplifier> way : ways) {
        if (amplifier.id().equals("now")) {
          longer.add(with(way, amplifier));
          continue;
        }
        String id =
            i == 1 && amplifiers.get(0).id().equals(amplifier.id())
                ? amplifier.id() + "b"
                : amplifier.id();
        for (OfferedCable cable : q.offer().cables()) {
          longer.add(
              with(
                  way,
                  PlannedAmplifierBuilder.builder(amplifier)
                      .id(id)
                      .name(cable.id())
                      .feed(
                          AmplifierFeedBuilder.builder(q.amplifierPlace().feed())
                              .cable(
                                  CableBuilder.builder(q.amplifierPlace().feed().cable())
                                      .areaMm2(cable.cable().areaMm2())
                                      .build())
                              .build())
                      .build()));
        }
      }
      ways = longer;
    }
    ways.forEach(way -> review(wanted, way, ofBass));
  }

  private static List<PlannedAmplifier> with(List<PlannedAmplifier> way, PlannedAmplifier one) {
    List<PlannedAmplifier> longer = new ArrayList<>(way);
    longer.add(one);
    return longer;
  }

  private void review(Wanted wanted, List<PlannedAmplifier> amplifiers, int ofBass) {
    List<Extra> extras = new ArrayList<>(q.plan().extras());
    for (PlannedAmplifier amplifier : amplifiers) {
      q.offer().cables().stream()
          .filter(cable -> cable.id().equals(amplifier.name()))
          .forEach(cable -> extras.add(bought(cable)));
    }
    List<PlacedDriver> drivers = new ArrayList<>();
    for (PlacedDriver driver : q.plan().drivers()) {
      String part = driver.id().equals("bass") ? wanted.bass : wanted.front;
      drivers.add(PlacedDriverBuilder.builder(driver).part(part).build());
    }
    int[] next = new int[2];
    List<PlannedChannel> channels = new ArrayList<>();
    for (PlannedChannel channel : q.plan().channels()) {
      boolean bass = channel.id().equals("bass");
      int on = bass ? ofBass : 0;
      boolean bridged = bass ? wanted.bassBridged : wanted.frontBridged;
      List<String> outputs = new ArrayList<>();
      for (int n = 0; n < (bridged ? 2 : 1); n++) {
        String id = amplifiers.get(on).outputs().get(0).id();
        outputs.add(outputs(amplifiers.get(on)) == 1 ? id : id + "_" + ++next[on]);
      }
      String network =
          !bass || coils(wanted.bass) == 1
              ? channel.id()
              : wanted.inSeries ? "bass.1 + bass.2" : "bass.1 || bass.2";
      channels.add(
          PlannedChannelBuilder.builder(channel)
              .amplifier(amplifiers.get(on).id())
              .outputs(outputs)
              .network(network)
              .build());
    }
    VehiclePlan plan =
        VehiclePlanBuilder.builder(q.plan())
            .newParts(List.of(part(wanted.front), part(wanted.bass)))
            .drivers(drivers)
            .amplifiers(amplifiers)
            .channels(channels)
            .extras(extras)
            .build();
    Answer<PlanReviewResult> answer = Answers.of(new PlanReview(), plan);
    if (answer.findings().stream().map(Finding::code).noneMatch(FORBIDDEN::contains)) {
      all.add(new Whole(plan, answer.result()));
    }
  }

  private Extra bought(OfferedCable cable) {
    double metres = q.amplifierPlace().feed().cable().oneWayM();
    return new Extra(
        cable.id(),
        1,
        cable.pricePerM().multiply(BigDecimal.valueOf(metres)).setScale(2, RoundingMode.HALF_UP),
        cable.massGPerM() * metres);
  }
}
