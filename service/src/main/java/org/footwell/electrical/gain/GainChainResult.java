package org.footwell.electrical.gain;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.parts.Terminals;

/** How to set a chain, what to measure then, and how much noise it makes. */
@Built
public record GainChainResult(
    @Schema(
            description =
                "What the meter must show: RMS voltage at the amplifier's terminals with the test"
                    + " tone, V; terminals as asked for")
        double targetV,
    @Schema(description = "Whether target_v is for open or loaded terminals")
        Terminals targetTerminals,
    @Schema(description = "The target with terminals open, V RMS") double targetOpenV,
    @Schema(description = "The target with the load connected, V RMS") double targetLoadedV,
    @Schema(description = "Power the test tone puts into the load, W; absent when open")
        Double tonePowerW,
    @Schema(
            description =
                "Largest sine that passes the whole chain clean, dBFS; minus the overlap when"
                    + " everything can be set as it should")
        double cleanDbfs,
    @Schema(description = "RMS voltage of a full-scale sine at the source, V") double sourceOutputV,
    @Schema(description = "What a factory output really gives; absent with a head unit")
        FactorySource factory,
    @Schema(description = "Settings of the stages, in the order of the request")
        List<Setting> stages,
    @Schema(
            description =
                "Noise at the amplifier, microvolt RMS; of the parts whose noise is given, absent"
                    + " if none is")
        Double noiseUv,
    @Schema(description = "Largest clean output of the amplifier over that noise, dB")
        Double signalToNoiseDb,
    @Schema(description = "Noise at the seat, dBA; for A-weighted noise voltages")
        Double noiseLevelDba,
    @Schema(description = "Noise at the seat, dB SPL; for unweighted noise voltages")
        Double noiseLevelDbSpl) {

  /** What a factory output really gives. */
  public record FactorySource(
      @Schema(description = "Peak of its largest clean sine, V") double cleanPeakV,
      @Schema(description = "Clean sine power into the load its power is stated for, W")
          Double cleanPowerW,
      @Schema(
              description =
                  "Heat in the load resistor with a full-scale sine, W; music makes a fraction")
          Double loadResistorW) {}

  /** One stage as it should be set. */
  public record Setting(
      @Schema(description = "Name as given") String name,
      @Schema(description = "Gain to set, dB") double gainDb,
      @Schema(
              description =
                  "The same as an input sensitivity: the input that gives max_output_v, V")
          double sensitivityV,
      @Schema(description = "Input with a full-scale sine, V RMS, if nothing clipped")
          double inputV,
      @Schema(description = "Output with a full-scale sine, V RMS, if nothing clipped")
          double outputV,
      @Schema(
              description =
                  "Largest clean input over that input, dB; negative: it clips that much before"
                      + " full scale")
          double inputMarginDb,
      @Schema(
              description =
                  "Largest clean output over that output, dB; of the amplifier minus the overlap"
                      + " when all is well")
          double outputMarginDb,
      @Schema(description = "Its part of the power of all known noise, as a ratio")
          Double noiseShare) {}
}
