package org.footwell.electrical.gain;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.Amplifier;
import org.footwell.parts.FactoryOutput;
import org.footwell.parts.HeadUnit;
import org.footwell.parts.Stage;
import org.footwell.parts.Terminals;

/** A chain for one channel. */
@Built
@ExactlyOne({"head_unit", "factory_output"})
@Unique("stages.*.name")
@Keeps(ToneWithinOutput.class)
public record GainChainRequest(
    @Schema(description = "A source with line outputs") HeadUnit headUnit,
    @Schema(description = "A source with loudspeaker outputs") FactoryOutput factoryOutput,
    @Schema(description = "What follows, in the order of the signal; the amplifier is the last")
        @NotNull
        @Size(min = 1, max = 8)
        List<@NotNull Stage> stages,
    @Schema(description = "Impedance the amplifier drives, ohm") @NotNull Double loadOhm,
    @Schema(description = "The amplifier, the last of the stages: what its output impedance is")
        Amplifier amplifier,
    Boolean bridged,
    Double overlapDb,
    @NotNull Double testToneDbfs,
    @Schema(
            description =
                "Whether the target is measured with the amplifier's terminals open or loaded by"
                    + " load_ohm")
        @NotNull
        Terminals terminals,
    @Schema(description = "How loud a voltage is at the seat; for the noise there") Seat seat) {

  public GainChainRequest {
    bridged = bridged == null ? Boolean.FALSE : bridged;
    overlapDb = overlapDb == null ? Double.valueOf(0) : overlapDb;
  }

  /** Output impedance as connected, ohm: none unless it is known. */
  double outputOhm() {
    Double known = amplifier == null ? null : amplifier.outputOhm(bridged);
    return known == null ? 0 : known;
  }

  /** How loud a voltage at the amplifier is at the seat. */
  public record Seat(
      @Schema(
              description =
                  "Level at the seat with 2.83 V RMS at the amplifier of one channel, dB SPL, in"
                      + " the band of the noise: of a tweeter for hiss")
          @NotNull
          @DecimalMin("40")
          @DecimalMax("130")
          Double levelDbSpl,
      @Schema(description = "How the noise voltages are weighted") @NotNull
          Weighting noiseWeighting,
      @Schema(description = "How many channels like this one make noise, none like the other")
          Integer channelCount,
      @Schema(
              description =
                  "Level of the quiet cabin, engine off, in the same weighting, dB; noise above it"
                      + " is heard")
          @DecimalMin("0")
          @DecimalMax("100")
          Double quietDb) {

    public Seat {
      channelCount = channelCount == null ? Integer.valueOf(1) : channelCount;
      quietDb = quietDb == null ? Double.valueOf(30) : quietDb;
    }
  }

  /** How noise voltages are weighted. */
  public enum Weighting {
    /** As the ear hears faint sounds; what data sheets usually state. */
    A,
    /** All frequencies of the audio range alike. */
    UNWEIGHTED
  }
}
