package org.footwell.vehicle.faults;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.text.Phrase;

/** One thing that may be wrong. */
@Built
public record FaultLine(
    @Schema(description = "What would be wrong") @NotNull FaultKind fault,
    @Schema(description = "Ids of the channels it is about") List<String> channels,
    @Schema(description = "Id of the amplifier, where it is about its supply") String amplifier,
    @Schema(description = "Id of the driver, or of its voice coil; where it is about one")
        String driver,
    @Schema(description = "Corner that is there instead, Hz") Double cornerHz,
    @Schema(description = "Order that is there instead") Integer filterOrder,
    @Schema(description = "How much too loud it is, dB") Double gainDb,
    @Schema(description = "Resistance of the joint, ohm") Double jointOhm,
    @Schema(description = "How the coils are wired instead") String wiredAs) {

  /** As it is said within a sentence. */
  public Phrase phrase() {
    Phrase phrase = Phrase.of(fault);
    return switch (fault) {
      case GROUND_RESISTANCE -> phrase.own("names", amplifier).with("figure", jointOhm);
      case HIGH_PASS_OFF, LOW_PASS_OFF -> phrase.own("names", channels).with("figure", cornerHz);
      case HIGH_PASS_ORDER, LOW_PASS_ORDER ->
          phrase.own("names", channels).with("figure", filterOrder);
      case GAIN_OFF -> phrase.own("names", channels).with("figure", gainDb);
      case WIRED_OTHERWISE -> phrase.own("names", channels).own("wiring", wiredAs);
      case COIL_OPEN, COIL_SHORTED, BOX_LEAKS, CROSSOVER_BRIDGED ->
          phrase.own("names", channels).own("part", driver);
      case POLARITY_INVERTED, WIRES_SWAPPED, HIGH_PASS_MISSING, LOW_PASS_MISSING ->
          phrase.own("names", channels);
    };
  }
}
