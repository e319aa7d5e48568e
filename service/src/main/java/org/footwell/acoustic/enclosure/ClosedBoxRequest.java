package org.footwell.acoustic.enclosure;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.acoustic.enclosure.lowend.PlayedBox;
import org.footwell.acoustic.enclosure.radiator.BoxDriver;
import org.footwell.acoustic.enclosure.radiator.CabinResponse;
import org.footwell.calculation.Built;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter;

/**
 * A driver in a closed box or in a large leaky baffle, and what drives it. Exactly one of {@code box}
 * and {@code baffle}.
 */
@Built
public record ClosedBoxRequest(
    @Schema(description = "The driver") @NotNull BoxDriver driver,
    @Schema(description = "The closed box. Exactly one of box and baffle") ClosedVolume box,
    @Schema(
            description =
                "A door, a rear shelf or another large leaky volume. Exactly one of box and baffle")
        LeakyBaffle baffle,
    @Schema(description = "RMS voltage of the source, V. Exactly one of voltage_v and power_w")
        Double voltageV,
    @Schema(
            description =
                "The same as power into the rated impedance, W, at every frequency. Exactly one of"
                    + " voltage_v and power_w")
        Double powerW,
    Double sourceOhm,
    Double temperatureC,
    Integer subsonicOrder,
    @Schema(
            description =
                "High-pass of the channel: drive, displacement and level are behind it, f3, f10 and"
                    + " peak are not")
        Filter highPass,
    @Schema(description = "Low-pass of the channel, likewise") Filter lowPass,
    @Schema(description = "The vehicle around it, when the level at the seat is wanted")
        CabinResponse cabin,
    @Schema(
            description =
                "Range and points; without it twelfth octaves from 10 to 200 Hz. Largest"
                    + " displacement and air speed are looked for in the range")
        CurveFrequencies frequencies)
    implements PlayedBox {

  public ClosedBoxRequest {
    sourceOhm = sourceOhm == null ? Double.valueOf(0) : sourceOhm;
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
    subsonicOrder = subsonicOrder == null ? Integer.valueOf(4) : subsonicOrder;
    frequencies = frequencies == null ? PlayedBox.bass() : frequencies;
  }

  /** A closed box: its volume, or the total Q or the peak it shall give. */
  @Built
  public record ClosedVolume(
      Double volumeL,
      @Schema(description = "Total Q wanted in the box. Exactly one of volume_l, qtc and ripple_db")
          Double qtc,
      @Schema(
              description =
                  "Peak of the response wanted, dB: 0 is maximally flat, a qtc of 0.707. Exactly one"
                      + " of volume_l, qtc and ripple_db")
          Double rippleDb,
      Double fillFactor,
      @Schema(description = "Q of the leaks at the resonance in the box; without it there are none")
          @DecimalMin("3")
          @DecimalMax("10000")
          Double ql,
      Double qa,
      Double driverDisplacementL,
      Double bracingL,
      Double spaceL,
      Double longestInsideMm) {

    public ClosedVolume {
      fillFactor = fillFactor == null ? Double.valueOf(1) : fillFactor;
      driverDisplacementL = driverDisplacementL == null ? Double.valueOf(0) : driverDisplacementL;
      bracingL = bracingL == null ? Double.valueOf(0) : bracingL;
    }

    /** The field that decides its size. */
    String pointer() {
      return volumeL != null ? "/box/volume_l" : qtc != null ? "/box/qtc" : "/box/ripple_db";
    }
  }

  /** A large volume that leaks: a door, the boot below a rear shelf. */
  public record LeakyBaffle(
      @Schema(description = "Volume of air behind, litre") @NotNull Double volumeL,
      @Schema(
              description =
                  "Q of all leaks at the resonance the driver would have in that volume closed:"
                      + " below 1 more air goes through the leaks than into compression there")
          @NotNull
          @DecimalMin("0.02")
          @DecimalMax("100")
          Double ql,
      @Schema(
              description =
                  "Whether what leaks reaches the listener and cancels bass there, as from service"
                      + " holes in the inner door panel; false when it goes outdoors")
          Boolean leakHeard) {

    public LeakyBaffle {
      leakHeard = leakHeard == null ? Boolean.TRUE : leakHeard;
    }
  }
}
