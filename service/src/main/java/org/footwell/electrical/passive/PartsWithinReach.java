package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.NetworkFault.PART_OUT_OF_REACH;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.Shape;
import org.footwell.calculation.text.Allowed;
import org.footwell.electrical.passive.PassiveFilterResult.Part;
import org.footwell.electrical.passive.PassiveFilterResult.Purpose;
import org.footwell.parts.LadderElement;

/** Parts come out that a network can have, so that the answer can be asked about in its turn. */
@Check.Of(
    value = {
      "load_ohm",
      "high_pass",
      "low_pass",
      "pad_db",
      "compensate",
      "driver.re_ohm",
      "driver.le_mh",
      "driver.le_exponent",
      "driver.le_at_hz",
      "series"
    },
    says =
        "The parts, and the preferred values nearest to them, are within the bounds of the elements"
            + " of passive-network.")
final class PartsWithinReach implements Check<PassiveFilterRequest> {

  private static final Map<String, Shape.Field> FIELDS =
      Shape.of(LadderElement.class).fields().stream()
          .collect(Collectors.toUnmodifiableMap(Shape.Field::name, Function.identity()));

  private static final List<Kind> KINDS =
      List.of(
          new Kind(
              PassiveWords.CAPACITOR,
              FIELDS.get("capacitance_uf"),
              "µF",
              Part::capacitanceUf,
              Part::nearestUf),
          new Kind(
              PassiveWords.COIL,
              FIELDS.get("inductance_mh"),
              "mH",
              Part::inductanceMh,
              Part::nearestMh),
          new Kind(
              PassiveWords.RESISTOR,
              FIELDS.get("resistance_ohm"),
              "ohm",
              Part::resistanceOhm,
              Part::nearestOhm));

  /** A kind of part: what it may be, and where its value stands. */
  private record Kind(
      PassiveWords name,
      Shape.Field bounds,
      String unit,
      Function<Part, Double> calculated,
      Function<Part, Double> nearest) {

    boolean outOfReach(Part part) {
      return outside(calculated.apply(part)) || outside(nearest.apply(part));
    }

    private boolean outside(Double value) {
      return value != null
          && (value < bounds.least().doubleValue() || value > bounds.most().doubleValue());
    }
  }

  @Override
  public void check(PassiveFilterRequest q, Refusing to) {
    if (!PassiveOrder.kept(q.highPass())
        || !PassiveOrder.kept(q.lowPass())
        || !CompensatedDriver.kept(q)) {
      return;
    }
    Set<Purpose> refused = EnumSet.noneOf(Purpose.class);
    for (Part part : PassiveFilter.parts(q, Arithmetic.SILENT).list()) {
      for (Kind kind : KINDS) {
        if (kind.outOfReach(part) && refused.add(part.purpose())) {
          to.refuse(PART_OUT_OF_REACH)
              .at(asked(part.purpose()))
              .allowed(
                  Allowed.between(
                      kind.bounds().least().doubleValue(),
                      kind.bounds().most().doubleValue(),
                      kind.unit()))
              .with("part", kind.name())
              .with("size", kind.calculated().apply(part));
        }
      }
    }
  }

  /** What of a request makes parts of a purpose. */
  private static String asked(Purpose purpose) {
    return switch (purpose) {
      case HIGH_PASS -> "/high_pass/frequency_hz";
      case LOW_PASS -> "/low_pass/frequency_hz";
      case PAD -> "/pad_db";
      case COMPENSATION -> "/compensate";
    };
  }
}
