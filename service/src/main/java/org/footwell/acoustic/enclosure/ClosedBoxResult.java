package org.footwell.acoustic.enclosure;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.acoustic.enclosure.lowend.BoxLimits;
import org.footwell.acoustic.enclosure.lowend.BoxPoint;
import org.footwell.acoustic.enclosure.lowend.BoxResponse;
import org.footwell.calculation.Built;

/** What a closed box or a large leaky baffle makes of a driver. */
@Built
public record ClosedBoxResult(
    @Schema(description = "Net volume of air, litre: given, or found for the wanted qtc or ripple")
        double volumeL,
    @Schema(description = "Volume with driver and bracing in it, litre; absent for a baffle")
        Double grossVolumeL,
    @Schema(description = "Compliance ratio: vas over apparent volume") double alpha,
    @Schema(description = "Total Q in free air, the source's resistance in it") double qts,
    @Schema(description = "Resonance in the volume, leaks left out, Hz") double fcHz,
    @Schema(description = "Mechanical Q in the volume, losses of the air left out") double qmc,
    @Schema(description = "Electrical Q in the volume") double qec,
    @Schema(
            description =
                "Total Q in the box, losses of the air in it; absent for a leaky baffle, where it"
                    + " would say little")
        Double qtc,
    @Schema(
            description =
                "The low end of the response, without the coil's inductance and the filters of the"
                    + " channel")
        BoxResponse response,
    @Schema(description = "Displacement and what it allows") BoxLimits limits,
    @Schema(
            description =
                "With the cabin's volume: frequency below which it is a pressure chamber that adds"
                    + " to the level at 1 m, Hz")
        Double pressureCornerHz,
    @Schema(description = "The curve") List<BoxPoint> points) {}
