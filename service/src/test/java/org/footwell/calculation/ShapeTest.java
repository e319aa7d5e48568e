package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.text.Texts;
import org.junit.jupiter.api.Test;

public class ShapeTest {

  public enum Colour {
    LIGHT_BLUE
  }

  public record Coil(
      @Schema(description = "Said here") @NotNull @DecimalMin("0.1") @DecimalMax("100")
          Double ratedOhm,
      @Schema(description = "Said here") @Size(min = 1, max = 5) String name) {}

  public record Request(
      @Schema(description = "Said here") @Size(min = 1, max = 2) List<@NotNull Coil> coils,
      @Schema(description = "Said here") Integer driverCount,
      @Schema(description = "Said here") Boolean bridged,
      @Schema(description = "Said here") Colour colour,
      @Schema(description = "Said here") BigDecimal price,
      @Schema(description = "Said here") Double gainDb) {
    public Request {
      driverCount = driverCount == null ? Integer.valueOf(1) : driverCount;
    }
  }

  public record Nested(@Schema(description = "Said here") List<Request> requests) {}

  private static final Shape<Request> SHAPE = Shape.of(Request.class);

  private static Request bound(Object given, boolean cells) {
    Faults faults = new Faults();
    Request request = SHAPE.bind(given, cells, faults);
    assertEquals(List.of(), faults.list());
    return request;
  }

  private static List<Fault> faults(Object given, boolean cells) {
    Faults faults = new Faults();
    SHAPE.bind(given, cells, faults);
    return faults.list();
  }

  @Test
  void columnsAreTheLeavesWithTheirBoundsAndDefaults() {
    assertEquals(
        List.of(
            "coils.*.rated_ohm",
            "coils.*.name",
            "driver_count",
            "bridged",
            "colour",
            "price",
            "gain_db"),
        SHAPE.columns().stream().map(Shape.Column::path).toList());
    Shape.Column ohm = SHAPE.columns().get(0);
    assertFalse(ohm.required(), "coils may be left out");
    assertEquals("a number from 0.1 to 100", ohm.allowed().toString());
    assertEquals(2, ohm.most());
    assertEquals(1, SHAPE.columns().get(2).standard());
  }

  @Test
  void onlyARequestWithoutGroupsInGroupsIsFlat() {
    assertTrue(SHAPE.flat());
    assertFalse(Shape.of(Nested.class).flat());
  }

  @Test
  void cellsAreReadByTheTypeOfTheirColumn() {
    Request request =
        bound(
            Map.of(
                "coils", Map.of("0", Map.of("rated_ohm", "4"), "1", Map.of("rated_ohm", "2e0")),
                "driver_count", "2",
                "bridged", "true",
                "colour", "light_blue",
                "price", "79.90",
                "gain_db", "-3.5"),
            true);
    assertEquals(
        new Request(
            List.of(new Coil(4.0, null), new Coil(2.0, null)),
            2,
            true,
            Colour.LIGHT_BLUE,
            new BigDecimal("79.90"),
            -3.5),
        request);
  }

  @Test
  void jsonValuesMustHaveTheTypeOfTheirColumn() {
    assertEquals(4.0, bound(Map.of("gain_db", 4), false).gainDb());
    assertEquals(
        List.of("wrong-type"),
        faults(Map.of("gain_db", "4"), false).stream().map(Fault::code).toList());
    assertEquals(
        List.of("wrong-type"),
        faults(Map.of("driver_count", 4.5), false).stream().map(Fault::code).toList());
    assertEquals(
        List.of("wrong-type"),
        faults(Map.of("bridged", 1), false).stream().map(Fault::code).toList());
  }

  @Test
  void whatIsNoFiniteNumberIsRefused() {
    for (String text : List.of("NaN", "Infinity", "1d", "0x10", "1e999", "", " 1", "1_000")) {
      assertEquals(1, faults(Map.of("gain_db", text), true).size(), text);
    }
  }

  @Test
  void aDecimalCommaIsNamed() {
    assertEquals(
        "gain_db must be a number with a decimal point, not a comma.",
        faults(Map.of("gain_db", "3,5"), true).get(0).detail());
  }

  @Test
  void anUnknownFieldIsToldWithTheNearestKnownOne() {
    Fault fault = faults(Map.of("bridgd", true), false).get(0);
    assertEquals("/bridgd", fault.pointer());
    assertEquals("bridgd is not a known field. Did you mean bridged?", fault.detail());
  }

  @Test
  void bracesInTheCallersWordsAreOnlyBraces() {
    Fault fault = faults(Map.of("{field}", true), false).get(0);
    assertEquals("{field} is not a known field.", fault.detail());
  }

  @Test
  void indexesOfARepeatedGroupLeaveNoGap() {
    assertEquals(
        List.of("/coils"),
        faults(Map.of("coils", Map.of("1", Map.of("rated_ohm", "4"))), true).stream()
            .map(Fault::pointer)
            .toList());
  }

  @Test
  void moreEntriesThanAllowedAreToldWithoutLookingAtEach() {
    List<Fault> faults = faults(Map.of("coils", List.of(1, 2, 3)), false);
    assertEquals(1, faults.size());
    assertEquals("coils must be a list of 1 to 2 entries.", faults.get(0).detail());
  }

  @Test
  void formAndBoundsAreToldTogetherAndNoPlaceTwice() {
    Refused refused =
        assertThrows(
            Refused.class,
            () ->
                new Engine()
                    .bind(
                        Coil.class,
                        Map.of("rated_ohm", "x", "name", "far too long", "more", 1),
                        false));
    assertEquals(
        List.of("/more", "/rated_ohm", "/name"),
        refused.faults().stream().map(Fault::pointer).toList());
  }

  @Test
  void aResultIsKnownByItsDottedPaths() {
    assertTrue(SHAPE.has("coils.7.rated_ohm"));
    assertFalse(SHAPE.has("coils.7.ohm"));
    assertNull(Texts.forPeople(null));
  }
}
