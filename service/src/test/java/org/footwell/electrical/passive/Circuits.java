package org.footwell.electrical.passive;

import static org.footwell.parts.LadderElement.Place.SERIES;
import static org.footwell.parts.LadderElement.Place.SHUNT;
import static org.footwell.parts.LadderElement.Wiring.IN_PARALLEL;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.footwell.Answers;
import org.footwell.electrical.impedance.ImpedanceCurve;
import org.footwell.electrical.impedance.ImpedanceCurveRequest;
import org.footwell.electrical.impedance.ImpedanceCurveResult;
import org.footwell.parts.Box;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.LadderElement;
import org.footwell.parts.LadderElementBuilder;
import org.footwell.reference.OutsideCheck;

/**
 * The circuits of the netlists as requests: the mechanics there are turned into Thiele/Small
 * parameters here by their definitions, and so is what the tables say of the same circuits.
 */
public final class Circuits {

  private static final double RE = 3.4;
  private static final double LE_MH = 1.2;
  private static final double BL = 9.5;
  private static final double MMS = 0.062;
  private static final double CMS = 0.28e-3;
  private static final double RMS = 2.1;
  private static final double SD = 0.033;
  private static final double AIR = 1.2041 * 343.2 * 343.2;

  private Circuits() {}

  /** What a circuit does at one frequency. */
  public record Values(double modulusOhm, double phaseDeg, double levelDb, double levelPhaseDeg) {}

  public static Values at(String circuit, double f) {
    return switch (circuit) {
      case "free-air" -> driver(woofer(0), null, f);
      case "added-mass" -> driver(woofer(0.02), null, f);
      case "closed-box" -> driver(woofer(0), closed(), f);
      case "vented-box" -> driver(woofer(0), vented(), f);
      case "vented-box-tight" ->
          driver(woofer(0), BoxBuilder.builder().volumeL(30.0).fbHz(48.0).ql(40.0).build(), f);
      case "low-pass-woofer" -> network(lowPass(), woofer(0), closed(), null, f);
      case "trap-vented" -> network(trapAndPad(), woofer(0), vented(), null, f);
      case "band-pass-resistor" -> network(bandPass(), null, null, 4.0, f);
      default -> throw new IllegalArgumentException(circuit);
    };
  }

  public static boolean isNetwork(String circuit) {
    return List.of("low-pass-woofer", "trap-vented", "band-pass-resistor").contains(circuit);
  }

  /** The woofer with a mass in kg on its cone. */
  public static Driver woofer(double added) {
    double mass = MMS + added;
    double ws = 1 / Math.sqrt(mass * CMS);
    return DriverBuilder.builder()
        .reOhm(RE)
        .leMh(LE_MH)
        .fsHz(ws / (2 * Math.PI))
        .qms(ws * mass / RMS)
        .qes(RE * ws * mass / (BL * BL))
        .vasL(AIR * SD * SD * CMS * 1000)
        .build();
  }

  private static Box closed() {
    return Box.closed(25.0);
  }

  private static Box vented() {
    return Box.vented(50.0, 35.0);
  }

  private static List<LadderElement> lowPass() {
    return List.of(
        LadderElementBuilder.builder().place(SERIES).inductanceMh(1.8).coilOhm(0.35).build(),
        LadderElement.capacitor(SHUNT, 47),
        LadderElementBuilder.builder()
            .place(SHUNT)
            .capacitanceUf(100.0)
            .resistanceOhm(3.9)
            .build());
  }

  private static List<LadderElement> trapAndPad() {
    return List.of(
        new LadderElement(SERIES, 33.0, 0.8, 0.2, 22.0, IN_PARALLEL),
        LadderElementBuilder.builder()
            .place(SHUNT)
            .capacitanceUf(220.0)
            .inductanceMh(3.3)
            .coilOhm(0.6)
            .resistanceOhm(2.2)
            .build(),
        LadderElement.resistor(SERIES, 1.5),
        LadderElement.resistor(SHUNT, 10));
  }

  private static List<LadderElement> bandPass() {
    return List.of(
        LadderElement.capacitor(SERIES, 68),
        LadderElementBuilder.builder().place(SHUNT).inductanceMh(2.2).coilOhm(0.4).build(),
        LadderElementBuilder.builder().place(SERIES).inductanceMh(0.33).coilOhm(0.15).build(),
        LadderElement.capacitor(SHUNT, 10));
  }

  private static Values driver(Driver driver, Box box, double f) {
    ImpedanceCurveRequest request = new ImpedanceCurveRequest(driver, box, only(f));
    ImpedanceCurveResult.Point point =
        Answers.of(new ImpedanceCurve(), request).result().points().get(0);
    return new Values(point.modulusOhm(), point.phaseDeg(), 0, 0);
  }

  private static Values network(
      List<LadderElement> elements, Driver driver, Box box, Double loadOhm, double f) {
    PassiveNetworkRequest request =
        PassiveNetworkRequestBuilder.builder()
            .elements(elements)
            .driver(driver)
            .box(box)
            .loadOhm(loadOhm)
            .frequencies(only(f))
            .build();
    PassiveNetworkResult.Point point =
        Answers.of(new PassiveNetwork(), request).result().points().get(0);
    return new Values(point.modulusOhm(), point.phaseDeg(), point.levelDb(), point.levelPhaseDeg());
  }

  public static CurveFrequencies only(double... hz) {
    return CurveFrequencies.only(hz);
  }

  /** Checks of modulus and phase against the table of the circuits. */
  public static List<OutsideCheck> impedance(String calculation, boolean network) {
    return List.of(
        check(calculation, "modulus_ohm", network, Values::modulusOhm).withinRelative(1e-5),
        check(calculation, "phase_deg", network, Values::phaseDeg).within(0.001));
  }

  static OutsideCheck check(
      String calculation, String quantity, boolean network, ToDoubleFunction<Values> value) {
    return OutsideCheck.of(calculation, quantity, "impedance-ngspice.csv")
        .rows(row -> isNetwork(row.text("circuit")) == network)
        .printed(quantity)
        .computed(row -> value.applyAsDouble(at(row.text("circuit"), row.number("frequency_hz"))));
  }
}
