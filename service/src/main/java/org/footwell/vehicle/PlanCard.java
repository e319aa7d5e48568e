package org.footwell.vehicle;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.footwell.acoustic.alignment.SeatDelays;
import org.footwell.acoustic.crossover.CrossoverPlan;
import org.footwell.acoustic.driver.DriverCheck;
import org.footwell.acoustic.enclosure.ClosedBox;
import org.footwell.acoustic.enclosure.VentedBox;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Coded;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Source;
import org.footwell.electrical.amplifier.RailMatch;
import org.footwell.electrical.gain.GainChain;
import org.footwell.electrical.heat.AmplifierHeat;
import org.footwell.electrical.impedance.ImpedanceCurve;
import org.footwell.electrical.load.LoadFinding;
import org.footwell.electrical.load.WiringLoad;
import org.footwell.electrical.supply.SupplyCable;
import org.footwell.parts.Safety;

/** The declaration of plan-review: its own words, and what the calculations it composes say. */
final class PlanCard {

  private static final List<Calculation<?, ?>> COMPOSED =
      List.of(
          new WiringLoad(),
          new RailMatch(),
          new SoundLevel(),
          new SeatDelays(),
          new ImpedanceCurve(),
          new AmplifierHeat(),
          new SupplyCable(),
          new GainChain(),
          new CrossoverPlan(),
          new DriverCheck(),
          new ClosedBox(),
          new VentedBox());

  static final Card<VehiclePlan, PlanReviewResult> CARD =
      Card.of("plan-review", VehiclePlan.class, PlanReviewResult.class)
          .title("Review of a whole vehicle plan")
          .purpose(
              "One document describes the vehicle, its seats, parts, amplifiers and channels; every"
                  + " channel is run through wiring-load, rail-match, sound-level and seat-delays; where"
                  + " the plan says enough, also through impedance-curve and gain-chain, and every"
                  + " amplifier through amplifier-heat and supply-cable, and crossovers through"
                  + " crossover-plan, parts through driver-check and boxes through closed-box and"
                  + " vented-box."
                  + " One line per channel, the system as a whole, and one verdict with the"
                  + " findings that explain it, worst first.")
          .example(example())
          .sources(
              Stream.concat(
                      COMPOSED.stream().flatMap(c -> c.card().sources().stream()),
                      Stream.of(Source.COMMON_PRACTICE))
                  .distinct()
                  .toArray(Source[]::new))
          .limits(
              "A channel plays from the middle of its drivers.",
              "Levels at the seats are sums of powers; how phases and bands add there is for"
                  + " seat-levels.",
              "Levels are at the clip point of each amplifier; what heat and movement of the drivers"
                  + " allow stands beside them. Channels add as powers.",
              "Each band of a passive crossover is judged as if it got the whole signal.",
              "The limits of the composed calculations hold here too.")
          .findings(
              eachOnce(
                      Stream.of(PlanFinding.values()),
                      COMPOSED.stream().flatMap(c -> c.card().findings().stream()))
                  // The coils of a channel are those of its network.
                  .filter(code -> code != LoadFinding.DRIVER_NOT_CONNECTED)
                  .toArray(FindingCode[]::new))
          .refusals(
              eachOnce(
                      Stream.of(PlanFault.values()),
                      COMPOSED.stream().flatMap(c -> c.card().refusals().stream()))
                  .toArray(FaultCode[]::new))
          .cautions(Safety.values())
          .view(
              "setup_csv",
              "text/csv;charset=utf-8",
              "the setup sheet, a row a channel",
              shown -> SetupSheet.csv(shown.answer()))
          .view(
              "setup_text",
              "text/plain;charset=utf-8",
              "the setup sheet to print",
              shown -> SetupSheet.text(shown.answer()))
          .build();

  private PlanCard() {}

  /** What the plan and its parts say under one code stands here once. */
  private static Stream<Coded> eachOnce(
      Stream<? extends Coded> own, Stream<? extends Coded> composed) {
    Map<String, Coded> byCode = new LinkedHashMap<>();
    Stream.concat(own, composed).forEach(one -> byCode.putIfAbsent(one.code(), one));
    return byCode.values().stream();
  }

  /** The demo plan of the documentation, which the build puts beside the classes. */
  private static String example() {
    try (InputStream in = PlanCard.class.getResourceAsStream("/examples/camper-van.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
