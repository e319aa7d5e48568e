package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.NetworkFault.COIL_RESISTANCE_WITHOUT_COIL;
import static org.footwell.electrical.passive.NetworkFault.ELEMENT_EMPTY;
import static org.footwell.electrical.passive.NetworkFault.ZERO_RESISTANCE_LOOP;
import static org.footwell.electrical.passive.NetworkFinding.CAPACITOR_ACROSS_AMPLIFIER;
import static org.footwell.electrical.passive.NetworkFinding.COIL_ACROSS_AMPLIFIER;
import static org.footwell.electrical.passive.NetworkFinding.LEVEL_HUMP;
import static org.footwell.electrical.passive.NetworkFinding.NETWORK_LOAD_BELOW_RATED;
import static org.footwell.electrical.passive.NetworkFinding.NETWORK_LOAD_TOO_LOW;
import static org.footwell.parts.FrequencyFault.RANGE_WITHOUT_POINTS;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.amplifier.AmplifierFinding;
import org.footwell.electrical.impedance.Extremes;
import org.footwell.electrical.impedance.Extremes.Place;
import org.footwell.electrical.impedance.MountedDriver;
import org.footwell.electrical.passive.PassiveNetworkResult.Point;
import org.footwell.loudspeaker.Ladder;
import org.footwell.loudspeaker.Ladder.Response;
import org.footwell.parts.Amplifier;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.LadderElement;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.Electricity;
import org.footwell.physics.Impedance;
import org.footwell.physics.Phasor;
import org.footwell.physics.ThieleSmall;

/** What a ladder of passive parts is to the amplifier, and what reaches the driver. */
public final class PassiveNetwork
    implements Calculation<PassiveNetworkRequest, PassiveNetworkResult>,
        AskOfPlan<PassiveNetworkRequest> {

  /** A lift of the driver above the amplifier's voltage that is worth a warning, dB. */
  private static final double HUMP_DB = 1;

  /** A way for direct current this much below the load is a way around it. */
  private static final double AROUND_THE_LOAD = 0.5;

  private static final Card<PassiveNetworkRequest, PassiveNetworkResult> CARD =
      Card.of("passive-network", PassiveNetworkRequest.class, PassiveNetworkResult.class)
          .title("Passive network before a driver")
          .purpose(
              "What a ladder of capacitors, coils and resistors with its driver is to the"
                  + " amplifier over frequency, where the load is lowest, and what level reaches"
                  + " the driver.")
          .example(
              """
              {"elements": [
                 {"place": "series", "inductance_mh": 1.2, "coil_ohm": 0.3},
                 {"place": "shunt", "capacitance_uf": 22},
                 {"place": "shunt", "capacitance_uf": 39, "resistance_ohm": 4.7}],
               "driver": {"re_ohm": 3.4, "le_mh": 0.5, "le_exponent": 0.7, "fs_hz": 60, "qms": 4,
                 "qes": 0.5},
               "frequencies": {"spacing": "third_octave"},
               "amplifier": {"minimum_ohm": 2}, "voltage_v": 14}
              """)
          .sources(
              Ladder.KIRCHHOFF,
              ThieleSmall.SMALL_DRIVER,
              ThieleSmall.SMALL_CLOSED,
              ThieleSmall.SMALL_VENTED,
              ThieleSmall.LEACH,
              CurveFrequencies.IEC_61260_1,
              LowestLoad.IEC_60268_5,
              Source.COMMON_PRACTICE)
          .limits(
              "Voltage at the driver's terminals, not sound: the driver's own response and what the"
                  + " parts of a loudspeaker do to each other are not in it.",
              "Capacitors are ideal, coils have their DC resistance only; cored coils saturate.",
              "The amplifier and its cable have no impedance: add the cable's as a resistor.",
              "One driver, at most 32 elements.")
          .findings(
              NETWORK_LOAD_TOO_LOW,
              NETWORK_LOAD_BELOW_RATED,
              AmplifierFinding.BRIDGED_MINIMUM_DOUBTFUL,
              COIL_ACROSS_AMPLIFIER,
              CAPACITOR_ACROSS_AMPLIFIER,
              LEVEL_HUMP)
          .refusals(
              ELEMENT_EMPTY,
              COIL_RESISTANCE_WITHOUT_COIL,
              ZERO_RESISTANCE_LOOP,
              RANGE_WITHOUT_POINTS)
          .cautions(Safety.HEAT)
          .build();

  @Override
  public Card<PassiveNetworkRequest, PassiveNetworkResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.BRANCH);
  }

  @Override
  public PassiveNetworkRequest ask(PlanReader plan) {
    int channel = plan.about().index();
    int inner = plan.about().inner();
    String at = plan.about().pointer();
    List<LadderElement> elements =
        plan.plan().channels().get(channel).branches().get(inner).ladder();
    plan.poses(elements.isEmpty() ? null : elements, at + "/elements");
    List<PlanIndex.NamedCoil> coils =
        plan.index().coils(channel).stream().filter(coil -> coil.branch() == inner).toList();
    // One driver is known over frequency; several together by their rated impedance only.
    Integer driver =
        coils.size() == 1 && plan.index().part(coils.get(0).driver()).coilCount() == 1
            ? Integer.valueOf(coils.get(0).driver())
            : null;
    plan.called("/load_ohm", at + "/network");
    plan.called("/voltage_v", PlanReader.channelAt(channel));
    Amplifier amplifier = plan.amplifier(channel);
    return PassiveNetworkRequestBuilder.builder()
        .elements(elements.isEmpty() ? null : elements)
        .driver(driver == null ? null : plan.driver(driver))
        .box(driver == null ? null : plan.box(driver))
        .loadOhm(driver == null ? plan.figures().branchOhm(channel, inner) : null)
        .amplifier(amplifier.minimumOhm() == null ? null : amplifier)
        .bridged(plan.bridged(channel, "/bridged"))
        .voltageV(plan.figures().outputV(channel))
        .build();
  }

  @Override
  public PassiveNetworkResult compute(PassiveNetworkRequest q, Run run) {
    double[] frequencies = q.frequencies().points();
    Impedance load = load(q);
    Ladder ladder = new Ladder(q.elements(), load);
    double[] grid = Extremes.grid(q.frequencies().fromHz(), q.frequencies().toHz());
    double[] modulus = new double[grid.length];
    double[] level = new double[grid.length];
    for (int i = 0; i < grid.length; i++) {
      Response response = ladder.at(grid[i]);
      modulus[i] = response.input().modulus();
      level[i] = response.levelDb();
    }
    Place lowest = Extremes.of(f -> ladder.at(f).input().modulus(), grid, modulus, run).lowest();
    Place loudest = Extremes.of(ladder::levelDb, grid, level, run).highest();
    Phasor input = explain(ladder, lowest.frequencyHz(), run);
    double loadDc = q.driver() == null ? q.loadOhm() : q.driver().reOhm();
    double dc = ladder.dcOhm(loadDc);
    if (q.amplifier() != null) {
      LowestLoad.againstAmplifier(lowest, q.amplifier(), q.bridged(), run);
    }
    judgeEnds(ladder, loadDc, dc, run);
    if (loudest.value() > HUMP_DB) {
      run.find(LEVEL_HUMP)
          .at("/elements")
          .value(loudest.value())
          .limit(HUMP_DB)
          .with("frequency", loudest.frequencyHz());
    }
    return new PassiveNetworkResult(
        lowest.value(),
        lowest.frequencyHz(),
        input.phaseDeg(),
        q.voltageV() == null ? null : current(q.voltageV(), lowest.value(), run),
        Double.isInfinite(dc) ? null : dc,
        loudest.value(),
        loudest.frequencyHz(),
        points(ladder, frequencies));
  }

  private static Impedance load(PassiveNetworkRequest q) {
    if (q.driver() != null) {
      return MountedDriver.circuit(q.driver(), q.box());
    }
    Phasor resistor = new Phasor(q.loadOhm(), 0);
    return f -> resistor;
  }

  private static Double current(double voltage, double ohm, Run run) {
    return run.apply(Electricity.CURRENT, voltage, ohm);
  }

  /** Notes what the ladder is at one frequency; returns the impedance there. */
  private static Phasor explain(Ladder ladder, double f, Run run) {
    Response response = ladder.at(f);
    run.apply(ThieleSmall.MODULUS, response.input().re(), response.input().im());
    Phasor loss = Phasor.ONE.over(response.transfer());
    run.apply(Ladder.LEVEL_DB, loss.re(), loss.im());
    return response.input();
  }

  /** What the amplifier meets far below and far above the audible. */
  private static void judgeEnds(Ladder ladder, double loadDc, double dc, Run run) {
    if (dc < AROUND_THE_LOAD * loadDc) {
      run.find(COIL_ACROSS_AMPLIFIER).at("/elements").value(dc).limit(loadDc);
    }
    if (ladder.farAboveOhm() == 0) {
      run.find(CAPACITOR_ACROSS_AMPLIFIER).at("/elements");
    }
  }

  private static List<Point> points(Ladder ladder, double[] frequencies) {
    List<Point> points = new ArrayList<>(frequencies.length);
    for (double f : frequencies) {
      Response r = ladder.at(f);
      points.add(
          new Point(
              f, r.input().modulus(), r.input().phaseDeg(), r.levelDb(), r.transfer().phaseDeg()));
    }
    return points;
  }
}
