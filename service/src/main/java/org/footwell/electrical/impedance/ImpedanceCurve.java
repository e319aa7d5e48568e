package org.footwell.electrical.impedance;

import static org.footwell.electrical.impedance.ImpedanceFinding.COIL_TAKEN_AS_IDEAL;
import static org.footwell.electrical.impedance.ImpedanceFinding.RATED_IMPEDANCE_TOO_HIGH;
import static org.footwell.electrical.impedance.ImpedanceFinding.RESONANCE_OUTSIDE_RANGE;
import static org.footwell.electrical.impedance.ImpedanceFinding.RE_BELOW_RATED_LIMIT;
import static org.footwell.parts.FrequencyFault.RANGE_WITHOUT_POINTS;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.impedance.Extremes.Place;
import org.footwell.electrical.impedance.ImpedanceCurveResult.Point;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.Impedance;
import org.footwell.physics.Phasor;
import org.footwell.physics.ThieleSmall;

/** What a driver is to the amplifier over frequency, alone or in a box. */
public final class ImpedanceCurve
    implements Calculation<ImpedanceCurveRequest, ImpedanceCurveResult>,
        AskOfPlan<ImpedanceCurveRequest> {

  private static final Source IEC_60268_5 =
      Source.of(
          "IEC 60268-5:2003, Sound system equipment, Part 5: Loudspeakers: rated impedance; the"
              + " modulus is nowhere in the rated range below 80 % of it");

  private static final double RATED_SHARE = 0.8;

  private static final Formula.Of1 RATED_LIMIT =
      Formula.of("rated_limit_ohm", "0.8·R", "ohm", IEC_60268_5).with("R", r -> RATED_SHARE * r);
  private static final Formula.Of1 HIGHEST_RATED =
      Formula.of("highest_rated_ohm", "Z/0.8", "ohm", IEC_60268_5).with("Z", z -> z / RATED_SHARE);

  private static final Card<ImpedanceCurveRequest, ImpedanceCurveResult> CARD =
      Card.of("impedance-curve", ImpedanceCurveRequest.class, ImpedanceCurveResult.class)
          .title("Impedance of a driver over frequency")
          .purpose(
              "Modulus and phase of a driver in free air, in a closed or in a vented box, from its"
                  + " Thiele/Small parameters; its peaks, its lowest modulus and where that is, and"
                  + " whether the rated impedance is honest.")
          .example(
              """
              {"driver": {"re_ohm": 3.4, "le_mh": 1.2, "le_exponent": 0.7, "fs_hz": 38, "qms": 7,
                 "qes": 0.55, "vas_l": 43, "rated_ohm": 4},
               "box": {"volume_l": 50, "fb_hz": 35},
               "frequencies": {"spacing": "third_octave", "from_hz": 20, "to_hz": 2000}}
              """)
          .sources(
              ThieleSmall.SMALL_DRIVER,
              ThieleSmall.SMALL_CLOSED,
              ThieleSmall.SMALL_VENTED,
              ThieleSmall.LEACH,
              CurveFrequencies.IEC_61260_1,
              IEC_60268_5)
          .limits(
              "Small signals: at high level the coil heats up, and its resistance with it, and"
                  + " resonance and inductance move.",
              "Cone break-up and standing waves in the box are not in it.",
              "Power laws of inductance hold above the resonance; far below, coils differ.",
              "One driver; for several see the load of a network of coils.")
          .findings(
              RATED_IMPEDANCE_TOO_HIGH,
              RE_BELOW_RATED_LIMIT,
              RESONANCE_OUTSIDE_RANGE,
              COIL_TAKEN_AS_IDEAL)
          .refusals(RANGE_WITHOUT_POINTS)
          .build();

  @Override
  public Card<ImpedanceCurveRequest, ImpedanceCurveResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.DRIVER, PlanPlace.PART);
  }

  @Override
  public ImpedanceCurveRequest ask(PlanReader plan) {
    int about = plan.about().index();
    return plan.about().kind() == PlanPlace.PART
        ? new ImpedanceCurveRequest(plan.plan().newParts().get(about).driver(), null, null)
        : new ImpedanceCurveRequest(plan.driver(about), plan.box(about), null);
  }

  @Override
  public ImpedanceCurveResult compute(ImpedanceCurveRequest q, Run run) {
    double[] frequencies = q.frequencies().points();
    Impedance impedance = MountedDriver.circuit(q.driver(), q.box());
    Resonance resonance = Resonance.of(q.driver(), q.box(), run);
    Extremes extremes =
        Extremes.ofModulus(impedance, q.frequencies().fromHz(), q.frequencies().toHz(), run);
    Place lowest = extremes.lowest();
    MountedDriver.explain(q.driver(), q.box(), lowest.frequencyHz(), run);
    remark(q, resonance, run);
    Double limit = judge(q, lowest, run);
    return ImpedanceCurveResultBuilder.builder()
        .resonanceHz(resonance.hz())
        .resonanceOhm(resonance.ohm())
        .qts(resonance.qts())
        .qmc(resonance.qmc())
        .qec(resonance.qec())
        .qtc(resonance.qtc())
        .peaks(extremes.peaks().stream().map(Place::modulus).toList())
        .dips(extremes.dips().stream().map(Place::modulus).toList())
        .lowestModulusOhm(lowest.value())
        .lowestHz(lowest.frequencyHz())
        .ratedLimitOhm(limit)
        .ratedKept(limit == null ? null : lowest.value() >= limit)
        .highestRatedOhm(run.apply(HIGHEST_RATED, lowest.value()))
        .points(points(impedance, frequencies))
        .build();
  }

  private static List<Point> points(Impedance impedance, double[] frequencies) {
    List<Point> points = new ArrayList<>(frequencies.length);
    for (double f : frequencies) {
      Phasor z = impedance.at(f);
      points.add(new Point(f, z.modulus(), z.phaseDeg()));
    }
    return points;
  }

  private static void remark(ImpedanceCurveRequest q, Resonance resonance, Run run) {
    double from = q.frequencies().fromHz();
    double to = q.frequencies().toHz();
    if (resonance.hz() != null && (resonance.hz() < from || resonance.hz() > to)) {
      run.find(RESONANCE_OUTSIDE_RANGE)
          .at("/frequencies")
          .value(resonance.hz())
          .with("from", from)
          .with("to", to);
    }
    double reactance = ThieleSmall.REACTANCE_OHM.at(to, q.driver().leMh());
    if (q.driver().leExponent() == 1 && reactance > q.driver().reOhm()) {
      run.find(COIL_TAKEN_AS_IDEAL)
          .at("/driver/le_exponent")
          .value(reactance)
          .limit(q.driver().reOhm())
          .with("to", to);
    }
  }

  /** The limit for the rated impedance, or null when none was given to judge. */
  private static Double judge(ImpedanceCurveRequest q, Place lowest, Run run) {
    if (q.driver().ratedOhm() == null) {
      return null;
    }
    double limit = run.apply(RATED_LIMIT, q.driver().ratedOhm());
    if (lowest.value() < limit) {
      run.find(RATED_IMPEDANCE_TOO_HIGH)
          .at("/driver/rated_ohm")
          .value(lowest.value())
          .limit(limit)
          .with("frequency", lowest.frequencyHz())
          .with("rated", q.driver().ratedOhm())
          .with("highest", HIGHEST_RATED.at(lowest.value()));
    } else if (q.driver().reOhm() < limit) {
      run.find(RE_BELOW_RATED_LIMIT)
          .at("/driver/re_ohm")
          .value(q.driver().reOhm())
          .limit(limit)
          .with("rated", q.driver().ratedOhm());
    }
    return limit;
  }
}
