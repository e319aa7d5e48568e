package org.footwell.acoustic.driver;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.rule.ExactlyOne;

/** A voice coil, and what is known of its heat: a resistance measured warm, or what heats it. */
@ExactlyOne({"hot_ohm", "heating"})
public record VoiceCoilHeatRequest(
    @NotNull Double reOhm,
    Double reTemperatureC,
    @Schema(description = "What the wire is made of") Conductor conductor,
    Double temperatureC,
    @Schema(
            description =
                "DC resistance measured while the coil is warm, ohm, at the same terminals as"
                    + " re_ohm")
        Double hotOhm,
    @Schema(description = "What heats the coil and how it cools, instead of a measurement")
        Heating heating,
    Double largestCoilC) {

  public VoiceCoilHeatRequest {
    reTemperatureC = reTemperatureC == null ? Double.valueOf(20) : reTemperatureC;
    conductor = conductor == null ? Conductor.COPPER : conductor;
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
  }

  /** What the wire is made of. */
  public enum Conductor {
    COPPER(234.5),
    ALUMINIUM(225);

    private final double k;

    Conductor(double k) {
      this.k = k;
    }

    /** How far below 0 °C it would have no resistance, °C; see {@link HeatedCoil}. */
    double k() {
      return k;
    }
  }

  /** Power, and the thermal data of the driver. It starts as warm as the air. */
  public record Heating(
      @Schema(
              description =
                  "Mean power, W: into the coil as warm as it is where the power is held, or what"
                      + " the voltage would give into re_ohm where the voltage is")
          @NotNull
          Double meanPowerW,
      @Schema(
              description =
                  "What stays while the resistance rises: the voltage, as of an amplifier, so that"
                      + " the power falls, or the power itself")
          Held held,
      @NotNull Double coilMagnetKPerW,
      @NotNull Double magnetAirKPerW,
      @NotNull Double coilS,
      @NotNull Double magnetS,
      @Schema(description = "How long it is heated, s; without it until nothing changes any more")
          Double durationS) {

    public Heating {
      held = held == null ? Held.VOLTAGE : held;
    }

    /** What the source keeps. */
    public enum Held {
      VOLTAGE,
      POWER
    }
  }
}
