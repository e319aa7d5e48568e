package org.footwell.vehicle.curves;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.Answers;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.plot.Drawing;
import org.footwell.sheet.FigureTable;
import org.footwell.sheet.WrittenFigure;
import org.footwell.vehicle.ModelledPlans;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Plots in inches held against those in metres: lengths by the factor of NIST Special Publication 811, appendix B
 * (foot 304.8 mm, exact), all else the same.
 */
class PlotUnitsTest {

  private static final String METRES = "m";
  private static final String FEET = "ft";

  /** Metres in one. */
  private static final Map<String, BigDecimal> WORTH =
      Map.of(METRES, BigDecimal.ONE, FEET, new BigDecimal("0.3048"));

  /** What a unit can be that is read alike by all. */
  private static final Set<String> ALIKE = Set.of("dB SPL", "dB", "Ω", "%", "V", "ms");

  private static List<Drawing> drawings(String example, Reader.Units units) throws Exception {
    VehiclePlan plan =
        ModelledPlans.plan(
            new ObjectMapper()
                .readTree(Files.readString(Path.of("../docs/examples/" + example + ".json"))));
    PlanCurvesResult curves = Answers.of(new PlanCurves(), plan).result();
    return CurvePlots.of(plan, curves, Reader.ANYONE.shown(units));
  }

  @ParameterizedTest
  @ValueSource(strings = {"camper-van", "factory-estate", "low-budget-hatchback"})
  void tablesBesidePlotsSayTheSameInInches(String example) throws Exception {
    List<Drawing> metric = drawings(example, Reader.Units.METRIC);
    List<Drawing> inch = drawings(example, Reader.Units.INCH);
    assertEquals(
        metric.stream().map(Drawing::title).toList(), inch.stream().map(Drawing::title).toList());
    int lengths = 0;
    for (int d = 0; d < metric.size(); d++) {
      lengths += compared(metric.get(d).table(), inch.get(d).table());
    }
    assertTrue(lengths >= 4, "lengths: " + lengths);
  }

  /** How many lengths there are. */
  private static int compared(FigureTable metric, FigureTable inch) {
    assertEquals(metric.rows().size(), inch.rows().size());
    int lengths = 0;
    for (int r = 0; r < metric.rows().size(); r++) {
      for (int c = 0; c < metric.columns().size(); c++) {
        String unit = unit(metric, c);
        WrittenFigure one = metric.rows().get(r).figures().get(c);
        WrittenFigure other = inch.rows().get(r).figures().get(c);
        assertEquals(one.value(), other.value());
        if (unit.equals(METRES)) {
          assertEquals(FEET, unit(inch, c));
          assertShows(one, METRES);
          assertShows(other, FEET);
          lengths++;
        } else {
          assertTrue(ALIKE.contains(unit), unit);
          assertEquals(unit, unit(inch, c));
          assertEquals(one.text(), other.text());
        }
      }
    }
    return lengths;
  }

  /** It stands in the head of a column, else in the caption before what letters mean. */
  private static String unit(FigureTable table, int column) {
    String head = table.columns().get(column);
    String said = head.contains(", ") ? head : table.caption().split(";", -1)[0];
    return said.substring(said.lastIndexOf(", ") + 2);
  }

  /** By half of its last digit. */
  private static void assertShows(WrittenFigure figure, String unit) {
    BigDecimal shown = new BigDecimal(figure.text().replace('\u2212', '-'));
    BigDecimal worth = WORTH.get(unit);
    assertEquals(
        figure.value().doubleValue(),
        shown.multiply(worth).doubleValue(),
        worth.multiply(shown.ulp()).doubleValue() * 0.500001,
        figure.text() + " " + unit);
  }

  /** Neither in the key of the cabin nor at its bar a metre is left. */
  @ParameterizedTest
  @ValueSource(strings = {"camper-van", "factory-estate", "low-budget-hatchback"})
  void theCabinIsDrawnInFeet(String example) throws Exception {
    for (Drawing drawing : drawings(example, Reader.Units.INCH)) {
      assertFalse(drawing.svg().matches("(?s).*>([0-9]+ )?m<.*"), drawing.id());
      assertEquals(
          drawing.id().equals("cabin"),
          drawing.svg().matches("(?s).*>[125]0? ft<.*"),
          drawing.id());
    }
  }
}
