package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;
import org.footwell.calculation.text.Words;
import org.footwell.parts.Position;
import org.footwell.parts.WayRole;

/** A part in its place. */
@Built
public record PlacedDriver(
    @Schema(
            description =
                "Id; the network calls its voice coil so, or id.1, id.2 when it has several")
        @NotNull
        @Size(min = 1, max = 30)
        @Pattern(regexp = VehiclePlan.ID)
        String id,
    @Schema(description = "Id of the part in it, among new_parts") @NotNull @Size(min = 1, max = 40)
        String part,
    @Schema(description = "Id of the part it replaces, among factory_parts")
        @Size(min = 1, max = 40)
        String replaces,
    @Schema(description = "What it is used as here; without it what its part is made for")
        WayRole role,
    @Schema(description = "Where it is, in vehicle axes (ISO 8855)") @NotNull Position position,
    @Schema(description = "What it is mounted in, for what to mind there") MountedIn mountedIn,
    @Schema(description = "The opening it goes into; without it any is taken to fit")
        DriverOpening opening,
    @Schema(description = "What its back works into; without it free air") Enclosure enclosure) {

  /** Parts of a vehicle that drivers are mounted in. */
  public enum MountedIn implements Words {
    /** A door. */
    DOOR,
    /** A roof pillar, its trim or foot. */
    PILLAR,
    /** The dashboard. */
    DASHBOARD,
    /** Below or in a seat. */
    SEAT,
    /** The roof lining. */
    ROOF,
    /** The shelf behind the rear seats. */
    REAR_SHELF,
    /** A side panel behind the doors. */
    SIDE_PANEL,
    /** The boot or the load space. */
    BOOT
  }
}
