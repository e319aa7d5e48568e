package org.footwell.vehicle.repair;

import java.util.List;
import org.footwell.parts.CableBuilder;
import org.footwell.parts.plan.AmplifierFeed;
import org.footwell.parts.plan.AmplifierFeedBuilder;
import org.footwell.parts.plan.PlannedAmplifierBuilder;
import org.footwell.parts.plan.Plans;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Conductors;
import org.footwell.vehicle.PlanReviewResult;
import org.footwell.vehicle.PlanReviewResult.CableLine;

/** A thicker supply cable, and another fuse. */
final class FeedChanges {

  /** So many sizes up are tried. */
  private static final int MOST_SIZES = 5;

  /** Near enough to the battery, m: below the 0.45 m that the review asks for. */
  private static final double NEAR_M = 0.3;

  private final VehiclePlan plan;
  private final PlanReviewResult review;
  private final List<Change> into;

  FeedChanges(VehiclePlan plan, PlanReviewResult review, List<Change> into) {
    this.plan = plan;
    this.review = review;
    this.into = into;
  }

  /** The supply of one amplifier. */
  void of(int a) {
    AmplifierFeed feed = plan.amplifiers().get(a).feed();
    if (feed == null) {
      return;
    }
    String at = "/amplifiers/" + a + "/feed";
    Double area = feed.cable().areaMm2();
    if (area != null) {
      Conductors.sizesMm2()
          .filter(size -> size > area)
          .limit(MOST_SIZES)
          .forEach(size -> cable(a, at, area, size));
    }
    fuse(a, at, feed);
    if (feed.fuseDistanceM() != null && feed.fuseDistanceM() > NEAR_M) {
      into.add(
          new Change(
              RepairKind.FUSE,
              at + "/fuse_distance_m",
              List.of(at + "/fuse_distance_m"),
              feed.fuseDistanceM() + " m",
              NEAR_M + " m",
              null,
              any -> with(any, a, one -> one.fuseDistanceM(NEAR_M))));
    }
  }

  private void cable(int a, String at, double area, double size) {
    into.add(
        new Change(
            RepairKind.CABLE,
            at + "/cable",
            List.of(at + "/cable/area_mm2"),
            area + " mm²",
            size + " mm²",
            null,
            any ->
                with(
                    any,
                    a,
                    one ->
                        one.cable(
                            CableBuilder.builder(any.amplifiers().get(a).feed().cable())
                                .areaMm2(size)
                                .build()))));
  }

  /** The fuse that the review advises, or without an advice the one that it finds with another cable. */
  private void fuse(int a, String at, AmplifierFeed feed) {
    if (feed.fuseA() == null) {
      return;
    }
    String id = plan.amplifiers().get(a).id();
    Double advised =
        review.cables() == null
            ? null
            : review.cables().stream()
                .filter(line -> line.id().equals(id))
                .findFirst()
                .map(CableLine::fuseA)
                .orElse(null);
    into.add(
        new Change(
            RepairKind.FUSE,
            at + "/fuse_a",
            List.of(at + "/fuse_a"),
            feed.fuseA() + " A",
            advised == null ? null : advised + " A",
            null,
            any -> with(any, a, one -> one.fuseA(advised))));
  }

  /** A feed in the making. */
  private interface Refed {
    AmplifierFeedBuilder in(AmplifierFeedBuilder feed);
  }

  private static VehiclePlan with(VehiclePlan any, int a, Refed change) {
    return Plans.amplifier(
        any,
        a,
        one ->
            PlannedAmplifierBuilder.builder(one)
                .feed(change.in(AmplifierFeedBuilder.builder(one.feed())).build())
                .build());
  }
}
