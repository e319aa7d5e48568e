package org.footwell.fitting.comparison.sides;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import org.footwell.calculation.Built;
import org.footwell.parts.Money;
import org.footwell.parts.Sensitivity;

/** One driver by its data sheet or by measurement; what is not known is left out. */
@Built
public record ComparedDriver(
    @Schema(description = "What it is called") @Size(min = 1, max = 80) String name,
    @Schema(description = "Rated impedance as wired, all its voice coils together, ohm") @NotNull
        Double ratedOhm,
    @Schema(description = "Sensitivity, all voice coils driven") Sensitivity sensitivity,
    @Schema(description = "Power the driver bears continuously, W") Double continuousPowerW,
    Double peakPowerW,
    Double sdCm2,
    @Schema(
            description =
                "Travel of the cone from rest to one side, mm. Take both parts alike: geometric or"
                    + " by distortion")
        Double xmaxMm,
    @Schema(description = "Resonance, Hz: in free air or in its box, for both parts alike")
        Double fsHz,
    @Schema(
            description =
                "Frequency where its response in place is 3 dB down, Hz. Counts instead of fs_hz"
                    + " when both parts have it")
        @DecimalMin("1")
        @DecimalMax("20000")
        Double f3Hz,
    @Schema(description = "Mass of one driver, g") Double massG,
    @Schema(
            description =
                "Price of one driver; 0 when the customer owns it, left out when it is not known."
                    + " At most four decimals, one currency throughout")
        @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST)
        BigDecimal price) {

  public ComparedDriver {
    price = Money.plain(price);
  }

  /** What decides whether displacement can be judged. */
  public boolean displacementKnown() {
    return sdCm2 != null && xmaxMm != null;
  }
}
