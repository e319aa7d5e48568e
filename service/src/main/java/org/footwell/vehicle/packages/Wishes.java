package org.footwell.vehicle.packages;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.Money;

/** What the customer wants. */
@Built
@Unique("keep.*")
@Unique("importance.*")
public record Wishes(
    @Schema(description = "Most that everything new may cost, extras of the plan included")
        @DecimalMin("0")
        @DecimalMax("10000000")
        @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST)
        BigDecimal budget,
    @Schema(
            description =
                "Level of all channels together at the main seat that the package shall reach with the"
                    + " programme, dB SPL")
        @DecimalMin("60")
        @DecimalMax("150")
        Double levelDbSpl,
    @Schema(description = "Frequency down to which it shall play, Hz: 3 dB below its loudest")
        @DecimalMin("20")
        @DecimalMax("1000")
        Double lowestHz,
    @Schema(description = "Most the vehicle may become heavier, g; negative for lighter")
        @DecimalMin("-1000000")
        @DecimalMax("10000000")
        Double massChangeG,
    @Schema(description = "Names of slots whose parts stay") @Size(max = 4)
        List<@NotNull @Size(min = 1, max = 40) String> keep,
    @Schema(
            description =
                "What matters, the most important first; what is left out matters least. It orders the"
                    + " packages and decides which are listed, not which there are")
        @Size(max = 4)
        List<@NotNull Aim> importance,
    @Schema(description = "How many new amplifiers may come in at most") @Min(0) @Max(3)
        Integer newAmplifierCount) {

  public Wishes {
    keep = keep == null ? List.of() : keep;
    importance = importance == null ? List.of() : importance;
    newAmplifierCount = newAmplifierCount == null ? Integer.valueOf(2) : newAmplifierCount;
  }

  /** None in particular. */
  static Wishes none() {
    return WishesBuilder.builder().build();
  }
}
