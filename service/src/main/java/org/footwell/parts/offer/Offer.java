package org.footwell.parts.offer;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.rule.Unique;

/** The parts that may be chosen from. */
@Unique("drivers.*.part.id")
@Unique("amplifiers.*.amplifier.id")
@Unique("boxes.*.id")
@Unique("cables.*.id")
@Unique("fuses.*.id")
public record Offer(
    @Schema(description = "Drivers") @Size(max = 200) List<@NotNull OfferedDriver> drivers,
    @Schema(description = "Amplifiers") @Size(max = 50) List<@NotNull OfferedAmplifier> amplifiers,
    @Schema(description = "Boxes") @Size(max = 50) List<@NotNull OfferedBox> boxes,
    @Schema(description = "Supply cables; without any a standard size is found and costs nothing")
        @Size(max = 50)
        List<@NotNull OfferedCable> cables,
    @Schema(
            description =
                "Fuses for the supply cables; without any a standard one is found and costs nothing")
        @Size(max = 50)
        List<@NotNull OfferedFuse> fuses) {

  public Offer {
    drivers = drivers == null ? List.of() : drivers;
    amplifiers = amplifiers == null ? List.of() : amplifiers;
    boxes = boxes == null ? List.of() : boxes;
    cables = cables == null ? List.of() : cables;
    fuses = fuses == null ? List.of() : fuses;
  }
}
