package org.footwell.electrical.load;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.Amplifier;
import org.footwell.parts.Cable;
import org.footwell.parts.PossibleCable;
import org.footwell.parts.VoiceCoil;

/** A network of voice coils, and what drives it. */
@Built
@Needed({"coils.*.name", "coils.*.rated_ohm", "cable.one_way_m", "cable.area_mm2"})
@Unique("coils.*.name")
@Keeps(value = NetworkNotation.class, of = "network")
@Keeps(value = CoilNames.class, of = "coils")
@Keeps(NetworkCoils.class)
@Keeps(NetworkBands.class)
@Keeps(value = PossibleCable.class, of = "cable")
public record WiringLoadRequest(
    @Schema(
            description =
                "The network in circuit notation: + in series, || in parallel, parentheses. ||"
                    + " binds tighter than +, as a product binds tighter than a sum: 4+4||4 is"
                    + " 4+(4||4). Each part is the rated impedance of a coil in ohm (0.1 to 1000)"
                    + " or the name of one of the coils; at most 32 coils and 64 parentheses deep."
                    + " In a URL write + as %2B and || as %7C%7C",
            example = "(4+4)||(4+4)")
        @NotNull
        @Size(min = 1, max = 2000)
        String network,
    @Schema(
            description =
                "Coils the network calls by name. A driver with two voice coils is two coils; one"
                    + " that the network does not use is left open")
        @Size(max = 32)
        List<@NotNull VoiceCoil> coils,
    @Schema(description = "The amplifier, to judge the load by") Amplifier amplifier,
    Boolean bridged,
    @Schema(
            description =
                "The speaker cable from the amplifier to the network; of copper at 20 °C unless it"
                    + " says otherwise")
        Cable cable,
    @Schema(
            description =
                "RMS voltage at the amplifier's terminals, V, for the current to expect; bridged it"
                    + " is the voltage across the bridge")
        Double voltageV) {

  public WiringLoadRequest {
    coils = coils == null ? List.of() : coils;
    bridged = bridged == null ? Boolean.FALSE : bridged;
  }
}
