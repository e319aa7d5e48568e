package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import java.util.Objects;
import org.footwell.calculation.text.Words;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.FilterPrototype;

/** One side of a crossover: a high-pass or a low-pass of a known kind. */
public record Filter(
    @Schema(description = "Kind of filter") @NotNull Kind kind,
    @Schema(description = "Order: 6 dB per octave each; Linkwitz-Riley has even orders only")
        @NotNull
        @Min(1)
        @Max(8)
        Integer order,
    @Schema(
            description =
                "Corner, Hz: −3.01 dB for Butterworth, −6.02 dB for Linkwitz-Riley, for Bessel as"
                    + " bessel_normalisation says")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("40000")
        Double frequencyHz,
    @Schema(description = "What the corner of a Bessel filter means; other kinds have none")
        BesselNormalisation besselNormalisation) {

  public Filter {
    // A filter of another kind is not answered with what only a Bessel one has.
    besselNormalisation =
        kind != null && kind != Kind.BESSEL
            ? null
            : Objects.requireNonNullElse(besselNormalisation, BesselNormalisation.MAGNITUDE);
  }

  /** A filter by its corner in Hz; a Bessel one is half the power there. */
  public static Filter of(Kind kind, int order, double frequencyHz) {
    return new Filter(kind, order, frequencyHz, null);
  }

  /** Kinds of filter. */
  public enum Kind implements Words {
    /** Flattest pass band. */
    BUTTERWORTH,
    /** Flattest group delay. */
    BESSEL,
    /** Two equal Butterworth filters in a row; low- and high-pass sum flat. */
    LINKWITZ_RILEY
  }

  /** What the corner of a Bessel filter means. */
  public enum BesselNormalisation {
    /** The level is −3.01 dB there. */
    MAGNITUDE,
    /** The phase has turned by 45 degrees per order there, in the low- and the high-pass. */
    PHASE,
    /** The low-pass delays low frequencies by 1/(2·π·corner). */
    DELAY
  }

  /** The corner of a filter in Hz, or null where there is none. */
  public static Double cornerHz(Filter filter) {
    return filter == null ? null : filter.frequencyHz;
  }

  /** Whether such a filter exists. */
  public boolean possible() {
    return kind != Kind.LINKWITZ_RILEY || order % 2 == 0;
  }

  /** The filter as a low-pass. */
  public AnalogFilter lowPass() {
    return prototype().lowPass(frequencyHz);
  }

  /** The filter as a high-pass. */
  public AnalogFilter highPass() {
    return prototype().highPass(frequencyHz);
  }

  private FilterPrototype prototype() {
    return switch (kind) {
      case BUTTERWORTH -> FilterPrototype.butterworth(order);
      case LINKWITZ_RILEY -> FilterPrototype.linkwitzRiley(order);
      case BESSEL -> bessel();
    };
  }

  private FilterPrototype bessel() {
    FilterPrototype asItComes = FilterPrototype.bessel(order);
    return switch (besselNormalisation) {
      case MAGNITUDE -> asItComes.halfPowerAtOne();
      case PHASE -> asItComes.phaseMatchedAtOne();
      case DELAY -> asItComes;
    };
  }
}
