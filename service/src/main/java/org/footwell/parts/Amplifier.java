package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import org.footwell.calculation.Built;

/**
 * An amplifier by one of its outputs, as its maker describes it, one and the same in every request:
 * what a calculation cannot do without it says at its place, and so does how it is connected.
 */
@Built
public record Amplifier(
    @Schema(description = "What the amplifier is called") @Size(max = 100) String name,
    @Schema(description = "One output by its rails") Rails rails,
    @Schema(
            description =
                "One output by its published powers, or with bridged two of them, where the maker"
                    + " states no others")
        Ratings ratings,
    @Schema(description = "Published powers of two outputs bridged, beside those of one")
        BridgedRatings bridgedRatings,
    Boolean supplyRegulated,
    Double minimumOhm,
    Double minimumBridgedOhm,
    @Schema(
            description =
                "Output impedance of one output, ohm: the one in the damping factor, not what the"
                    + " supply sags. A bridge has twice that")
        Double outputOhm,
    Double converterEfficiency,
    @Schema(description = "Sum of the fuses in or at the amplifier itself, A") Double fuseA,
    Double massG,
    @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST) BigDecimal price) {

  public Amplifier {
    supplyRegulated = supplyRegulated == null ? Boolean.FALSE : supplyRegulated;
    price = Money.plain(price);
  }

  /** Output impedance as connected, ohm, or null: the halves of a bridge lie in series. */
  public Double outputOhm(boolean bridged) {
    return outputOhm == null ? null : Double.valueOf(bridged ? 2 * outputOhm : outputOhm);
  }
}
