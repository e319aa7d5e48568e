package org.footwell.vehicle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.acoustic.level.LevelFinding;
import org.footwell.calculation.Names;
import org.footwell.calculation.Run;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.PlanReviewResult.ChannelLine;
import org.footwell.vehicle.PlanReviewResult.RoleLine;
import org.footwell.vehicle.VehiclePlan.Role;

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

  private final VehiclePlan plan;
  private final Resolved resolved;
  private final Run run;

  Totals(VehiclePlan plan, Resolved resolved, Run run) {
    this.plan = plan;
    this.resolved = resolved;
    this.run = run;
  }

  List<RoleLine> balance(List<ChannelLine> channels) {
    Map<Role, List<Double>> levels = new EnumMap<>(Role.class);
    for (ChannelLine line : channels) {
      if (line.levelDbSpl() != null) {
        levels.computeIfAbsent(line.role(), role -> new ArrayList<>()).add(line.levelDbSpl());
      }
    }
    List<RoleLine> lines = new ArrayList<>();
    levels.forEach(
        (role, all) -> {
          double spread =
              all.stream().mapToDouble(d -> d).max().orElseThrow()
                  - all.stream().mapToDouble(d -> d).min().orElseThrow();
          if (spread > ROLE_APART_DB) {
            run.find(PlanFinding.ROLE_UNEVEN)
                .at("/channels")
                .value(spread)
                .limit(ROLE_APART_DB)
                .field("role", Names.of(role));
          }
          lines.add(new RoleLine(role, powerSum(all), spread));
        });
    return lines;
  }

  /** Level of all channels together, dB SPL, or null when one of them is not known. */
  static Double together(List<Double> levels) {
    return levels.contains(null) ? null : (Double) powerSum(levels);
  }

  private static double powerSum(List<Double> levels) {
    return Decibels.ofPower(levels.stream().mapToDouble(Decibels::toPower).sum());
  }

  /** A level A-weighted as the programme says, dBA, or null when it does not say. */
  Double weighted(Double level) {
    VehiclePlan.Programme programme = plan.programme();
    return level == null || programme == null || programme.aWeightingDb() == null
        ? null
        : Double.valueOf(level + programme.aWeightingDb());
  }

  /** Peak level of the programme, dB SPL. */
  double peak(double level) {
    VehiclePlan.Programme programme = plan.programme();
    return level + (programme == null ? Decibels.SINE_CREST : programme.crestFactorDb());
  }

  /** An A-weighted level over the road noise, dB, or null when one of the two is not known. */
  Double overRoadNoise(Double levelDba) {
    Double noise = plan.vehicle().roadNoiseDba();
    if (levelDba == null || noise == null) {
      return null;
    }
    if (levelDba < noise) {
      run.find(LevelFinding.BELOW_ROAD_NOISE)
          .at("/vehicle/road_noise_dba")
          .value(noise - levelDba)
          .limit(0);
    }
    return levelDba - noise;
  }

  /** What comes in less what goes out, g; null when a mass is not known. */
  Double massChange() {
    List<Double> in =
        Stream.concat(
                drivers().map(d -> resolved.part(d).massG()),
                plan.amplifiers().stream().map(VehiclePlan.Amplifier::massG))
            .collect(Collectors.toList());
    List<Double> out =
        drivers()
            .map(resolved::replaced)
            .filter(Objects::nonNull)
            .map(VehiclePlan.Part::massG)
            .collect(Collectors.toList());
    remarkHeavyParts();
    if (Stream.concat(in.stream(), out.stream()).anyMatch(Objects::isNull)) {
      run.find(PlanFinding.MASS_NOT_KNOWN).at("/new_parts");
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
        Stream.concat(
                drivers()
                    .map(resolved::part)
                    .distinct()
                    .filter(part -> isHeavy(part.massG()))
                    .map(VehiclePlan.Part::id),
                plan.amplifiers().stream()
                    .filter(amplifier -> isHeavy(amplifier.massG()))
                    .map(VehiclePlan.Amplifier::id))
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
        Stream.concat(
                drivers().map(d -> resolved.part(d).price()),
                plan.amplifiers().stream().map(VehiclePlan.Amplifier::price))
            .collect(Collectors.toList());
    if (prices.contains(null)) {
      run.find(PlanFinding.PRICE_NOT_KNOWN).at("/new_parts");
      return null;
    }
    return prices.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private Stream<Integer> drivers() {
    return IntStream.range(0, plan.drivers().size()).boxed();
  }
}
