package org.footwell.recording;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Series;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needs;

/** One channel of a recording: its samples, or the file that holds them. */
@ExactlyOne({"samples", "wav"})
@Needs(field = "samples", beside = "rate_hz")
@Needs(field = "channel", beside = "wav")
public record Recording(
    @Schema(
            description =
                "Sample rate, Hz; with samples only, since a WAV file states its own. 8 kHz is"
                    + " enough for a subwoofer alone")
        @DecimalMin("8000")
        @DecimalMax("192000")
        Double rateHz,
    @ArraySchema(
            arraySchema =
                @Schema(description = "The samples, read in single precision; full scale is 1"),
            schema = @Schema(minimum = "-1000", maximum = "1000"),
            minItems = RecordingRules.FEWEST_SAMPLES,
            maxItems = RecordingRules.MOST_SAMPLES)
        Series samples,
    @Schema(
            description =
                "Name of the part of a multipart/form-data request that holds the WAV file:"
                    + " integers of 16, 24 or 32 bits or floating point of 32 bits, 44.1"
                    + " to 192 kHz, one or several channels")
        @Size(min = 1, max = 60)
        String wav,
    @Schema(description = "Which channel of the WAV file, from 0") @Min(0) @Max(63)
        Integer channel) {

  /** A recording of samples. */
  public static Recording of(double rateHz, float... samples) {
    return new Recording(rateHz, Series.of(samples), null, null);
  }
}
