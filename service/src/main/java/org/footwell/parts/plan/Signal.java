package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.FactoryOutput;
import org.footwell.parts.HeadUnit;
import org.footwell.parts.Stage;
import org.footwell.parts.Terminals;

/** What feeds the amplifiers; with it, and the sensitivity of an output, its gain target is given. */
@Built
@ExactlyOne({"head_unit", "factory_output"})
@Unique("stages.*.name")
public record Signal(
    @Schema(description = "A source with line outputs") HeadUnit headUnit,
    @Schema(description = "A source with loudspeaker outputs") FactoryOutput factoryOutput,
    @Schema(description = "Converter and processor between source and amplifiers") @Size(max = 7)
        List<@NotNull Stage> stages,
    @Schema(description = "Volume step of the source that all this is for") Integer volumeStep,
    @Schema(description = "How far an amplifier reaches its limit before the source does, dB")
        Double overlapDb,
    @NotNull Double testToneDbfs,
    @Schema(description = "Whether the target is measured open or loaded") @NotNull
        Terminals terminals) {

  public Signal {
    stages = stages == null ? List.of() : stages;
    overlapDb = overlapDb == null ? Double.valueOf(0) : overlapDb;
  }
}
