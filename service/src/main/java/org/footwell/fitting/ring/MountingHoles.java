package org.footwell.fitting.ring;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.rule.ExactlyOne;

/** Where screws go: evenly on a circle, or one by one. */
@ExactlyOne({"bolt_circle", "positions"})
public record MountingHoles(
    @Schema(description = "Evenly on a circle") BoltCircle boltCircle,
    @Schema(description = "One by one") @Size(min = 1, max = 16)
        List<@NotNull HolePosition> positions) {

  /** Holes at equal angles. */
  public record BoltCircle(
      @Schema(description = "Number of holes") @NotNull @Min(1) @Max(16) Integer holeCount,
      @Schema(description = "Diameter of the circle through their centres, mm")
          @NotNull
          @DecimalMin("10")
          @DecimalMax("800")
          Double diameterMm,
      @Schema(
              description =
                  "Angle of the first hole, degrees, counter-clockwise from the right as seen from"
                      + " the front: 90 is at the top")
          @DecimalMin("-360")
          @DecimalMax("360")
          Double firstAngleDeg) {

    public BoltCircle {
      firstAngleDeg = firstAngleDeg == null ? Double.valueOf(0) : firstAngleDeg;
    }
  }

  /** Centre of a hole. */
  public record HolePosition(
      @Schema(description = "To the right of the centre as seen from the front, mm")
          @NotNull
          @DecimalMin("-400")
          @DecimalMax("400")
          Double xMm,
      @Schema(description = "Above the centre, mm") @NotNull @DecimalMin("-400") @DecimalMax("400")
          Double yMm) {

    HolePosition turned(double degrees) {
      if (degrees == 0) {
        return this;
      }
      double sine = Math.sin(Math.toRadians(degrees));
      double cosine = Math.cos(Math.toRadians(degrees));
      return new HolePosition(xMm * cosine - yMm * sine, xMm * sine + yMm * cosine);
    }

    double distance(HolePosition other) {
      return Math.hypot(xMm - other.xMm, yMm - other.yMm);
    }
  }

  /** Whether they are either the one or the other. */
  boolean clear() {
    return (boltCircle == null) != (positions == null);
  }

  /** Centres of all holes that are {@linkplain #clear clear}, in order. */
  List<HolePosition> centres() {
    if (positions != null) {
      return positions;
    }
    double radius = boltCircle.diameterMm() / 2;
    double step = 360.0 / boltCircle.holeCount();
    return IntStream.range(0, boltCircle.holeCount())
        .mapToObj(i -> Math.toRadians(boltCircle.firstAngleDeg() + i * step))
        .map(angle -> new HolePosition(radius * Math.cos(angle), radius * Math.sin(angle)))
        .toList();
  }

  /** Turned by so many degrees, the holes are where they were. */
  double periodDeg() {
    return boltCircle == null ? 360 : 360.0 / boltCircle.holeCount();
  }

  /** Where the holes stand in the request, for messages about one of them. */
  String pointer(int hole) {
    return boltCircle == null ? "/positions/" + hole : "/bolt_circle/diameter_mm";
  }
}
