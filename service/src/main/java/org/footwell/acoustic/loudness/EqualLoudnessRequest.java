package org.footwell.acoustic.loudness;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Ascending;

/** A level the balance was tuned at, and one it is listened to at. */
@Ascending(
    value = {"from_hz", "to_hz"},
    orEqual = true)
@Keeps(ContoursInRange.class)
public record EqualLoudnessRequest(
    @Schema(
            description =
                "Loudness level the balance was tuned at, phon: the level in dB SPL of a 1 kHz tone"
                    + " that is as loud")
        @NotNull
        @DecimalMin("20")
        @DecimalMax("90")
        Double tunedPhon,
    @Schema(description = "Loudness level it is listened to at, phon")
        @NotNull
        @DecimalMin("20")
        @DecimalMax("90")
        Double listeningPhon,
    @Schema(description = "Lowest third octave wanted, Hz") @DecimalMin("20") @DecimalMax("12500")
        Double fromHz,
    @Schema(description = "Highest third octave wanted, Hz") @DecimalMin("20") @DecimalMax("12500")
        Double toHz,
    @Schema(description = "Largest lift or cut that is advised, dB")
        @DecimalMin("0")
        @DecimalMax("40")
        Double capDb) {

  public EqualLoudnessRequest {
    fromHz = fromHz == null ? Double.valueOf(20) : fromHz;
    toHz = toHz == null ? Double.valueOf(1000) : toHz;
    capDb = capDb == null ? Double.valueOf(12) : capDb;
  }
}
