package org.footwell.signal;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;

/** How a device holds its coefficients. */
public record CoefficientFormat(
    @Schema(description = "Kind of number") @NotNull Kind kind,
    @Schema(
            description =
                "Bits of a fixed-point word, its sign included; needed for fixed, of no effect on"
                    + " the others")
        @Min(8)
        @Max(53)
        Integer wordBits,
    @Schema(
            description =
                "Bits of it after the binary point; needed for fixed. A word of 24 bits with 22 of"
                    + " them reaches from −2 to just below 2 in steps of 2^−22")
        @Min(0)
        @Max(52)
        Integer fractionBits) {

  /** Kinds of number. */
  public enum Kind {
    /** Floating point of 64 bits: as calculated. */
    DOUBLE,
    /** Floating point of 32 bits. */
    FLOAT32,
    /** Fixed point, two's complement. */
    FIXED
  }

  /** Nothing is rounded. */
  public static CoefficientFormat asCalculated() {
    return new CoefficientFormat(Kind.DOUBLE, null, null);
  }

  /** Whether anything is rounded. */
  public boolean rounds() {
    return kind != Kind.DOUBLE;
  }

  /** A section with every coefficient rounded to the nearest, held at the ends of the range. */
  public Biquad rounded(Biquad exact) {
    return new Biquad(
        rounded(exact.b0()),
        rounded(exact.b1()),
        rounded(exact.b2()),
        rounded(exact.a1()),
        rounded(exact.a2()));
  }

  /** Whether the range reaches as far as every coefficient of a section. */
  public boolean holds(Biquad exact) {
    return holds(exact.b0())
        && holds(exact.b1())
        && holds(exact.b2())
        && holds(exact.a1())
        && holds(exact.a2());
  }

  /** Largest number it holds: 2^(word − 1 − fraction) − 2^−fraction for a fixed-point word. */
  public double highest() {
    return switch (kind) {
      case DOUBLE -> Double.MAX_VALUE;
      case FLOAT32 -> Float.MAX_VALUE;
      case FIXED -> Math.scalb(1.0, wordBits - 1 - fractionBits) - step();
    };
  }

  /** Smallest difference between two numbers of a fixed-point word. */
  private double step() {
    return Math.scalb(1.0, -fractionBits);
  }

  private double lowest() {
    return kind == Kind.FIXED ? -highest() - step() : -highest();
  }

  private boolean holds(double value) {
    double near = kind == Kind.FIXED ? nearest(value) : value;
    return near >= lowest() && near <= highest();
  }

  private double rounded(double value) {
    return switch (kind) {
      case DOUBLE -> value;
      case FLOAT32 -> (float) value;
      case FIXED -> Math.min(highest(), Math.max(lowest(), nearest(value)));
    };
  }

  private double nearest(double value) {
    return Math.rint(value / step()) * step();
  }
}
