package org.footwell.acoustic.enclosure;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.acoustic.enclosure.VentedBoxResult.Alignment;
import org.footwell.acoustic.enclosure.lowend.PlayedBox;
import org.footwell.acoustic.enclosure.radiator.BoxDriver;
import org.footwell.acoustic.enclosure.radiator.CabinResponse;
import org.footwell.calculation.Built;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter;

/**
 * A driver in a vented box, and what drives it. With a volume exactly one of the tuning of the box and
 * the length of the port; without one the box is found.
 */
@Built
public record VentedBoxRequest(
    @Schema(description = "The driver") @NotNull BoxDriver driver,
    @Schema(description = "The box") @NotNull VentedVolume box,
    @Schema(description = "The port or ports") @NotNull BoxPort port,
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

  public VentedBoxRequest {
    sourceOhm = sourceOhm == null ? Double.valueOf(0) : sourceOhm;
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
    subsonicOrder = subsonicOrder == null ? Integer.valueOf(4) : subsonicOrder;
    frequencies = frequencies == null ? PlayedBox.bass() : frequencies;
  }

  /** The same with a box that was found for it. */
  VentedBoxRequest in(Alignment found) {
    VentedVolume sized =
        VentedBoxRequestVentedVolumeBuilder.builder()
            .volumeL(found.volumeL())
            .fbHz(found.fbHz())
            .ql(box.ql)
            .qa(box.qa)
            .qp(box.qp)
            .driverDisplacementL(box.driverDisplacementL)
            .bracingL(box.bracingL)
            .spaceL(box.spaceL)
            .longestInsideMm(box.longestInsideMm)
            .build();
    return VentedBoxRequestBuilder.builder()
        .driver(driver)
        .box(sized)
        .port(port)
        .voltageV(voltageV)
        .powerW(powerW)
        .sourceOhm(sourceOhm)
        .temperatureC(temperatureC)
        .subsonicOrder(subsonicOrder)
        .highPass(highPass)
        .lowPass(lowPass)
        .cabin(cabin)
        .frequencies(frequencies)
        .build();
  }

  /** The box without its port. */
  @Built
  public record VentedVolume(
      @Schema(
              description =
                  "Net volume of air, litre, all displacement taken off, that of the port included;"
                      + " without it volume and tuning are found for a maximally flat response or the"
                      + " nearest one that driver and ql allow")
          Double volumeL,
      @Schema(
              description =
                  "Tuning wanted, Hz. With a volume exactly one of box.fb_hz and port.length_mm, without"
                      + " one neither")
          Double fbHz,
      @Schema(description = "Q of the leaks at the tuning") @DecimalMin("1") @DecimalMax("100000")
          Double ql,
      Double qa,
      Double qp,
      Double driverDisplacementL,
      Double bracingL,
      Double spaceL,
      Double longestInsideMm) {

    public VentedVolume {
      ql = ql == null ? Double.valueOf(7) : ql;
      driverDisplacementL = driverDisplacementL == null ? Double.valueOf(0) : driverDisplacementL;
      bracingL = bracingL == null ? Double.valueOf(0) : bracingL;
    }
  }
}
