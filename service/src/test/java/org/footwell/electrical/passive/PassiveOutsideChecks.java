package org.footwell.electrical.passive;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.complex.Complex;
import org.footwell.electrical.passive.Circuits.Values;
import org.footwell.loudspeaker.Ladder;
import org.footwell.parts.Filter;
import org.footwell.parts.LadderElement;
import org.footwell.parts.PreferredSeries;
import org.footwell.physics.Phasor;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class PassiveOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    List<OutsideCheck> checks = new ArrayList<>(Circuits.impedance("passive-network", true));
    checks.add(Circuits.check("passive-network", "level_db", true, Values::levelDb).within(0.001));
    checks.add(
        Circuits.check("passive-network", "level_phase_deg", true, Values::levelPhaseDeg)
            .within(0.01));
    filters(checks);
    checks.add(scipy("magnitude_db", response -> response.levelDb()).within(1e-5));
    checks.add(scipy("phase_deg", response -> response.transfer().phaseDeg()).within(1e-5));
    return checks;
  }

  private static void filters(List<OutsideCheck> into) {
    into.add(
        OutsideCheck.of("passive-filter", "preferred value", "iec-60063-e-series.csv")
            .printed("value")
            .computed(PassiveOutsideChecks::nearest)
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
            .computed(PassiveOutsideChecks::sumOfCoils)
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
    return LadderSynthesis.prototype(Filter.of(kind, order, 1000.0));
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
