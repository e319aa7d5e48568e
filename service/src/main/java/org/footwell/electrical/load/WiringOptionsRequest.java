package org.footwell.electrical.load;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.electrical.amplifier.DescribedAmplifier;

/** Coils that must all be used on one channel, and what the channel accepts. */
@Built
public record WiringOptionsRequest(
    @Schema(
            description =
                "The coils, all of which are used: up to 8 of one rated impedance, or up to 6 in"
                    + " all when they differ. Coils of the same rated impedance are equals")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull Coils> coils,
    @Schema(description = "Loads the channel accepts") @NotNull Window window,
    @Schema(description = "Whether the network hangs between two channels") Boolean bridged,
    @Schema(
            description =
                "What drives the network, for its clean power; without it lower loads rank before"
                    + " higher ones")
        DescribedAmplifier amplifier,
    @Schema(description = "How many of the networks to list, the best first") @Min(1) @Max(100)
        Integer listCount) {

  public WiringOptionsRequest {
    bridged = bridged == null ? Boolean.FALSE : bridged;
    listCount = listCount == null ? Integer.valueOf(10) : listCount;
  }

  /** One coil, or several alike. */
  public record Coils(
      @Schema(
              description =
                  "Name for the networks: a letter, then letters, digits and _ - . without spaces;"
                      + " several alike get _1, _2 ... behind it. Without a name the networks show"
                      + " the impedance")
          @Size(min = 1, max = 37)
          @Pattern(regexp = WiringLoadRequest.NAME)
          String name,
      @Schema(description = "Rated impedance of each of these coils, ohm") @NotNull Double ratedOhm,
      @Schema(description = "How many coils these are; a driver with two voice coils is two")
          Integer coilCount) {

    public Coils {
      coilCount = coilCount == null ? Integer.valueOf(1) : coilCount;
    }
  }

  /** The loads a channel accepts, rated impedances. */
  public record Window(
      @Schema(
              description =
                  "Smallest rated load of one channel not bridged, ohm; may be left out only when"
                      + " bridged with minimum_bridged_ohm")
          Double minimumOhm,
      Double minimumBridgedOhm,
      @Schema(description = "Largest load wanted as connected, ohm; absent: any")
          @DecimalMin("0.1")
          @DecimalMax("8000")
          Double maximumOhm) {}
}
