package org.footwell.factory.sum;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.Needs;
import org.footwell.calculation.rule.RefersTo;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.EvenOrder;
import org.footwell.parts.Filter;
import org.footwell.recording.Recording;
import org.footwell.signal.EqualiserSection;

/** Factory outputs that shall be added to one full-range signal. */
@Built
@Ascending({"flat_from_hz", "flat_to_hz"})
@Unique("outputs.*.id")
@RefersTo(field = "sections.*.channel", to = "outputs.*.id")
@RefersTo(field = "points.*.channel", to = "outputs.*.id")
@Unique({"points.*.channel", "points.*.frequency_hz"})
@Needs(field = "outputs.*.clean_output_v", beside = "outputs.*.clean_output_v")
@Keeps(
    value = EvenOrder.class,
    of = {"outputs.*.high_pass", "outputs.*.low_pass"})
@Keeps(OutputsBelowHalfRate.class)
@Keeps(OneResponseEach.class)
@Keeps(SoundResponses.class)
@Keeps(OutputInSum.class)
@Keeps(RisingPoints.class)
public record SignalSumRequest(
    @Schema(description = "The outputs") @NotNull @Size(min = 1, max = 8)
        List<@NotNull Output> outputs,
    @Schema(description = "Equaliser and all-pass sections of outputs described by filters")
        @Size(max = 64)
        List<@NotNull EqualiserSection> sections,
    @Schema(
            description =
                "Measured responses as points, rising for each output; instead of its filters or"
                    + " impulse_response")
        @Size(max = 4000)
        List<@NotNull ResponsePoint> points,
    @Schema(
            description =
                "Sample rate of the factory's processor, Hz, for filters and sections; recordings"
                    + " state their own")
        @DecimalMin("32000")
        @DecimalMax("192000")
        Double rateHz,
    Double flatFromHz,
    Double flatToHz,
    @Schema(
            description =
                "How far the sum may be above or below its median level and still count as flat,"
                    + " dB")
        @DecimalMin("0.1")
        @DecimalMax("20")
        Double toleranceDb,
    @Schema(description = "Points of the answer; without it twelfth octaves from 20 Hz to 20 kHz")
        CurveFrequencies frequencies) {

  public SignalSumRequest {
    sections = sections == null ? List.of() : sections;
    points = points == null ? List.of() : points;
    rateHz = rateHz == null ? Double.valueOf(48_000) : rateHz;
    flatFromHz = flatFromHz == null ? Double.valueOf(40) : flatFromHz;
    flatToHz = flatToHz == null ? Double.valueOf(14_000) : flatToHz;
    toleranceDb = toleranceDb == null ? Double.valueOf(3) : toleranceDb;
    frequencies =
        frequencies == null ? CurveFrequencies.upTo(Math.min(20_000, 0.45 * rateHz)) : frequencies;
  }

  /** One output. Its response is that of its filters, its points or its impulse response. */
  @Built
  public record Output(
      @Schema(description = "Name of the output") @NotNull @Size(min = 1, max = 40) String id,
      @Schema(description = "High-pass in front of the output") Filter highPass,
      @Schema(description = "Low-pass in front of the output") Filter lowPass,
      @Schema(
              description =
                  "Impulse response from the source to the output, all of them with a common start")
          Recording impulseResponse,
      @Schema(
              description =
                  "Further gain, dB: of the output beside its response, or of the summing input")
          @DecimalMin("-60")
          @DecimalMax("30")
          Double gainDb,
      @Schema(description = "Delay of the output beside its response, ms") Double delayMs,
      @Schema(description = "1 as it is, -1 inverted beside its response") Integer polarity,
      @Schema(
              description =
                  "RMS voltage of a full-scale sine at the output in its pass band, where its"
                      + " response is 0 dB, V, at the highest clean volume step, between its two"
                      + " terminals. The responses are then taken as relative to it")
          Double cleanOutputV,
      @Schema(description = "Whether it is connected to the sum now") Boolean connected,
      @Schema(
              description =
                  "Sounds of the vehicle that come out of it; an empty list when it was checked and"
                      + " carries none; absent: unknown")
          @Size(max = 8)
          List<@NotNull VehicleSound> carries) {

    public Output {
      gainDb = gainDb == null ? Double.valueOf(0) : gainDb;
      delayMs = delayMs == null ? Double.valueOf(0) : delayMs;
      polarity = polarity == null ? Integer.valueOf(1) : polarity;
      connected = connected == null ? Boolean.TRUE : connected;
    }
  }

  /** One point of a measured response. */
  public record ResponsePoint(
      @Schema(description = "Id of the output") @NotNull @Size(min = 1, max = 40) String channel,
      @NotNull @DecimalMin("1") @DecimalMax("96000") Double frequencyHz,
      @Schema(description = "Level, dB against what is the same for all outputs")
          @NotNull
          @DecimalMin("-200")
          @DecimalMax("100")
          Double levelDb,
      @Schema(
              description =
                  "Phase against what is the same for all outputs, degrees, wrapped or not; without"
                      + " phase nothing can be added")
          @NotNull
          @DecimalMin("-1000000")
          @DecimalMax("1000000")
          Double phaseDeg) {}

  /** Sounds that come from the vehicle itself. */
  public enum VehicleSound {
    /** Chimes and warnings. */
    CHIME,
    /** Parking aid. */
    PARKING_AID,
    /** Emergency call. */
    EMERGENCY_CALL,
    /** Noise cancelling, or made-up engine sound. */
    NOISE_CANCELLING,
    /** Telephone. */
    TELEPHONE,
    /** Spoken directions. */
    NAVIGATION
  }
}
