package org.footwell.electrical.impedance;

import static org.footwell.electrical.impedance.ImpedanceFitRequest.AddedMass;
import static org.footwell.electrical.impedance.ImpedanceFitRequest.KnownBox;
import static org.footwell.electrical.impedance.ImpedanceFitRequest.Reading;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.footwell.Answers;
import org.footwell.electrical.passive.Circuits;
import org.footwell.loudspeaker.CoilImpedance;
import org.footwell.parts.CurveFrequencies;
import org.footwell.physics.Phasor;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable;

class ImpedanceOutsideChecks extends OutsideChecks {

  private static final String CIRCUITS = "impedance-ngspice.csv";

  @Override
  public List<OutsideCheck> checks() {
    List<OutsideCheck> checks = new ArrayList<>();
    checks.addAll(Circuits.impedance("impedance-curve", false));
    checks.add(
        OutsideCheck.of("impedance-curve", "exact mid-band, kHz", "iec-61260-octave-centres.csv")
            .printed("frequency_khz")
            .computed(
                row ->
                    CurveFrequencies.Spacing.THIRD_OCTAVE.midBandHz(3 * (int) row.number("octave"))
                        / 1000)
            .within(0.00005));
    checks.add(coil("real_ohm", Phasor::re));
    checks.add(coil("imaginary_ohm", Phasor::im));
    checks.add(
        OutsideCheck.of("impedance-fit", "parameters", "netlist-woofer.csv")
            .printed("value")
            .computed(row -> fitted(row.text("quantity")))
            .withinRelative(1e-5));
    return checks;
  }

  private static OutsideCheck coil(String part, ToDoubleFunction<Phasor> value) {
    return OutsideCheck.of("impedance-curve", "lossy coil, " + part, "lossy-coil.csv")
        .printed(part)
        .computed(
            row ->
                value.applyAsDouble(
                    CoilImpedance.of(
                            Drivers.of(
                                4, row.number("le_mh"), row.number("le_exponent"), 50, 5, 0.5))
                        .at(row.number("frequency_hz"))))
        .withinRelative(1e-8);
  }

  /** A parameter as fitted to the circuit's tables in free air, with the mass and in the box. */
  private static double fitted(String quantity) {
    ImpedanceFitRequest request =
        new ImpedanceFitRequest(
            table("free-air"),
            null,
            false,
            330.0,
            new AddedMass(20.0, table("added-mass")),
            new KnownBox(25.0, table("closed-box")));
    ImpedanceFitResult r = Answers.of(new ImpedanceFit(), request).result();
    return switch (quantity) {
      case "re_ohm" -> r.reOhm();
      case "le_mh" -> r.leMh();
      case "fs_hz" -> r.fsHz();
      case "qms" -> r.qms();
      case "qes" -> r.qes();
      case "mms_g" -> r.mmsG();
      case "cms_mm_per_n" -> r.cmsMmPerN();
      case "vas_l" -> r.vasL();
      case "bl_tm" -> r.blTm();
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  static List<Reading> table(String circuit) {
    return ReferenceTable.load(CIRCUITS).rows().stream()
        .filter(row -> row.text("circuit").equals(circuit))
        .map(
            row ->
                new Reading(
                    row.number("frequency_hz"), row.number("modulus_ohm"), row.number("phase_deg")))
        .toList();
  }
}
