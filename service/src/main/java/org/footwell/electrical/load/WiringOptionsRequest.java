package org.footwell.electrical.load;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Unique;
import org.footwell.electrical.amplifier.ConnectedAmplifier;
import org.footwell.parts.Amplifier;
import org.footwell.parts.VoiceCoil;

/** Coils that must all be used on one channel, and what the channel accepts. */
@Built
@Needed("coils.*.rated_ohm")
@Unique("coils.*.name")
@AtMostOne({"amplifier.rails", "amplifier.ratings"})
@Keeps(value = CoilNames.class, of = "coils")
@Keeps(value = FewCoils.class, of = "coils")
@Keeps(OpenWindow.class)
public record WiringOptionsRequest(
    @Schema(
            description =
                "The coils, all of which are used: up to 8 of one rated impedance, or up to 6 in"
                    + " all when they differ. Coils of the same rated impedance are equals; of one"
                    + " without a name the networks show the impedance")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull VoiceCoil> coils,
    @Schema(
            description =
                "What drives the network: the smallest load it accepts and, by rails or ratings,"
                    + " its clean power; without either lower loads rank before higher ones")
        @NotNull
        Amplifier amplifier,
    Boolean bridged,
    @Schema(description = "Largest load wanted as connected, ohm; absent: any")
        @DecimalMin("0.1")
        @DecimalMax("8000")
        Double maximumOhm,
    @Schema(description = "How many of the networks to list, the best first") @Min(1) @Max(100)
        Integer listCount)
    implements ConnectedAmplifier {

  public WiringOptionsRequest {
    bridged = bridged == null ? Boolean.FALSE : bridged;
    listCount = listCount == null ? Integer.valueOf(10) : listCount;
  }
}
