package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.TargetCurve;

/** How the system should sound at the main seat. */
@Unique("roles.*.role")
public record SoundTarget(
    @Schema(description = "Wanted curve; without it flat, so that only the roles differ")
        TargetCurve curve,
    @Schema(description = "Roles that should be louder, quieter or later than the others")
        @Size(max = 4)
        List<@NotNull RoleTarget> roles,
    @Schema(description = "Whom delays and trims are for") Seats seats) {

  public SoundTarget {
    curve = curve == null ? TargetCurve.flat() : curve;
    roles = roles == null ? List.of() : roles;
    seats = seats == null ? Seats.MAIN : seats;
  }

  /** Whom delays and trims are for. */
  public enum Seats {
    /** The main seat alone. */
    MAIN,
    /**
     * All seats: arrivals and levels by their weights, crossovers of the bass so that the seat that is
     * worst off loses least.
     */
    ALL
  }

  /** What is wanted of the channels of one role. */
  public record RoleTarget(
      @Schema(description = "Where the channels play") @NotNull ChannelRole role,
      @Schema(description = "Level against the wanted curve, dB: rear fill is usually some below")
          @DecimalMin("-30")
          @DecimalMax("20")
          Double levelDb,
      @Schema(description = "Delay beyond that of the flight times, ms: rear fill is often later")
          Double delayMs) {

    public RoleTarget {
      levelDb = levelDb == null ? Double.valueOf(0) : levelDb;
      delayMs = delayMs == null ? Double.valueOf(0) : delayMs;
    }
  }

  static SoundTarget alike() {
    return new SoundTarget(null, null, null);
  }

  private static final RoleTarget NOTHING_ELSE = new RoleTarget(ChannelRole.FRONT, null, null);

  /** What is wanted of a role; nothing in particular where it is not named. */
  public RoleTarget of(ChannelRole role) {
    return roles.stream().filter(one -> one.role() == role).findFirst().orElse(NOTHING_ELSE);
  }
}
