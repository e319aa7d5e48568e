package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.Source;
import org.footwell.calculation.rule.Ascending;
import org.footwell.physics.OctaveFractions;

/** The frequencies a curve is wanted at, and the range its extremes are looked for in. */
@Built
@Ascending({"from_hz", "to_hz"})
@Ascending("list_hz.*")
@Keeps(PointsInRange.class)
public record CurveFrequencies(
    @Schema(
            description =
                "Spacing of the points within the range; of no effect when list_hz is given")
        Spacing spacing,
    @Schema(
            description =
                "Start of the range, Hz: extremes are looked for in it and, unless listed, points"
                    + " lie in it. For a rated impedance it is the rated frequency range")
        @DecimalMin("1")
        @DecimalMax("100000")
        Double fromHz,
    @Schema(description = "End of the range, Hz") @DecimalMin("1") @DecimalMax("100000")
        Double toHz,
    @Schema(description = "The points instead, Hz, rising; they may lie outside the range")
        @Size(min = 1, max = 2000)
        List<@NotNull @DecimalMin("1") @DecimalMax("100000") Double> listHz) {

  public static final Source IEC_61260_1 =
      Source.of(
          "IEC 61260-1:2014, Octave-band and fractional-octave-band filters: exact mid-band"
              + " frequencies, base ten; nominal ones in ISO 266:1997");

  public CurveFrequencies {
    spacing = spacing == null ? Spacing.TWELFTH_OCTAVE : spacing;
    fromHz = fromHz == null ? Double.valueOf(20) : fromHz;
    toHz = toHz == null ? Double.valueOf(20000) : toHz;
  }

  /** Exact mid-band frequencies of IEC 61260, base ten. */
  public enum Spacing {
    /** Three in an octave: 1000 Hz is one of them. */
    THIRD_OCTAVE(3),
    /** Twelve in an octave: 1000 Hz is the edge between two of them. */
    TWELFTH_OCTAVE(12);

    private final int perOctave;

    Spacing(int perOctave) {
      this.perOctave = perOctave;
    }

    /** The x-th mid-band frequency, Hz. */
    public double midBandHz(int x) {
      return OctaveFractions.midBandHz(x, perOctave);
    }
  }

  /** The default range and spacing. */
  public static CurveFrequencies standard() {
    return new CurveFrequencies(null, null, null, null);
  }

  /** Twelfth octaves up to a frequency in Hz, from where they always start. */
  public static CurveFrequencies upTo(double toHz) {
    return new CurveFrequencies(null, null, toHz, null);
  }

  /** Twelfth octaves of a range in Hz. */
  public static CurveFrequencies range(double fromHz, double toHz) {
    return new CurveFrequencies(null, fromHz, toHz, null);
  }

  /** These frequencies in Hz, rising. */
  public static CurveFrequencies only(double... hz) {
    return new CurveFrequencies(null, null, null, Arrays.stream(hz).boxed().toList());
  }

  /** The points in Hz. */
  public double[] points() {
    if (listHz != null) {
      return listHz.stream().mapToDouble(Double::doubleValue).toArray();
    }
    // The range bounds of 1 Hz to 100 kHz lie within ten octaves below and seven above 1 kHz.
    return IntStream.rangeClosed(-10 * spacing.perOctave, 7 * spacing.perOctave)
        .mapToDouble(spacing::midBandHz)
        .filter(f -> f >= fromHz && f <= toHz)
        .toArray();
  }
}
