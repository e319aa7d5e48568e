package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;

/**
 * How far what was measured is usually from what a plan predicts where nothing is wrong: standard
 * deviations, with the model's own. The usual ones are common practice, no source.
 */
public record MeasuringErrors(
    @Schema(description = "Of a level at a seat, dB") @DecimalMin("0.1") @DecimalMax("20")
        Double levelErrorDb,
    @Schema(description = "Of a point of a response, its mean taken off, dB")
        @DecimalMin("0.1")
        @DecimalMax("20")
        Double responseErrorDb,
    @Schema(description = "Of a DC resistance with its leads, as a ratio")
        @DecimalMin("0.005")
        @DecimalMax("0.5")
        Double meterError,
    @Schema(description = "Of an impedance at a frequency, as a ratio")
        @DecimalMin("0.005")
        @DecimalMax("0.5")
        Double impedanceError,
    @Schema(description = "Of an arrival, ms") @DecimalMin("0.005") @DecimalMax("20")
        Double arrivalErrorMs,
    @Schema(description = "Share of the polarities that are found wrong")
        @DecimalMin("0.0001")
        @DecimalMax("0.4")
        Double polarityWrong,
    @Schema(description = "Of the drop from battery to amplifier, V")
        @DecimalMin("0.001")
        @DecimalMax("5")
        Double dropErrorV) {

  public MeasuringErrors {
    levelErrorDb = levelErrorDb == null ? Double.valueOf(1.5) : levelErrorDb;
    responseErrorDb = responseErrorDb == null ? Double.valueOf(2) : responseErrorDb;
    meterError = meterError == null ? Double.valueOf(0.1) : meterError;
    impedanceError = impedanceError == null ? Double.valueOf(0.15) : impedanceError;
    arrivalErrorMs = arrivalErrorMs == null ? Double.valueOf(0.3) : arrivalErrorMs;
    polarityWrong = polarityWrong == null ? Double.valueOf(0.002) : polarityWrong;
    dropErrorV = dropErrorV == null ? Double.valueOf(0.05) : dropErrorV;
  }

  /** Those of a tape measure, a hand-held meter and a microphone in a vehicle. */
  static MeasuringErrors usual() {
    return new MeasuringErrors(null, null, null, null, null, null, null);
  }
}
