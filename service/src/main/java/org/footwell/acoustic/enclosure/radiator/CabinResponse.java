package org.footwell.acoustic.enclosure.radiator;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;

/** What the vehicle adds at the seat: a simple model of its length, or a measured table. */
public record CabinResponse(
    @Schema(
            description =
                "Longest inside dimension, m. Exactly one of length_m and transfer in a cabin")
        @DecimalMin("0.5")
        @DecimalMax("20")
        Double lengthM,
    @Schema(
            description =
                "Largest low-frequency gain of this cabin, dB; leaks and doors limit it. Of no"
                    + " effect on a table")
        @DecimalMin("0")
        @DecimalMax("40")
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
                "Volume of air in the cabin, m3: what it would add if it were sealed and rigid is"
                    + " then given beside the model or the table")
        @DecimalMin("0.2")
        @DecimalMax("100")
        Double volumeM3) {

  public CabinResponse {
    gainCapDb = gainCapDb == null ? Double.valueOf(12) : gainCapDb;
  }

  /** One measured frequency. */
  public record TransferPoint(
      @NotNull @DecimalMin("1") @DecimalMax("40000") Double frequencyHz,
      @Schema(description = "Gain at the seat, dB") @NotNull @DecimalMin("-80") @DecimalMax("60")
          Double gainDb) {}
}
