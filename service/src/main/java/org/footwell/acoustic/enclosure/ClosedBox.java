package org.footwell.acoustic.enclosure;

import static org.footwell.acoustic.enclosure.EnclosureFinding.FILL_OPTIMISTIC;
import static org.footwell.acoustic.enclosure.EnclosureFinding.LEAKY_BAFFLE_MODEL;
import static org.footwell.acoustic.enclosure.EnclosureFinding.QTC_HIGH;
import static org.footwell.acoustic.enclosure.EnclosureFinding.QTC_LOW;

import java.util.List;
import org.footwell.acoustic.enclosure.lowend.BoxCurve;
import org.footwell.acoustic.enclosure.lowend.BoxDrive;
import org.footwell.acoustic.enclosure.lowend.BoxFault;
import org.footwell.acoustic.enclosure.lowend.BoxFinding;
import org.footwell.acoustic.enclosure.lowend.BoxLimits;
import org.footwell.acoustic.enclosure.lowend.BoxRemarks;
import org.footwell.acoustic.enclosure.lowend.BoxResponse;
import org.footwell.acoustic.enclosure.lowend.BoxShape;
import org.footwell.acoustic.enclosure.lowend.Excursion;
import org.footwell.acoustic.enclosure.lowend.LowEnd;
import org.footwell.acoustic.enclosure.radiator.CabinCurve;
import org.footwell.acoustic.enclosure.radiator.Survey;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.loudspeaker.AirBehind;
import org.footwell.loudspeaker.Radiator;
import org.footwell.parts.Box;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.FilterFault;
import org.footwell.parts.FrequencyFault;
import org.footwell.parts.LeakyBaffle;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.Enclosure;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.Air;
import org.footwell.physics.CabinGain;
import org.footwell.physics.FilterPrototype;
import org.footwell.physics.Piston;
import org.footwell.physics.ThieleSmall;

/** A driver in a closed box, in a door or in a rear shelf. */
public final class ClosedBox
    implements Calculation<ClosedBoxRequest, ClosedBoxResult>, AskOfPlan<ClosedBoxRequest> {

  /** What is common for qtc (common practice, no source). */
  private static final double LOW_QTC = 0.5;

  private static final double HIGH_QTC = 1.2;

  /** Below this compliance ratio the air behind hardly holds the cone (common practice, no source). */
  private static final double HARDLY_HELD = 0.1;

  /** What careful filling reaches (common practice, no source). */
  private static final double COMMON_FILL = 1.25;

  /** Acoustic compliance in m³/Pa from apparent volume in litre, density and speed of sound. */
  static final Formula.Of3 COMPLIANCE =
      Formula.of("box_compliance_m3_per_pa", "V/(1000·ρ·c²)", "m³/Pa", ThieleSmall.SMALL_CLOSED)
          .with("V", "ρ", "c", (litre, rho, c) -> litre / (1000 * rho * c * c));

  private static final Card<ClosedBoxRequest, ClosedBoxResult> CARD =
      Card.of("closed-box", ClosedBoxRequest.class, ClosedBoxResult.class)
          .title("A driver in a closed box or a door")
          .purpose(
              "Resonance, Q and response of a driver in a closed box, in a door or in a rear shelf;"
                  + " the volume for a wanted Q or ripple; how far the cone goes, how loud it can get and"
                  + " what holds it, and a high-pass that protects it.")
          .example(
              """
              {"driver": {"re_ohm": 3.4, "rated_ohm": 4, "fs_hz": 30, "qms": 6, "qes": 0.5,
                 "vas_l": 60, "sd_cm2": 330, "xmax_mm": 10, "le_mh": 1.5, "le_exponent": 0.7,
                 "continuous_power_w": 300},
               "box": {"qtc": 0.8, "fill_factor": 1.1, "driver_displacement_l": 2.5,
                 "bracing_l": 0.8, "space_l": 45},
               "power_w": 120,
               "cabin": {"length_m": 2.6},
               "frequencies": {"spacing": "third_octave", "from_hz": 15, "to_hz": 120}}
              """)
          .sources(
              ThieleSmall.SMALL_DRIVER,
              ThieleSmall.SMALL_CLOSED,
              ThieleSmall.LEACH,
              Piston.HALF_SPACE,
              Air.ISO_9613_1,
              FilterPrototype.BUTTERWORTH,
              CabinGain.HALF_WAVE,
              CabinGain.SEALED_CABIN,
              CabinGain.RIGID_VOLUME,
              CurveFrequencies.IEC_61260_1,
              Source.COMMON_PRACTICE)
          .limits(
              "Small signals: at high level suspension, force factor and resistance change; the"
                  + " thermal limit is a cold voice coil's voltage.",
              "Air in the box and cone are lumped: the answer says up to which frequency.",
              "Half space without walls; what edges and the vehicle add is only what the cabin"
                  + " input says.",
              "Panels are rigid. A door's panels and its leaks are not, so a baffle is a rough"
                  + " guess.",
              "The cabin model is a simple one; a measured transfer table is better.")
          .findings(EnclosureFinding.closed())
          .refusals(
              EnclosureFault.QTC_UNREACHABLE,
              FilterFault.LINKWITZ_RILEY_ODD,
              BoxFault.LONGEST_TOO_SHORT,
              FrequencyFault.RANGE_WITHOUT_POINTS)
          .cautions(Safety.HEARING, Safety.RESTRAINT, Safety.HEAT)
          .build();

  @Override
  public Card<ClosedBoxRequest, ClosedBoxResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.DRIVER);
  }

  @Override
  public ClosedBoxRequest ask(PlanReader plan) {
    int driver = plan.about().index();
    Enclosure enclosure = plan.plan().drivers().get(driver).enclosure();
    String at = plan.about().pointer() + "/enclosure";
    Box closed = enclosure == null ? null : enclosure.closed();
    LeakyBaffle baffle = enclosure == null ? null : enclosure.baffle();
    plan.poses(closed == null ? baffle : closed, enclosure == null ? at : at + "/closed");
    return ClosedBoxRequestBuilder.builder()
        .driver(plan.driver(driver))
        .box(closed)
        .baffle(baffle)
        .powerW(plan.cleanPowerW(driver, "/power_w"))
        .temperatureC(plan.temperatureC())
        .highPass(plan.highPass(driver))
        .lowPass(plan.lowPass(driver))
        .cabin(plan.cabin())
        .build();
  }

  @Override
  public ClosedBoxResult compute(ClosedBoxRequest q, Run run) {
    double[] frequencies = q.frequencies().points();
    BoxDrive drive = BoxDrive.of(q, run);
    ClosedAlignment alignment = alignment(q, run);
    Double gross = q.box() == null ? null : (Double) q.box().grossL(alignment.volumeL());
    if (q.box() != null) {
      BoxRemarks.longest(q, q.box().longestInsideMm(), gross, run);
    }
    AirBehind air = air(q, alignment, run);
    Radiator radiator =
        Radiator.of(q.driver(), q.sourceOhm(), air, q.temperatureC()).behind(q.filters());

    BoxResponse response = response(q, alignment, radiator, drive, run);
    double modelLimit =
        BoxRemarks.modelLimit(q, longestM(q, alignment.volumeL(), run), frequencies, run);
    Survey range = new Survey(radiator, q.frequencies().fromHz(), q.frequencies().toHz());
    double bassEnd = response.f3Hz() == null ? alignment.fcHz() : response.f3Hz();
    BoxLimits limits =
        new Excursion(q, range, drive, null, tooFar(q, alignment)).limits(bassEnd, modelLimit, run);
    remark(q, alignment, run);
    BoxRemarks.power(q, drive.power(), run);
    BoxRemarks.peak(response, run);
    BoxRemarks.beyondModel(BoxRemarks.figures(response, limits), modelLimit, run);
    CabinCurve cabin = BoxRemarks.cabin(q, frequencies, run);
    return ClosedBoxResultBuilder.builder()
        .volumeL(alignment.volumeL())
        .grossVolumeL(gross)
        .alpha(alignment.alpha())
        .qts(alignment.qts())
        .fcHz(alignment.fcHz())
        .qmc(alignment.qmc())
        .qec(alignment.qec())
        .qtc(alignment.qtc())
        .response(response)
        .limits(limits)
        .pressureCornerHz(cabin == null ? null : cabin.pressureCornerHz())
        .points(new BoxCurve(q, radiator, false, drive.voltage(), cabin).points(frequencies, run))
        .build();
  }

  private static ClosedAlignment alignment(ClosedBoxRequest q, Run run) {
    return q.box() == null
        ? ClosedAlignment.leaky(q.driver(), q.sourceOhm(), q.baffle().volumeL(), run)
        : EnclosureRules.closed(q, run);
  }

  private static AirBehind air(ClosedBoxRequest q, ClosedAlignment alignment, Run run) {
    double c = Air.SPEED_OF_SOUND.at(q.temperatureC());
    double rho = Air.DENSITY.at(q.temperatureC());
    double apparent = q.driver().vasL() / alignment.alpha();
    run.apply(COMPLIANCE, apparent, rho, c);
    double volume = apparent / 1000;
    double w0 = 2 * Math.PI * alignment.fcHz();
    if (q.box() != null) {
      return AirBehind.closed(volume, w0, q.box().ql(), q.box().qa());
    }
    AirBehind door = AirBehind.closed(volume, w0, q.baffle().ql(), null);
    return q.baffle().leakHeard() ? door : door.leakingAway();
  }

  private static BoxResponse response(
      ClosedBoxRequest q, ClosedAlignment alignment, Radiator radiator, BoxDrive drive, Run run) {
    boolean tight = q.box() != null && q.box().ql() == null;
    return tight
        ? LowEnd.closed(drive.referenceLevel(), alignment.fcHz(), alignment.qtc(), run)
        : LowEnd.searched(drive, radiator.bare(), q.driver().fsHz(), alignment.fcHz());
  }

  /** Where next to nothing holds the cone, a smaller box is no advice. */
  private static BoxFinding tooFar(ClosedBoxRequest q, ClosedAlignment alignment) {
    return q.box() == null || alignment.alpha() < HARDLY_HELD
        ? BoxFinding.DISPLACEMENT_IN_BAFFLE
        : BoxFinding.DISPLACEMENT_BEYOND_XMAX;
  }

  private static double longestM(ClosedBoxRequest q, double volumeL, Run run) {
    return BoxShape.longestM(q.box() == null ? null : q.box().longestInsideMm(), volumeL, run);
  }

  private static void remark(ClosedBoxRequest q, ClosedAlignment alignment, Run run) {
    LeakyBaffle baffle = q.baffle();
    if (baffle != null) {
      run.find(LEAKY_BAFFLE_MODEL).at("/baffle").value(baffle.ql());
      return;
    }
    double qtc = alignment.qtc();
    if (qtc < LOW_QTC) {
      run.find(QTC_LOW).at(q.sizePointer()).value(qtc).limit(LOW_QTC);
    } else if (qtc > HIGH_QTC) {
      run.find(QTC_HIGH)
          .at(q.sizePointer())
          .value(qtc)
          .limit(HIGH_QTC)
          .with("own", alignment.qts());
    }
    if (q.box().fill() > COMMON_FILL) {
      run.find(FILL_OPTIMISTIC).at("/box/fill_factor").value(q.box().fill()).limit(COMMON_FILL);
    }
    BoxRemarks.space(q.box().spaceL(), q.box().grossL(alignment.volumeL()), run);
  }
}
