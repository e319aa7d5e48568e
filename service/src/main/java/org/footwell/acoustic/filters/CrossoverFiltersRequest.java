package org.footwell.acoustic.filters;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.RefersTo;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.EvenOrder;
import org.footwell.parts.Filter;
import org.footwell.signal.CoefficientFormat;
import org.footwell.signal.EqualiserSection;

/** Filters of all ways of a loudspeaker system, to be made as digital sections. */
@Built
@Ascending({"flat_from_hz", "flat_to_hz"})
@Unique("ways.*.id")
@RefersTo(field = "sections.*.channel", to = "ways.*.id")
@Keeps(
    value = EvenOrder.class,
    of = {"ways.*.high_pass", "ways.*.low_pass"})
@Keeps(BelowHalfRate.class)
@Keeps(value = FixedPoint.class, of = "coefficient_format")
@Keeps(InFrontOfWays.class)
public record CrossoverFiltersRequest(
    @Schema(description = "Sample rate, Hz; every frequency must be below half of it")
        @NotNull
        @DecimalMin("8000")
        @DecimalMax("768000")
        Double rateHz,
    @Schema(description = "The ways: outputs whose sound adds up") @NotNull @Size(min = 1, max = 8)
        List<@NotNull Way> ways,
    @Schema(description = "Equaliser and all-pass sections of the ways") @Size(max = 128)
        List<@NotNull EqualiserSection> sections,
    @Schema(description = "How the device holds coefficients; without it nothing is rounded")
        CoefficientFormat coefficientFormat,
    @Schema(
            description =
                "Where the sum is heard; without it the signals are added as they are, as from one"
                    + " place")
        Listening listening,
    @Schema(
            description =
                "Start of the band that should be flat, Hz; without it an octave above the lowest"
                    + " corner of the high-passes or, if a way has none, the start of the range")
        Double flatFromHz,
    @Schema(
            description =
                "End of the band that should be flat, Hz; without it an octave below the highest"
                    + " corner of the low-passes or, if a way has none, the end of the range")
        Double flatToHz,
    @Schema(
            description =
                "Range and points; without it twelfth octaves from 20 Hz to 20 kHz or 0.45 times"
                    + " the sample rate, whichever is lower")
        CurveFrequencies frequencies) {

  private static final double HIGHEST_HZ = 20000;

  public CrossoverFiltersRequest {
    sections = sections == null ? List.of() : sections;
    coefficientFormat =
        coefficientFormat == null ? CoefficientFormat.asCalculated() : coefficientFormat;
    frequencies = frequencies == null ? standard(rateHz) : frequencies;
  }

  private static CurveFrequencies standard(Double rateHz) {
    double to = rateHz == null ? HIGHEST_HZ : Math.min(HIGHEST_HZ, 0.45 * rateHz);
    return new CurveFrequencies(null, null, to, null);
  }

  /** One output. */
  @Built
  public record Way(
      @Schema(description = "Name of the way") @NotNull @Size(min = 1, max = 40) String id,
      @Schema(description = "High-pass; with low_pass a band-pass, each side of its own order")
          Filter highPass,
      @Schema(description = "Low-pass") Filter lowPass,
      @Schema(description = "Gain, dB") @DecimalMin("-60") @DecimalMax("30") Double gainDb,
      @Schema(description = "Delay, ms; need not be a whole number of samples") Double delayMs,
      Integer polarity,
      @Schema(
              description =
                  "Height of its acoustic centre above the reference height, m; needs listening")
          @DecimalMin("-5")
          @DecimalMax("5")
          Double heightM,
      @Schema(
              description =
                  "How far its acoustic centre is behind the plane that the listening distance is"
                      + " counted from, m; needs listening")
          @DecimalMin("-5")
          @DecimalMax("5")
          Double behindM) {

    public Way {
      gainDb = gainDb == null ? Double.valueOf(0) : gainDb;
      delayMs = delayMs == null ? Double.valueOf(0) : delayMs;
      polarity = polarity == null ? Integer.valueOf(1) : polarity;
      heightM = heightM == null ? Double.valueOf(0) : heightM;
      behindM = behindM == null ? Double.valueOf(0) : behindM;
    }
  }

  /** A listener in front. */
  public record Listening(
      @Schema(
              description =
                  "Distance of the listener at the reference height from the plane of the"
                      + " acoustic centres, m")
          @NotNull
          @DecimalMin("0.1")
          @DecimalMax("50")
          Double distanceM,
      @Schema(
              description =
                  "Further heights at that distance, above the reference height, m, at which the"
                      + " sum is wanted")
          @Size(max = 19)
          List<@NotNull @DecimalMin("-20") @DecimalMax("20") Double> heightsM,
      Double temperatureC) {

    public Listening {
      heightsM = heightsM == null ? List.of() : heightsM;
      temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
    }
  }
}
