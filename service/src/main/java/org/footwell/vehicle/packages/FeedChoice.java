package org.footwell.vehicle.packages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.footwell.electrical.supply.FeedLine;
import org.footwell.parts.Cable;
import org.footwell.parts.CableBuilder;
import org.footwell.parts.ReturnPath;
import org.footwell.parts.offer.OfferedCable;
import org.footwell.parts.offer.OfferedFuse;
import org.footwell.parts.plan.AmplifierFeed;
import org.footwell.parts.plan.AmplifierFeedBuilder;
import org.footwell.parts.plan.Extra;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.vehicle.chain.FedAmplifier;
import org.footwell.vehicle.reading.PlannedFeed;

/**
 * How an amplifier is fed.
 *
 * @param feed as the plan has it then; null where it is not known
 * @param bought cable and fuse with their prices
 * @param loopOhm from the battery and back
 */
record FeedChoice(AmplifierFeed feed, List<Extra> bought, double loopOhm) {

  PackageFigures cost() {
    long price = bought.stream().mapToLong(extra -> Prices.of(extra.price())).sum();
    double mass = bought.stream().mapToDouble(Extra::massG).sum();
    return PackageFigures.cost(price, mass);
  }

  /**
   * All ways to feed an amplifier of which none costs and weighs more than another; none where no cable
   * or fuse does.
   *
   * @param feed the way its cable goes; null where it is not known
   * @param cleanW of all its channels at the rated supply voltage
   */
  static List<FeedChoice> of(
      PackageOptionsRequest q, PlannedAmplifier amplifier, AmplifierFeed feed, double cleanW) {
    if (feed == null || amplifier.draw() == null || q.plan().supply() == null) {
      return List.of(new FeedChoice(feed, List.of(), 0));
    }
    FedAmplifier fed = PlannedFeed.drawn(amplifier, 0);
    double start = PlannedFeed.startV(q.plan().supply());
    Maker maker = new Maker(q, feed, fed, start, cleanW);
    List<FeedChoice> all = new ArrayList<>();
    if (feed.cable().areaMm2() != null || q.offer().cables().isEmpty()) {
      maker.with(null, feed.cable(), all);
    } else {
      q.offer().cables().stream()
          .sorted(Comparator.comparing(OfferedCable::id))
          .forEach(cable -> maker.with(cable, laid(feed.cable(), cable.cable()), all));
    }
    return best(all);
  }

  private static List<FeedChoice> best(List<FeedChoice> all) {
    List<FeedChoice> best = new ArrayList<>();
    for (FeedChoice one : all) {
      if (best.stream().noneMatch(other -> other.cost().noWorseThan(one.cost()))) {
        best.removeIf(other -> one.cost().noWorseThan(other.cost()));
        best.add(one);
      }
    }
    return best;
  }

  /** An offered cable where the vehicle has its way. */
  private static Cable laid(Cable way, Cable offered) {
    return CableBuilder.builder(way)
        .areaMm2(offered.areaMm2())
        .material(offered.material())
        .conductivity(offered.conductivity())
        .insulationTemperatureC(offered.insulationTemperatureC())
        .build();
  }

  private record Maker(
      PackageOptionsRequest q, AmplifierFeed feed, FedAmplifier fed, double startV, double cleanW) {

    void with(OfferedCable bought, Cable cable, List<FeedChoice> into) {
      AmplifierFeed laid = AmplifierFeedBuilder.builder(feed).cable(cable).build();
      FeedLine line = PlannedFeed.line(laid, startV, fed.thirdW(cleanW));
      OptionalDouble area =
          cable.areaMm2() == null ? line.smallestMm2() : OptionalDouble.of(cable.areaMm2());
      if (area.isEmpty() || !line.does(area.getAsDouble())) {
        return;
      }
      double mm2 = area.getAsDouble();
      Double lasting =
          q.plan().programme().sustainedBass()
              ? (Double) PlannedFeed.line(laid, startV, fed.sineW(cleanW)).currentA(mm2)
              : null;
      double least = FeedLine.leastFuseA(line.currentA(mm2), lasting);
      double most = line.ampacityA(mm2);
      List<Extra> extras = bought == null ? List.of() : List.of(metres(bought));
      if (feed.fuseA() != null) {
        if (feed.fuseA() >= least && feed.fuseA() <= most) {
          into.add(new FeedChoice(laid, extras, line.loopOhm(mm2)));
        }
      } else if (q.offer().fuses().isEmpty()) {
        if (FeedLine.fuseA(least, most).isPresent()) {
          into.add(new FeedChoice(laid, extras, line.loopOhm(mm2)));
        }
      } else {
        q.offer().fuses().stream()
            .filter(fuse -> fuse.ratingA() >= least && fuse.ratingA() <= most)
            .sorted(Comparator.comparing(OfferedFuse::ratingA).thenComparing(OfferedFuse::id))
            .forEach(fuse -> into.add(fused(laid, fuse, extras, line.loopOhm(mm2))));
      }
    }

    private static FeedChoice fused(
        AmplifierFeed laid, OfferedFuse fuse, List<Extra> extras, double loopOhm) {
      List<Extra> with = new ArrayList<>(extras);
      with.add(new Extra(fuse.id(), 1, fuse.price(), fuse.massG()));
      AmplifierFeed fused = AmplifierFeedBuilder.builder(laid).fuseA(fuse.ratingA()).build();
      return new FeedChoice(fused, with, loopOhm);
    }

    /** As many metres as there are conductors, to the cent. */
    private Extra metres(OfferedCable cable) {
      double metres = feed.cable().oneWayM() * (feed.returnPath() == ReturnPath.CABLE ? 2 : 1);
      BigDecimal price =
          cable.pricePerM().multiply(BigDecimal.valueOf(metres)).setScale(2, RoundingMode.HALF_UP);
      return new Extra(cable.id(), 1, price, cable.massGPerM() * metres);
    }
  }
}
