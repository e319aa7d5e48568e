package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FilteredWays.filter;
import static org.footwell.acoustic.filters.FilteredWays.high;
import static org.footwell.acoustic.filters.FilteredWays.low;
import static org.footwell.acoustic.filters.FilteredWays.way;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.footwell.acoustic.filters.CrossoverFiltersResult.SumPoint;
import org.footwell.acoustic.filters.CrossoverFiltersResult.WayPoint;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.BesselNormalisation;
import org.footwell.parts.Filter.Kind;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;
import org.footwell.signal.Biquad;
import org.footwell.signal.CoefficientFormat;
import org.footwell.signal.SectionKind;

class FiltersOutsideChecks extends OutsideChecks {

  private static final String ID = "crossover-filters";
  private static final String FILTERS = "scipy-digital-filters.csv";
  private static final String SECTIONS = "scipy-equaliser-sections.csv";
  private static final String SUMS = "scipy-crossover-sums.csv";

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of(ID, "filter level_db", FILTERS)
            .printed("level_db")
            .computed(row -> point(row).levelDb())
            .within(2e-6),
        OutsideCheck.of(ID, "filter phase_deg, difference", FILTERS)
            .printed(row -> 0)
            .computed(row -> apart(point(row).phaseDeg(), row.number("phase_deg")))
            .within(2e-6),
        OutsideCheck.of(ID, "filter group_delay_ms", FILTERS)
            .printed("group_delay_ms")
            .computed(row -> point(row).groupDelayMs())
            .within(1e-6),
        coefficient("b0", Biquad::b0),
        coefficient("b1", Biquad::b1),
        coefficient("b2", Biquad::b2),
        coefficient("a1", Biquad::a1),
        coefficient("a2", Biquad::a2),
        OutsideCheck.of(ID, "rounding error, dB", "scipy-rounded-sections.csv")
            .printed("error_db")
            .computed(FiltersOutsideChecks::roundingError)
            .within(1e-4),
        OutsideCheck.of(ID, "sum level_db", SUMS)
            .printed("level_db")
            .computed(row -> sum(row).levelDb())
            .within(2e-6),
        OutsideCheck.of(ID, "sum phase_deg, difference", SUMS)
            .printed(row -> 0)
            .computed(row -> apart(sum(row).phaseDeg(), row.number("phase_deg")))
            .within(2e-6));
  }

  private static OutsideCheck coefficient(String name, ToDoubleFunction<Biquad> of) {
    return OutsideCheck.of(ID, "section " + name, SECTIONS)
        .printed(name)
        .computed(row -> of.applyAsDouble(section(row)))
        .within(1e-11);
  }

  private static double apart(double degrees, double others) {
    return Math.IEEEremainder(degrees - others, 360);
  }

  private static Kind kind(Row row) {
    return Kind.valueOf(row.text("family").toUpperCase(Locale.ROOT));
  }

  private static WayPoint point(Row row) {
    String norm = row.text("normalisation");
    Filter filter =
        new Filter(
            kind(row),
            (int) row.number("order"),
            row.number("corner_hz"),
            norm.equals("-") ? null : BesselNormalisation.valueOf(norm.toUpperCase(Locale.ROOT)));
    CrossoverFiltersRequestWayBuilder output = way("one");
    if (row.text("side").equals("low")) {
      output.lowPass(filter);
    } else {
      output.highPass(filter);
    }
    FilteredWays draft = new FilteredWays().with(output).at(row.number("frequency_hz"));
    draft.asked.rateHz(row.number("rate_hz"));
    return draft.result().ways().get(0).points().get(0);
  }

  private static Biquad section(Row row) {
    SectionKind kind = SectionKind.valueOf(row.text("kind").toUpperCase(Locale.ROOT));
    FilteredWays draft =
        new FilteredWays()
            .with(way("one"))
            .with(
                "one",
                kind,
                row.number("frequency_hz"),
                row.number("q"),
                kind.takesGain() ? (Double) row.number("gain_db") : null);
    draft.asked.rateHz(row.number("rate_hz"));
    return draft.result().sections().get(0).coefficients();
  }

  private static double roundingError(Row row) {
    CrossoverFiltersRequestWayBuilder output = way("one");
    if (row.text("side").equals("low")) {
      output.lowPass(filter(Kind.BUTTERWORTH, 2, row.number("corner_hz")));
    } else {
      output.highPass(filter(Kind.BUTTERWORTH, 2, row.number("corner_hz")));
    }
    FilteredWays draft = new FilteredWays().with(output).at(row.number("frequency_hz"));
    draft.asked.rateHz(row.number("rate_hz"));
    int fraction = (int) row.numberOr("fraction_bits", -1);
    draft.asked.coefficientFormat(
        fraction < 0
            ? new CoefficientFormat(CoefficientFormat.Kind.FLOAT32, null, null)
            : new CoefficientFormat(CoefficientFormat.Kind.FIXED, fraction + 2, fraction));
    WayPoint point = draft.result().ways().get(0).points().get(0);
    return point.roundedLevelDb() - point.levelDb();
  }

  private static SumPoint sum(Row row) {
    int order = (int) row.number("order");
    CrossoverFiltersRequestWayBuilder upper =
        high("upper", kind(row), order, 2000)
            .delayMs(row.number("upper_delay_ms"))
            .gainDb(row.number("upper_gain_db"))
            .polarity((int) row.number("upper_polarity"));
    return new FilteredWays()
        .with(low("lower", kind(row), order, 2000))
        .with(upper)
        .at(row.number("frequency_hz"))
        .result()
        .sum()
        .points()
        .get(0);
  }
}
