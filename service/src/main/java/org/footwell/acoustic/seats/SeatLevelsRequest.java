package org.footwell.acoustic.seats;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.RefersTo;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.Cabin;
import org.footwell.parts.Seat;

/**
 * Sources, seats and what is wanted there. Either every source and seat has a position, or there is
 * a distance for every source and seat.
 */
@Needed({
  "sources.*.driver.sensitivity",
  "sources.*.driver.rated_ohm",
  "seats.*.name",
  "cabin.length_m"
})
@AtMostOne({"distances", "sources.*.position"})
@AtMostOne({"distances", "seats.*.position"})
@AtMostOne({"distances", "seats.*.left_ear"})
@AtMostOne({"target", "tilt"})
@Unique("sources.*.name")
@Unique("seats.*.name")
@Unique({"distances.*.source", "distances.*.seat"})
@RefersTo(field = "distances.*.source", to = "sources.*.name")
@RefersTo(field = "distances.*.seat", to = "seats.*.name")
@RefersTo(field = "reference_seat", to = "seats.*.name")
@Ascending("target.*.frequency_hz")
@Ascending(
    value = {"from_hz", "to_hz"},
    orEqual = true)
@Built
@Keeps(BandsInRange.class)
@Keeps(TargetInBands.class)
@Keeps(SourcesPlaced.class)
@Keeps(SourceDistances.class)
public record SeatLevelsRequest(
    @Schema(description = "Sources that play the same signal, each through its own channel")
        @NotNull
        @Size(min = 1, max = 16)
        List<@NotNull SoundSource> sources,
    @Schema(description = "Who listens; the first is the reference unless reference_seat says")
        @NotNull
        @Size(min = 1, max = 8)
        List<@NotNull Seat> seats,
    @Schema(description = "Distances, one for every source and seat; instead of positions")
        @Size(min = 1, max = 128)
        List<@NotNull SeatDistance> distances,
    @Schema(
            description =
                "When the seats are inside a cabin; otherwise half space. Its length, critical"
                    + " distance and gain cap count here, not a measured table")
        Cabin cabin,
    Double temperatureC,
    @Schema(description = "Lowest third octave, Hz") @DecimalMin("10") @DecimalMax("20000")
        Double fromHz,
    @Schema(description = "Highest third octave, Hz") @DecimalMin("10") @DecimalMax("20000")
        Double toHz,
    Double incoherentAboveHz,
    @Schema(
            description =
                "Target curve: third-octave levels, straight between the points over the logarithm"
                    + " of frequency; no target outside them")
        @Size(min = 2, max = 100)
        List<@NotNull TargetPoint> target,
    @Schema(description = "A straight target instead") Tilt tilt,
    @Schema(description = "Seat that the largest level in the target's shape is set for")
        @Size(min = 1, max = 60)
        String referenceSeat,
    @Schema(description = "Peak over RMS of the programme in the target's shape, dB")
        Double crestFactorDb) {

  public SeatLevelsRequest {
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
    fromHz = fromHz == null ? Double.valueOf(20) : fromHz;
    toHz = toHz == null ? Double.valueOf(20_000) : toHz;
    incoherentAboveHz = incoherentAboveHz == null ? Double.valueOf(300) : incoherentAboveHz;
    crestFactorDb = crestFactorDb == null ? Double.valueOf(12) : crestFactorDb;
  }

  /** One measured distance. */
  public record SeatDistance(
      @Schema(description = "Name of the source") @NotNull @Size(min = 1, max = 60) String source,
      @Schema(description = "Name of the seat") @NotNull @Size(min = 1, max = 60) String seat,
      @NotNull Double distanceM) {}

  /** One point of the target curve. */
  public record TargetPoint(
      @Schema(description = "Frequency, Hz, rising from point to point")
          @NotNull
          @DecimalMin("5")
          @DecimalMax("40000")
          Double frequencyHz,
      @Schema(description = "Level of the third octave there, dB SPL")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("170")
          Double levelDbSpl) {}

  /** A target that falls or rises evenly. */
  public record Tilt(
      @Schema(description = "Level of the third octave at 1 kHz, dB SPL")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("160")
          Double levelDbSpl,
      @Schema(description = "Change per octave upward, dB: negative falls towards the treble")
          @NotNull
          @DecimalMin("-12")
          @DecimalMax("12")
          Double slopeDbPerOctave) {}
}
