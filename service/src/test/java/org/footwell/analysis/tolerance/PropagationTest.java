package org.footwell.analysis.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Against error propagation as textbooks have it: JCGM 100:2008 (GUM), equations 10 to 12 and 16, and the
 * additive models of JCGM 101:2008, 9.2, whose limits follow from the distribution of a sum.
 */
class PropagationTest {

  private static final List<Double> ONES = List.of(1.0, 1.0, 1.0, 1.0);
  private static final List<Double> ZEROS = List.of(0.0, 0.0, 0.0, 0.0);
  private static final double ROOT_3 = Math.sqrt(3);

  @Test
  void aSumOfNormalNumbersHasTheRootOfTheSumOfSquares() {
    List<Double> around = List.of(1.96, 3.92, 0.98, 7.84);
    OutputBudget y = FourNumbers.SUM.budget("normal", ONES, around, "");
    // Equation 10 with all sensitivities 1 and standard uncertainties 1, 2, 0.5 and 4.
    double expected = Math.sqrt(1 + 4 + 0.25 + 16) * 1.96 / 1.959963984540054;
    assertEquals(4, y.stated());
    assertEquals(4, y.mean(), 0.01);
    assertEquals(expected, y.deviation(), 0.01 * expected);
    // 90 of 100 lie within 1.645 standard deviations.
    assertEquals(4 - 1.6449 * expected, y.p5(), 0.03 * expected);
    assertEquals(4 + 1.6449 * expected, y.p95(), 0.03 * expected);
    assertEquals(4, y.p50(), 0.03 * expected);
  }

  /** JCGM 101, 9.2.2 and 9.2.3: four standard uncertainties of 1 make 2; the limits are exact ones. */
  @Test
  void aSumOfFourRectangularNumbersHasNarrowerLimitsThanANormalOne() {
    List<Double> around = List.of(ROOT_3, ROOT_3, ROOT_3, ROOT_3);
    OutputBudget y = FourNumbers.SUM.budget("uniform", ZEROS, around, "");
    assertEquals(2, y.deviation(), 0.02);
    // The lower tail of a sum of four on 0 to 1 is x⁴/24 up to 1: 5 of 100 lie below the root of
    // 1.2.
    double limit = 2 * ROOT_3 * (2 - Math.pow(1.2, 0.25));
    assertEquals(3.303, limit, 0.001);
    assertEquals(-limit, y.p5(), 0.06);
    assertEquals(limit, y.p95(), 0.06);
  }

  @Test
  void aTriangularNumberHasASixthOfTheSquaredTolerance() {
    List<Double> around = List.of(6.0, 1e-9, 1e-9, 1e-9);
    OutputBudget y = FourNumbers.SUM.budget("triangular", ZEROS, around, "");
    assertEquals(6 / Math.sqrt(6), y.deviation(), 0.01);
  }

  /** Equation 12: of a product the relative uncertainties add in squares, while they are small. */
  @Test
  void aProductHasTheRootOfTheSumOfSquaredRelativeOnes() {
    List<Double> numbers = List.of(20.0, 5.0, 0.5, 4.0);
    List<Double> around = List.of(0.392, 0.049, 0.0196, 0.0784);
    OutputBudget y = FourNumbers.PRODUCT.budget("normal", numbers, around, "");
    double relative = Math.sqrt(0.01 * 0.01 + 0.005 * 0.005 + 0.02 * 0.02 + 0.01 * 0.01);
    assertEquals(200, y.mean(), 0.1);
    assertEquals(200 * relative, y.deviation(), 0.01 * 200 * relative);
    assertEquals("c", y.drivers().get(0).input());
    // Known exactly, the first one leaves the others: 0.015 of 200.
    assertEquals(200 * 0.015, y.drivers().get(0).deviationLeft(), 0.1);
  }

  /** Equation 16: what is fully correlated adds up as it is, and not in squares. */
  @Test
  void whatMovesTogetherAddsUp() {
    List<Double> around = List.of(1.96, 1.96, 1.96, 1.96);
    OutputBudget together = FourNumbers.SUM.budget("normal", ZEROS, around, ",\"group\":\"all\"");
    assertEquals(4, together.deviation(), 0.04);
    assertEquals(1, together.drivers().size());
    assertEquals("all", together.drivers().get(0).input());
    assertEquals(1, together.drivers().get(0).rankCorrelation().value(), 1e-9);
    OutputBudget apart = FourNumbers.SUM.budget("normal", ZEROS, around, "");
    assertEquals(2, apart.deviation(), 0.02);
    assertEquals(4, apart.drivers().size());
    assertTrue(apart.drivers().stream().allMatch(one -> one.rank() == 1), apart::toString);
  }

  /** A level is the sum of a sensitivity and ten times the logarithm of a power. */
  @Test
  void aLevelFollowsEquationTenToo() {
    OutputBudget level =
        Asking.of(
                "sound-level",
                """
                {"request": {"driver": {"rated_ohm": 4, "sensitivity": {"level_db_spl": 90,
                 "basis": "one_watt"}}, "power_w": 50}, "outputs": ["level_db_spl"],
                 "inputs": [{"path": "/driver/sensitivity/level_db_spl", "plus_minus": 1.5},
                 {"path": "power_w", "plus_minus_percent": 10, "distribution": "uniform"}]}
                """)
            .result()
            .outputs()
            .get(0);
    double ofPower = 10 / Math.log(10) * 0.1 / ROOT_3;
    double expected = Math.sqrt(Math.pow(1.5 / 1.96, 2) + ofPower * ofPower);
    assertEquals(expected, level.deviation(), 0.01 * expected);
  }
}
