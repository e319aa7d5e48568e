package org.footwell.acoustic.enclosure;

import java.util.List;
import java.util.Map;
import org.footwell.acoustic.enclosure.VentedBoxResult.Alignment;
import org.footwell.acoustic.enclosure.VentedBoxResult.Vent;
import org.footwell.acoustic.enclosure.lowend.BoxCurve;
import org.footwell.acoustic.enclosure.lowend.BoxDrive;
import org.footwell.acoustic.enclosure.lowend.BoxFault;
import org.footwell.acoustic.enclosure.lowend.BoxFigure;
import org.footwell.acoustic.enclosure.lowend.BoxFinding;
import org.footwell.acoustic.enclosure.lowend.BoxLimits;
import org.footwell.acoustic.enclosure.lowend.BoxRemarks;
import org.footwell.acoustic.enclosure.lowend.BoxResponse;
import org.footwell.acoustic.enclosure.lowend.BoxShape;
import org.footwell.acoustic.enclosure.lowend.Excursion;
import org.footwell.acoustic.enclosure.lowend.LowEnd;
import org.footwell.acoustic.enclosure.radiator.CabinCurve;
import org.footwell.acoustic.enclosure.radiator.Survey;
import org.footwell.acoustic.enclosure.radiator.Survey.Summit;
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

/** A driver in a vented box. */
public final class VentedBox
    implements Calculation<VentedBoxRequest, VentedBoxResult>, AskOfPlan<VentedBoxRequest> {

  private static final Formula.Of2 TUNING_RATIO =
      Formula.of("tuning_ratio", "fb/fs", "", ThieleSmall.SMALL_VENTED)
          .with("fb", "fs", (fb, fs) -> fb / fs);

  /** Air in a port is heard above this share of the speed of sound. */
  static final Formula.Of1 QUIET_SPEED =
      Formula.of("quiet_velocity_m_per_s", "0.05·c", "m/s", Source.COMMON_PRACTICE)
          .with("c", c -> 0.05 * c);

  /**
   * Beyond this share of the speed of sound a port is no mass of air any more: textbooks take steady
   * flow as incompressible up to 0.3 of it, and a flow that turns round and leaves a sharp edge is long
   * torn off at half of that.
   */
  static final Formula.Of1 CHOKED_SPEED =
      Formula.of("choked_velocity_m_per_s", "0.15·c", "m/s", Source.COMMON_PRACTICE)
          .with("c", c -> 0.15 * c);

  /** Area at which a flow is as fast as wanted: the same tuning moves the same air. */
  static final Formula.Of3 QUIET_AREA =
      Formula.of("quiet_area_cm2", "10⁴·A·v/v_quiet", "cm²", ThieleSmall.SMALL_VENTED)
          .with("A", "v", "v_quiet", (area, v, quiet) -> 1e4 * area * v / quiet);

  private static final Card<VentedBoxRequest, VentedBoxResult> CARD =
      Card.of("vented-box", VentedBoxRequest.class, VentedBoxResult.class)
          .title("A driver in a vented box")
          .purpose(
              "Volume and tuning for a flat response, tuning or length of the port, response of a driver in a vented box, how far the cone"
                  + " goes and how fast the air in the port, how loud it can get and what holds it,"
                  + " and a high-pass that protects the cone below the tuning.")
          .example(
              """
              {"driver": {"re_ohm": 3.4, "rated_ohm": 4, "fs_hz": 30, "qms": 6, "qes": 0.42,
                 "vas_l": 60, "sd_cm2": 330, "xmax_mm": 12, "le_mh": 1.5, "le_exponent": 0.7,
                 "continuous_power_w": 300},
               "box": {"volume_l": 45, "fb_hz": 33, "driver_displacement_l": 2.5,
                 "bracing_l": 1, "space_l": 60, "longest_inside_mm": 550},
               "port": {"count": 1, "diameter_mm": 100},
               "power_w": 150,
               "cabin": {"length_m": 2.6},
               "frequencies": {"spacing": "third_octave", "from_hz": 15, "to_hz": 120}}
              """)
          .sources(
              ThieleSmall.SMALL_DRIVER,
              ThieleSmall.SMALL_VENTED,
              VentedAlignment.ALIGNMENTS,
              ThieleSmall.LEACH,
              PortTuning.HELMHOLTZ,
              Piston.HALF_SPACE,
              Air.ISO_9613_1,
              FilterPrototype.BUTTERWORTH,
              CabinGain.HALF_WAVE,
              CabinGain.SEALED_CABIN,
              CabinGain.RIGID_VOLUME,
              CurveFrequencies.IEC_61260_1,
              Source.COMMON_PRACTICE)
          .limits(
              "Small signals: at high level suspension, force factor and resistance change, and a"
                  + " port chokes; the thermal limit is a cold voice coil's voltage.",
              "Air in box and port and the cone are lumped: the answer says up to which frequency."
                  + " Sound of the box that leaves through the port is not in it.",
              "End corrections hold for ends far from other panels; a slot along a panel tunes"
                  + " lower.",
              "Half space without walls; what edges and the vehicle add is only what the cabin"
                  + " input says.",
              "The cabin model is a simple one; a measured transfer table is better.")
          .findings(EnclosureFinding.vented())
          .refusals(
              EnclosureFault.ALIGNMENT_NOT_FOUND,
              EnclosureFault.TUNING_UNREACHABLE,
              EnclosureFault.PORT_FILLS_BOX,
              FilterFault.LINKWITZ_RILEY_ODD,
              BoxFault.LONGEST_TOO_SHORT,
              FrequencyFault.RANGE_WITHOUT_POINTS)
          .cautions(Safety.HEARING, Safety.RESTRAINT, Safety.HEAT)
          .build();

  @Override
  public Card<VentedBoxRequest, VentedBoxResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.DRIVER);
  }

  @Override
  public VentedBoxRequest ask(PlanReader plan) {
    int driver = plan.about().index();
    Enclosure enclosure = plan.plan().drivers().get(driver).enclosure();
    String at = plan.about().pointer() + "/enclosure";
    Enclosure.Vented vented = enclosure == null ? null : enclosure.vented();
    plan.poses(vented, enclosure == null ? at : at + "/vented");
    return VentedBoxRequestBuilder.builder()
        .driver(plan.driver(driver))
        .box(vented == null ? null : vented.box())
        .port(vented == null ? null : vented.port())
        .powerW(plan.cleanPowerW(driver, "/power_w"))
        .temperatureC(plan.temperatureC())
        .highPass(plan.highPass(driver))
        .lowPass(plan.lowPass(driver))
        .cabin(plan.cabin())
        .build();
  }

  @Override
  public VentedBoxResult compute(VentedBoxRequest q, Run run) {
    double[] frequencies = q.frequencies().points();
    Box box = q.box();
    double qts = ClosedAlignment.freeAirQ(q.driver(), q.sourceOhm(), run);
    Alignment found = box.volumeL() == null ? EnclosureRules.vented(q, qts, run) : null;
    double volume = found == null ? box.volumeL() : found.volumeL();
    BoxDrive drive = BoxDrive.of(q, run);
    double alpha = run.apply(ThieleSmall.COMPLIANCE_RATIO, q.driver().vasL(), volume);
    double c = Air.SPEED_OF_SOUND.at(q.temperatureC());
    Double wanted = found == null ? box.fbHz() : (Double) found.fbHz();
    PortTuning port = EnclosureRules.port(q.port(), volume, wanted, c, run);
    double fb = port.fbHz();
    double gross = box.grossL(volume) + port.displacementL();
    BoxRemarks.longest(q, box.longestInsideMm(), gross, run);
    double h = run.apply(TUNING_RATIO, fb, q.driver().fsHz());
    if (box.qa() == null && box.qp() == null) {
      VentedForm.responseDb(h, alpha, h, box.ventedQl(), qts, run);
    }

    run.apply(ClosedBox.COMPLIANCE, volume, Air.DENSITY.at(q.temperatureC()), c);
    Radiator radiator =
        Radiator.of(q.driver(), q.sourceOhm(), air(box, volume, port), q.temperatureC())
            .behind(q.filters());
    double highest = Math.max(fb, ThieleSmall.IN_CLOSED_BOX.at(q.driver().fsHz(), alpha));
    BoxResponse response =
        LowEnd.searched(drive, radiator.bare(), Math.min(fb, q.driver().fsHz()), highest);
    double longest = BoxShape.longestM(box.longestInsideMm(), volume, run);
    double modelLimit = BoxRemarks.modelLimit(q, longest, frequencies, run);
    Survey range = new Survey(radiator, q.frequencies().fromHz(), q.frequencies().toHz());
    BoxLimits limits =
        new Excursion(q, range, drive, fb, BoxFinding.DISPLACEMENT_BEYOND_XMAX)
            .limits(fb, modelLimit, run);
    Vent vent = vent(c, port, range, drive, run);

    BoxRemarks.power(q, drive.power(), run);
    BoxRemarks.peak(response, run);
    Map<BoxFigure, Double> figures = BoxRemarks.figures(response, limits);
    figures.put(BoxFigure.TUNING, fb);
    figures.put(BoxFigure.FASTEST_AIR, vent.largestVelocityHz());
    BoxRemarks.beyondModel(figures, modelLimit, run);
    BoxRemarks.space(box.spaceL(), gross, run);
    PortRemarks.of(q, volume, port, vent, longest, qts, frequencies[frequencies.length - 1], run);
    CabinCurve cabin = BoxRemarks.cabin(q, frequencies, run);
    return VentedBoxResultBuilder.builder()
        .grossVolumeL(gross)
        .alpha(alpha)
        .qts(qts)
        .fbHz(fb)
        .tuningRatio(h)
        .volumeL(volume)
        .alignment(found)
        .vent(vent)
        .response(response)
        .limits(limits)
        .pressureCornerHz(cabin == null ? null : cabin.pressureCornerHz())
        .points(new BoxCurve(q, radiator, true, drive.voltage(), cabin).points(frequencies, run))
        .build();
  }

  private static AirBehind air(Box box, double volumeL, PortTuning port) {
    return AirBehind.vented(
        volumeL / 1000, 2 * Math.PI * port.fbHz(), box.ventedQl(), box.qa(), box.qp(), port.area());
  }

  private static Vent vent(double c, PortTuning port, Survey range, BoxDrive drive, Run run) {
    Summit fastest = range.highest((f, state) -> state.portVelocity() * drive.voltage());
    double quiet = run.apply(QUIET_SPEED, c);
    return new Vent(
        1e4 * port.area(),
        1000 * port.length(),
        1000 * port.effectiveLength(),
        port.displacementL(),
        run.apply(PortTuning.PIPE_RESONANCE, c, port.effectiveLength()),
        fastest.value(),
        fastest.frequencyHz(),
        run.apply(QUIET_AREA, port.area(), fastest.value(), quiet));
  }
}
