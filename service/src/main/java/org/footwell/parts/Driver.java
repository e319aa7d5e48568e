package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Ascending;

/**
 * A loudspeaker driver, as far as it is known, one and the same in every request: what a calculation
 * cannot do without it says at its place.
 */
@Built
@Ascending({"lower_limit_hz", "upper_limit_hz"})
public record Driver(
    @Schema(description = "What the driver is called") @Size(max = 100) String name,
    Double ratedOhm,
    Double reOhm,
    Double leMh,
    Double leAtHz,
    Double leExponent,
    Double fsHz,
    Double qms,
    Double qes,
    Double qts,
    Double vasL,
    Double sdCm2,
    Double xmaxMm,
    Sensitivity sensitivity,
    Double continuousPowerW,
    Double peakPowerW,
    Double lowerLimitHz,
    Double upperLimitHz,
    Double massG,
    @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST) BigDecimal price) {

  public Driver {
    leAtHz = leAtHz == null ? Double.valueOf(1000) : leAtHz;
    leExponent = leExponent == null ? Double.valueOf(1) : leExponent;
    price = Money.plain(price);
  }

  /** Whether it is known how far the cone may move, and how much air that is. */
  public boolean displacementKnown() {
    return sdCm2 != null && xmaxMm != null;
  }
}
