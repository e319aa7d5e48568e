package org.footwell.electrical.heat;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.Needed;
import org.footwell.parts.Amplifier;
import org.footwell.parts.ClassD;
import org.footwell.parts.OutputClass;

/** An amplifier on its supply, with what hangs on each of its channels. */
@Built
@Needed("amplifier.converter_efficiency")
public record AmplifierHeatRequest(
    @Schema(description = "Voltage at the battery, V; with the engine running usually 13.8 to 14.4")
        @NotNull
        Double supplyV,
    @Schema(
            description =
                "The amplifier: how its converter works. One that holds the rails when the supply"
                    + " sinks draws constant power: the current then rises as the voltage falls")
        @NotNull
        Amplifier amplifier,
    @Schema(
            description =
                "Resistance from the battery to the amplifier and back, ohm: fuse and joints"
                    + " included, and the battery's own if supply_v is without load")
        Double supplyCableOhm,
    @Schema(
            description =
                "Crest factor of the noise, peak over RMS, dB; its peaks reach full swing")
        @DecimalMin("6")
        @DecimalMax("30")
        Double noiseCrestFactorDb,
    @Schema(description = "Peak of the sine over the full clean swing, as a ratio")
        @DecimalMin("0.001")
        @DecimalMax("1")
        Double sineSwingRatio,
    @Schema(description = "The channels; equal ones may be one entry with a count")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull ChannelStage> channels) {

  public AmplifierHeatRequest {
    supplyCableOhm = supplyCableOhm == null ? Double.valueOf(0) : supplyCableOhm;
    noiseCrestFactorDb = noiseCrestFactorDb == null ? Double.valueOf(12) : noiseCrestFactorDb;
    sineSwingRatio = sineSwingRatio == null ? Double.valueOf(1) : sineSwingRatio;
  }

  /** One channel or several alike. */
  @Built
  @Ascending({"drop_v", "rail_v"})
  @Keeps(LossesOfClass.class)
  @Keeps(EfficiencyOfLosses.class)
  public record ChannelStage(
      @Schema(description = "What the fitter calls it") @Size(min = 1, max = 60) String name,
      Integer channelCount,
      @Schema(
              description =
                  "How the output stage works: class_b (no quiescent current), class_ab (with one)"
                      + " or class_d (switching)")
          @NotNull
          OutputClass outputClass,
      @Schema(description = "How the output stands between its rails") Topology topology,
      @Schema(
              description =
                  "Rail under load, V: to ground per half; for a single-supply bridge the supply of"
                      + " the bridge. At supply_v, unless the supply is regulated")
          @NotNull
          @DecimalMin("1")
          @DecimalMax("400")
          Double railV,
      @NotNull Double dropV,
      @Schema(
              description =
                  "Modulus of the impedance connected, ohm; the whole load of a bridge. For the"
                      + " worst case the lowest modulus, not the rated impedance")
          @NotNull
          Double loadOhm,
      @Schema(
              description =
                  "Phase angle of that impedance, degrees: positive when the current lags"
                      + " (inductive); the sign does not change the heat")
          @DecimalMin("-90")
          @DecimalMax("90")
          Double phaseDeg,
      @Schema(
              description =
                  "Current of each half without signal, A; needed for class AB, in a bridge that of"
                      + " each of the two outputs")
          @DecimalMin("0.0001")
          @DecimalMax("20")
          Double quiescentCurrentA,
      @Schema(description = "The losses of a class D stage; needed for class D") ClassD classD) {

    public ChannelStage {
      channelCount = channelCount == null ? Integer.valueOf(1) : channelCount;
      topology = topology == null ? Topology.SPLIT_RAILS : topology;
      phaseDeg = phaseDeg == null ? Double.valueOf(0) : phaseDeg;
    }
  }

  /** How an output stands between its rails. */
  public enum Topology {
    /** A positive and a negative rail; the load hangs between output and ground. */
    SPLIT_RAILS,
    /** Two channels on split rails with the load between them. */
    BRIDGED_SPLIT_RAILS,
    /** One supply; the load hangs between two halves, neither end on ground. */
    SINGLE_SUPPLY_BRIDGE
  }
}
