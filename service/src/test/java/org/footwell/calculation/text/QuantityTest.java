package org.footwell.calculation.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths, areas and volumes with their units. */
class QuantityTest {

  /** Factors of NIST Special Publication 811 (2008), appendix B.8: exact, in bold type there. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '|',
      value = {
        "depth_mm, 1 in, 25.4",
        "depth_mm, 3.5in, 88.9",
        "depth_mm, 3 1/2 in, 88.9",
        "depth_mm, 3-1/2 in, 88.9",
        "depth_mm, 5/8 in, 15.875",
        "depth_mm, -1/8 in, -3.175",
        "depth_mm, 9 cm, 90",
        "depth_mm, 90 mm, 90",
        "depth_mm, 3 1/2\", 88.9",
        "distance_m, 1 ft, 0.3048",
        "distance_m, 12 ft, 3.6576",
        "x_m, -10 in, -0.254",
        "longest_cm, 2 ft, 60.96",
        "sd_cm2, 1 in², 6.4516",
        "sd_cm2, 20 in2, 129.032",
        "volume_l, 1 ft3, 28.316846592",
        "volume_cm3, 1 in3, 16.387064",
        "volume_l, 500 in³, 8.193532",
        "drivers/0/depth_mm, 2 in, 50.8",
      })
  void isExactInTheUnitOfItsField(String name, String text, double expected) {
    assertEquals(expected, Quantity.read(name, text));
  }

  /** Cross-sections of ASTM B258, table 1, as they are rounded there. */
  @ParameterizedTest
  @CsvSource({
    "4 AWG, 21.2",
    "8 AWG, 8.37",
    "10 awg, 5.26",
    "12AWG, 3.31",
    "18 AWG, 0.823",
    "0 AWG, 53.5",
    "1/0 AWG, 53.5",
    "2/0 AWG, 67.4",
    "00 AWG, 67.4",
    "4/0 AWG, 107",
    "0000 AWG, 107"
  })
  void aGaugeIsItsCrossSection(String text, double tabled) {
    double area = Quantity.read("area_mm2", text);
    assertEquals(tabled, area, tabled * 0.005);
  }

  @ParameterizedTest
  @ValueSource(strings = {"8.37", "21.15", "53.5", "107.2"})
  void anAreaThatIsAGaugeHasItsName(double areaMm2) {
    String name = WireGauge.nameOf(areaMm2).orElseThrow();
    assertEquals(areaMm2, Quantity.read("area_mm2", name + " AWG"), areaMm2 * 0.005);
    assertEquals(WireGauge.nameOf(10), WireGauge.nameOf(25), "metric sizes are none");
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '|',
      value = {
        "depth_mm, 3 lb",
        "depth_mm, 3 in²",
        "depth_mm, 3",
        "depth_mm, in",
        "depth_mm, 1/0 in",
        "depth_mm, 3 1/2 1/2 in",
        "depth_mm, 1e3 in",
        "depth_mm, ٣ in",
        "depth_mm, 12345678901234567890 in",
        "depth_mm, 4 AWG",
        "area_mm2, 41 AWG",
        "area_mm2, 5/0 AWG",
        "area_mm2, 00000 AWG",
        "power_w, 3 in",
        "price_per_m, 3 ft",
        "driven_in, 3 in",
      })
  void whatIsNoneOfTheKindIsNothing(String name, String text) {
    assertNull(Quantity.read(name, text));
  }

  @Test
  void isShownInInchesToThoseWhoWantThem() {
    Reader.Units inch = Reader.Units.named("inch").orElseThrow();
    assertEquals(Measure.IN, inch.of(Measure.MM));
    assertEquals(3.5, Quantity.converted(Measure.MM, 88.9, inch.of(Measure.MM)));
    assertEquals(6, Quantity.converted(Measure.M, 1.8288, inch.of(Measure.M)));
    assertEquals(Measure.W, inch.of(Measure.W));
    assertEquals(Measure.MM, Reader.Units.METRIC.of(Measure.MM));
  }
}
