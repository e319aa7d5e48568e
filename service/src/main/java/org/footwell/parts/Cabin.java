package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Ascending;

/**
 * The inside of a vehicle: a simple model of its length, or a measured table; what a calculation cannot
 * do without it says at its place.
 */
@Built
@Ascending("transfer.*.frequency_hz")
public record Cabin(
    @Schema(description = "Longest inside dimension, m") @DecimalMin("0.5") @DecimalMax("20")
        Double lengthM,
    Double criticalDistanceM,
    Double gainCapDb,
    @Schema(
            description =
                "Measured level at the seat minus level at 1 m in half space, rising in frequency;"
                    + " straight lines in dB over the logarithm of frequency lie between, and the"
                    + " end values are kept beyond")
        @Size(min = 2, max = 500)
        List<@NotNull TransferPoint> transfer,
    @Schema(
            description =
                "Volume of air in the cabin, m³: what it would add if it were sealed and rigid is"
                    + " then given beside the model or the table")
        @DecimalMin("0.2")
        @DecimalMax("100")
        Double volumeM3) {

  public Cabin {
    criticalDistanceM = criticalDistanceM == null ? Double.valueOf(0.4) : criticalDistanceM;
    gainCapDb = gainCapDb == null ? Double.valueOf(12) : gainCapDb;
  }

  /** One measured frequency. */
  public record TransferPoint(
      @NotNull @DecimalMin("1") @DecimalMax("40000") Double frequencyHz,
      @Schema(description = "Gain at the seat, dB") @NotNull @DecimalMin("-80") @DecimalMax("60")
          Double gainDb) {}
}
