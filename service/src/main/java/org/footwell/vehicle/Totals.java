package org.footwell.vehicle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Names;
import org.footwell.parts.plan.ChannelRole;
import org.footwell.parts.plan.Extra;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.PlanReviewResult.ChannelLine;
import org.footwell.vehicle.PlanReviewResult.RoleLine;

/** The plan as a whole: balance, mass and price. */
final class Totals {

  /** Channels of one role should not be further apart, dB; common practice, no source. */
  private static final double ROLE_APART_DB = 3;

  /** From here on added mass is worth a word, g; common practice, no source. */
  private static final double HEAVIER_G = 10_000;

  /**
   * A part of this mass becomes a projectile in a crash, g; the threshold is common practice, no
   * source. 50 km/h stopped in 0.5 m is 20 times gravity: 390 N for 2 kg.
   */
  private static final double HEAVY_PART_G = 2_000;

  private final PlanIndex index;
  private final VehiclePlan plan;
  private final Run run;

  Totals(PlanIndex index, Run run) {
    this.index = index;
    this.plan = index.plan();
    this.run = run;
  }

  List<RoleLine> balance(List<ChannelLine> channels) {
    Map<ChannelRole, List<Double>> levels = new EnumMap<>(ChannelRole.class);
    for (ChannelLine line : channels) {
      if (line.levelDbSpl() != null) {
        levels.computeIfAbsent(line.role(), role -> new ArrayList<>()).add(line.levelDbSpl());
      }
    }
    List<RoleLine> lines = new ArrayList<>();
    levels.forEach(
        (role, all) -> {
          double spread = pairSpread(role, channels);
          if (spread > ROLE_APART_DB) {
            run.find(PlanFinding.ROLE_UNEVEN)
                .at("/channels")
                .value(spread)
                .limit(ROLE_APART_DB)
                .field("role", Names.of(role));
          }
          double sum = all.stream().mapToDouble(Decibels::toPower).sum();
          lines.add(new RoleLine(role, Decibels.ofPower(sum), spread));
        });
    return lines;
  }

  /** Most that left and right differ in level, dB: channels of one role that play the same parts. */
  private double pairSpread(ChannelRole role, List<ChannelLine> channels) {
    double most = 0;
    for (int a = 0; a < channels.size(); a++) {
      for (int b = a + 1; b < channels.size(); b++) {
        Double one = channels.get(a).levelDbSpl();
        Double other = channels.get(b).levelDbSpl();
        boolean pair = channels.get(a).role() == role && index.isPair(a, b);
        if (pair && one != null && other != null) {
          most = Math.max(most, Math.abs(one - other));
        }
      }
    }
    return most;
  }

  /** What the bass stands above the front, dB; null where one of them is missing. */
  Double bassStepDb() {
    long subwoofers = count(ChannelRole.SUBWOOFER);
    long fronts = count(ChannelRole.FRONT);
    return subwoofers == 0 || fronts == 0
        ? null
        : (Double)
            (Decibels.ofAmplitude((double) subwoofers / fronts)
                + plan.target().of(ChannelRole.SUBWOOFER).levelDb()
                - plan.target().of(ChannelRole.FRONT).levelDb());
  }

  private long count(ChannelRole role) {
    return plan.channels().stream().filter(channel -> channel.role() == role).count();
  }

  private Stream<PlannedPart> partsIn() {
    return IntStream.range(0, plan.drivers().size()).mapToObj(index::part);
  }

  private Stream<PlannedPart> partsOut() {
    return IntStream.range(0, plan.drivers().size())
        .map(index::replacedBy)
        .filter(replaced -> replaced >= 0)
        .mapToObj(replaced -> plan.factoryParts().get(replaced));
  }

  /** What comes in less what goes out, g; null when a mass is not known. */
  Double massChange() {
    remarkHeavyParts();
    List<Double> in =
        Stream.of(
                partsIn().map(part -> part.driver().massG()),
                plan.amplifiers().stream().map(PlannedAmplifier::massG),
                plan.extras().stream().map(extra -> (Double) (extra.extraCount() * extra.massG())))
            .flatMap(masses -> masses)
            .toList();
    List<Double> out = partsOut().map(part -> part.driver().massG()).toList();
    if (Stream.concat(in.stream(), out.stream()).anyMatch(Objects::isNull)) {
      return null;
    }
    double change = in.stream().mapToDouble(d -> d).sum() - out.stream().mapToDouble(d -> d).sum();
    if (change > HEAVIER_G) {
      run.find(PlanFinding.HEAVIER).at("/new_parts").value(change / 1000);
    }
    return change;
  }

  /** What must not come loose in a crash. */
  private void remarkHeavyParts() {
    List<String> heavy =
        Stream.of(
                partsIn()
                    .distinct()
                    .filter(part -> isHeavy(part.driver().massG()))
                    .map(PlannedPart::id),
                plan.amplifiers().stream()
                    .filter(amplifier -> isHeavy(amplifier.massG()))
                    .map(PlannedAmplifier::id),
                plan.extras().stream().filter(extra -> isHeavy(extra.massG())).map(Extra::name))
            .flatMap(names -> names)
            .toList();
    if (!heavy.isEmpty()) {
      run.find(PlanFinding.HEAVY_PARTS)
          .at("/new_parts")
          .limit(HEAVY_PART_G / 1000)
          .own("names", heavy);
    }
  }

  private static boolean isHeavy(Double massG) {
    return massG != null && massG >= HEAVY_PART_G;
  }

  /** Price of all that is new, exact; null when one has none. */
  BigDecimal price() {
    List<BigDecimal> prices =
        Stream.of(
                partsIn().map(part -> part.driver().price()),
                plan.amplifiers().stream().map(PlannedAmplifier::price),
                plan.extras().stream().map(Totals::price))
            .flatMap(all -> all)
            .toList();
    return prices.stream().anyMatch(Objects::isNull)
        ? null
        : prices.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static BigDecimal price(Extra extra) {
    return extra.price() == null
        ? null
        : extra.price().multiply(BigDecimal.valueOf(extra.extraCount()));
  }
}
