package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.footwell.calculation.Answer;
import org.footwell.vehicle.PlanReviewResult.SetupLine;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.reading.Modelled;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A vehicle in which one thing is wrong is measured, and the plan of the sound one names it first. */
class CauseReviewTest {

  private static final double[] HZ = {
    25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 400, 800, 1250, 1600, 2500, 5000, 10000
  };

  /** What is wrong, and what must be named first. */
  private record Planted(
      String name,
      PlanDraft plan,
      UnaryOperator<PlanDraft> wrong,
      LikelyCause cause,
      List<String> channels) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static PlanDraft estate() {
    return PlanDraft.ofFile("../docs/examples/factory-estate.json").with("/measured", "[]");
  }

  private static PlanDraft estateWithClosedBox() {
    return estate().with("/drivers/6/enclosure", "{\"closed\": {\"volume_l\": 8}}");
  }

  private static PlanDraft van() {
    return asAdvised(PlanDraft.van());
  }

  /** A van in which a coil keeps the treble from the woofer, so that it is the tweeter's alone. */
  private static PlanDraft vanWithCrossover() {
    return asAdvised(
        PlanDraft.van()
            .with(
                "/channels/0/branches/0/elements",
                "[{\"place\": \"series\", \"inductance_mh\": 0.8, \"coil_ohm\": 0.15}]"));
  }

  private static PlanDraft asAdvised(PlanDraft van) {
    List<SetupLine> sheet = van.review().result().setupSheet();
    van.with("/settings", "[]");
    for (SetupLine line : sheet) {
      van.with(
          "/settings/-",
          "{\"channel\":\"%s\",\"gain_v\":%s,\"trim_db\":%s,\"delay_ms\":%s,\"polarity\":%d}"
              .formatted(
                  line.id(), line.gainTargetV(), line.trimDb(), line.delayMs(), line.polarity()));
    }
    return van;
  }

  private static PlanDraft copy(PlanDraft plan) {
    return PlanDraft.of(plan.json().toString());
  }

  private static UnaryOperator<PlanDraft> swapped(int one, int other) {
    return plan -> {
      PlanDraft sound = copy(plan);
      for (String field : List.of("/network", "/branches", "/cable")) {
        for (int[] pair : new int[][] {{one, other}, {other, one}}) {
          String from = "/channels/" + pair[1] + field;
          String to = "/channels/" + pair[0] + field;
          if (sound.json().at(from).isMissingNode()) {
            plan.without(to);
          } else {
            plan.with(to, sound.json().at(from).toString());
          }
        }
      }
      return plan;
    };
  }

  private static Stream<Planted> planted() {
    return Stream.of(
        new Planted(
            "rear loudspeaker inverted",
            estate(),
            plan -> plan.with("/channels/4/polarity", "-1"),
            LikelyCause.POLARITY_INVERTED,
            List.of("left_rear")),
        new Planted(
            "left and right door swapped",
            estate(),
            swapped(0, 1),
            LikelyCause.WIRES_SWAPPED,
            List.of("left_door", "right_door")),
        new Planted(
            "door and tweeter swapped",
            estate(),
            swapped(0, 2),
            LikelyCause.WIRES_SWAPPED,
            List.of("left_door", "left_pillar")),
        new Planted(
            "subsonic filter of the bass missing",
            estate(),
            plan -> plan.without("/channels/6/high_pass"),
            LikelyCause.HIGH_PASS_MISSING,
            List.of("bass")),
        new Planted(
            "low-pass of a door missing",
            estate(),
            plan -> plan.without("/channels/1/low_pass"),
            LikelyCause.LOW_PASS_MISSING,
            List.of("right_door")),
        new Planted(
            "high-pass of a door an octave up",
            estate(),
            plan -> plan.with("/channels/0/high_pass/frequency_hz", "160"),
            LikelyCause.HIGH_PASS_OFF,
            List.of("left_door")),
        new Planted(
            "low-pass of the bass an octave down",
            estate(),
            plan -> plan.with("/channels/6/low_pass/frequency_hz", "40"),
            LikelyCause.LOW_PASS_OFF,
            List.of("bass")),
        new Planted(
            "one of four coils open",
            van(),
            plan -> plan.with("/channels/5/network", "\"sub_right.1 + sub_right.2\""),
            LikelyCause.COIL_OPEN,
            List.of("bass")),
        new Planted(
            "tweeter behind its crossover open",
            vanWithCrossover(),
            plan -> plan.without("/channels/0/branches/1"),
            LikelyCause.COIL_OPEN,
            List.of("front_left")),
        new Planted(
            "closed box not tight",
            estateWithClosedBox(),
            plan -> plan.with("/drivers/6/enclosure/closed/ql", "2"),
            LikelyCause.BOX_LEAKS,
            List.of("bass")),
        new Planted(
            "gain of the bass too high",
            estate(),
            plan -> plan.with("/settings/6/gain_v", "22"),
            LikelyCause.GAIN_OFF,
            List.of("bass")));
  }

  /** Puts into a plan what is measured in a vehicle, every figure off by a ripple in dB. */
  private static PlanDraft measured(PlanDraft plan, PlanDraft vehicle, double rippleDb) {
    PlanDraft measured = copy(plan).with("/measured", "[]");
    Modelled real = ModelledPlans.modelled(vehicle.read());
    int seat = real.index().plan().mainSeat();
    for (int c = 0; c < real.model().channels().size(); c++) {
      ChannelChain chain = real.model().channels().get(c).chain();
      StringBuilder response = new StringBuilder();
      for (int i = 0; i < HZ.length; i++) {
        double square = chain.squareAt(seat, HZ[i], HZ[i] <= 300);
        double db = 100 + 10 * Math.log10(square) + (i % 2 == 0 ? rippleDb : -rippleDb);
        response.append(i == 0 ? "" : ",");
        response.append("{\"frequency_hz\":%s,\"level_db\":%s}".formatted(HZ[i], db));
      }
      measured.with(
          "/measured/-",
          "{\"channel\":\"%s\",\"level_db_spl\":%s,\"polarity\":%d,\"arrival_ms\":%s,\"response\":[%s]}"
              .formatted(
                  real.index().plan().channels().get(c).id(),
                  real.model().field().alone(seat, real.heard(), c).dbSpl(),
                  real.states().get(c).polarity(),
                  3 + chain.flightMs(seat) + real.states().get(c).delayMs(),
                  response));
      if (chain.meterOhm() != null) {
        measured.with("/measured/" + c + "/meter_ohm", chain.meterOhm().toString());
      }
    }
    return measured;
  }

  @ParameterizedTest
  @MethodSource("planted")
  void whatIsWrongIsNamedFirst(Planted planted) {
    PlanDraft vehicle = planted.wrong().apply(copy(planted.plan()));
    Answer<PlanReviewResult> answer = measured(planted.plan(), vehicle, 0).review();
    List<CauseLine> causes = answer.result().causes();
    CauseLine first = causes.get(0);
    assertEquals(planted.cause(), first.cause(), causes.toString());
    assertEquals(planted.channels(), first.channels(), causes.toString());
    assertTrue(first.misfitAfter() <= first.misfitBefore() / 2, causes.toString());
    assertTrue(causes.size() <= 5);
    String said = PlanDraft.finding(answer, "likely-cause").text();
    planted.channels().forEach(id -> assertTrue(said.contains(id), said));
  }

  @ParameterizedTest
  @MethodSource("planted")
  void noCauseIsNamedWhereAllIsAsPredicted(Planted planted) {
    Answer<PlanReviewResult> same = measured(planted.plan(), planted.plan(), 1).review();
    assertNull(same.result().causes());
    assertTrue(PlanDraft.said(same).stream().noneMatch(code -> code.endsWith("likely-cause")));
  }

  @Test
  void theFigureThatIsOffIsGiven() {
    PlanDraft louder = estate().with("/settings/6/gain_v", "22");
    CauseLine gain = measured(estate(), louder, 0).review().result().causes().get(0);
    // 22 V where the plan says 14.8 V.
    assertEquals(20 * Math.log10(22 / 14.8), gain.gainDb(), 1e-6);
    assertNull(gain.cornerHz());
    PlanDraft up = estate().with("/channels/0/high_pass/frequency_hz", "160");
    CauseLine corner = measured(estate(), up, 0.5).review().result().causes().get(0);
    assertEquals(160, corner.cornerHz(), 2);
    assertNull(corner.gainDb());
  }

  @Test
  void whatCouldNotHaveBeenMeasuredIsNoCause() {
    PlanDraft plan = measured(estate(), swapped(0, 2).apply(estate()), 0);
    assertEquals(LikelyCause.WIRES_SWAPPED, plan.review().result().causes().get(0).cause());
    // The capacitor of the tweeter lets no meter through: with a reading the tweeter is not there.
    List<CauseLine> causes = plan.with("/measured/0/meter_ohm", "3.55").review().result().causes();
    assertTrue(
        causes == null
            || causes.stream()
                .noneMatch(one -> one.channels().equals(List.of("left_door", "left_pillar"))),
        () -> causes.toString());
  }

  @Test
  void twoFaultsOfWhichNoneExplainsHalfAreNotExplained() {
    PlanDraft plan =
        PlanDraft.ofFile("../docs/examples/factory-estate.json")
            .with("/measured/0/polarity", "-1")
            .with("/measured/1/polarity", "-1")
            .with("/measured/4/polarity", "-1");
    assertNull(plan.review().result().causes());
    assertEquals(
        LikelyCause.POLARITY_INVERTED,
        PlanDraft.ofFile("../docs/examples/factory-estate.json")
            .with("/measured/4/polarity", "-1")
            .review()
            .result()
            .causes()
            .get(0)
            .cause());
  }
}
