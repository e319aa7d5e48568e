package org.footwell.impedance;

import static org.footwell.impedance.ImpedanceFitRequest.AddedMass;
import static org.footwell.impedance.ImpedanceFitRequest.KnownBox;
import static org.footwell.impedance.ImpedanceFitRequest.Reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.complex.Complex;
import org.footwell.Answers;
import org.footwell.impedance.Circuits.Values;
import org.footwell.parts.Filter;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable;
import org.footwell.reference.ReferenceTable.Row;

class ImpedanceOutsideChecks extends OutsideChecks {

  private static final String CIRCUITS = "impedance-ngspice.csv";

  @Override
  public List<OutsideCheck> checks() {
    List<OutsideCheck> checks = new ArrayList<>();
    circuits(checks, "impedance-curve", false);
    circuits(checks, "passive-network", true);
    checks.add(circuit("passive-network", "level_db", true, Values::levelDb).within(0.001));
    checks.add(
        circuit("passive-network", "level_phase_deg", true, Values::levelPhaseDeg).within(0.01));
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
    filters(checks);
    checks.add(scipy("magnitude_db", response -> response.levelDb()).within(1e-5));
    checks.add(scipy("phase_deg", response -> response.transfer().phaseDeg()).within(1e-5));
    return checks;
  }

  private static void circuits(List<OutsideCheck> into, String calculation, boolean network) {
    into.add(circuit(calculation, "modulus_ohm", network, Values::modulusOhm).withinRelative(1e-5));
    into.add(circuit(calculation, "phase_deg", network, Values::phaseDeg).within(0.001));
  }

  private static OutsideCheck circuit(
      String calculation, String quantity, boolean network, ToDoubleFunction<Values> value) {
    return OutsideCheck.of(calculation, quantity, CIRCUITS)
        .rows(row -> Circuits.isNetwork(row.text("circuit")) == network)
        .printed(quantity)
        .computed(
            row ->
                value.applyAsDouble(Circuits.at(row.text("circuit"), row.number("frequency_hz"))));
  }

  private static OutsideCheck coil(String part, ToDoubleFunction<Phasor> value) {
    return OutsideCheck.of("impedance-curve", "lossy coil, " + part, "lossy-coil.csv")
        .printed(part)
        .computed(
            row ->
                value.applyAsDouble(
                    new DriverImpedance(
                            new ImpedanceDriver(
                                4.0,
                                row.number("le_mh"),
                                row.number("le_exponent"),
                                null,
                                50.0,
                                5.0,
                                0.5,
                                null),
                            null)
                        .coil(row.number("frequency_hz"))))
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

  private static void filters(List<OutsideCheck> into) {
    into.add(
        OutsideCheck.of("passive-filter", "preferred value", "iec-60063-e-series.csv")
            .printed("value")
            .computed(ImpedanceOutsideChecks::nearest)
            .within(0));
    into.add(
        OutsideCheck.of("passive-filter", "Butterworth g", "butterworth-single-termination.csv")
            .printed("g")
            .computed(
                row -> {
                  double[] g = prototype(Filter.Kind.BUTTERWORTH, (int) row.number("order"));
                  return g[g.length - (int) row.number("from_load")];
                })
            .withinRelative(1e-12));
    into.add(
        OutsideCheck.of("passive-filter", "Bessel, sum of coils", "bessel-scale-factors.csv")
            .printed("scale")
            .computed(ImpedanceOutsideChecks::sumOfCoils)
            .withinRelative(1e-9));
    into.add(
        OutsideCheck.of("passive-filter", "Linkwitz-Riley", "linkwitz-riley-ladders.csv")
            .printed("constant")
            .computed(
                row ->
                    prototype(Filter.Kind.LINKWITZ_RILEY, (int) row.number("order"))[
                            (int) row.number("from_source") - 1]
                        / (2 * Math.PI))
            .within(0.00005));
    for (double w : new double[] {0.5, 1, 2}) {
      into.add(
          OutsideCheck.of(
                  "passive-filter", "level at " + w + " rad/s, dB", "equal-termination-ladders.csv")
              .printed(row -> equalTerminationDb(row, w))
              .computed(row -> ladderDb(row, w))
              .within(0.01));
    }
  }

  /** A value of the series found again from both its sides, a little off. */
  private static double nearest(Row row) {
    PreferredSeries series = PreferredSeries.valueOf(row.text("series").toUpperCase(Locale.ROOT));
    double below = series.nearest(row.number("value") * 0.98);
    double above = series.nearest(row.number("value") * 1.02);
    return below == above ? above : Double.NaN;
  }

  private static double[] prototype(Filter.Kind kind, int order) {
    return LadderSynthesis.prototype(new Filter(kind, order, 1000.0, null));
  }

  private static double sumOfCoils(Row row) {
    double[] g = prototype(Filter.Kind.BESSEL, (int) row.number("order"));
    double sum = 0;
    for (int i = 0; i < g.length; i += 2) {
      sum += g[i];
    }
    return sum;
  }

  /** What ladders of order 1 to 4 do, into the resistor they are for. */
  private static OutsideCheck scipy(String quantity, ToDoubleFunction<Ladder.Response> value) {
    return OutsideCheck.of("passive-filter", "ladder, " + quantity, "scipy-analog-filters.csv")
        .rows(row -> row.number("order") <= 4)
        .printed(row -> upright(row.number(quantity), quantity))
        .computed(row -> upright(value.applyAsDouble(ladder(row)), quantity));
  }

  /** Half a turn is the same upwards and downwards. */
  private static double upright(double value, String quantity) {
    return quantity.endsWith("deg") && Math.abs(value) > 179.9 ? Math.abs(value) : value;
  }

  private static Ladder.Response ladder(Row row) {
    String normalisation = row.text("normalisation");
    Filter filter =
        new Filter(
            Filter.Kind.valueOf(row.text("family").toUpperCase(Locale.ROOT)),
            (int) row.number("order"),
            100.0,
            normalisation.equals("-")
                ? null
                : Filter.BesselNormalisation.valueOf(normalisation.toUpperCase(Locale.ROOT)));
    List<LadderElement> elements =
        row.text("side").equals("low")
            ? LadderSynthesis.lowPass(filter, 4)
            : LadderSynthesis.highPass(filter, 4);
    return new Ladder(elements, f -> new Phasor(4, 0)).at(100 * row.number("w_rad_per_s"));
  }

  /** Level of the tabled ladder against its pass band, by a library's complex numbers. */
  private static double equalTerminationDb(Row row, double w) {
    Complex voltage = Complex.ONE;
    Complex current = Complex.ONE;
    String[] columns = {"c1", "l2", "c3", "l4"};
    for (int i = (int) row.number("order") - 1; i >= 0; i--) {
      Complex reactive = new Complex(0, w * row.number(columns[i]));
      if (i % 2 == 0) {
        current = current.add(voltage.multiply(reactive));
      } else {
        voltage = voltage.add(current.multiply(reactive));
      }
    }
    return -20 * Math.log10(voltage.add(current).abs() / 2);
  }

  /** Level of our ladder between no resistance and 1 ohm. */
  private static double ladderDb(Row row, double w) {
    Filter filter =
        new Filter(
            Filter.Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT)),
            (int) row.number("order"),
            100.0,
            null);
    Ladder ladder = new Ladder(LadderSynthesis.lowPass(filter, 1), f -> Phasor.ONE);
    return ladder.levelDb(100 * w);
  }
}
