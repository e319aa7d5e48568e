package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.Filter;
import org.footwell.parts.LevelAt;

/** What a factory head unit that stays gives, as bass-rolloff, clip-point and signal-sum found it. */
@Unique("outputs.*.id")
@Ascending("bass_loss.*.frequency_hz")
public record FactorySignal(
    @Schema(description = "Volume step the figures are for") Integer volumeStep,
    @Schema(description = "Its outputs, each with the band it gives") @Size(max = 16)
        List<@NotNull Output> outputs,
    @Schema(
            description =
                "What it has lost at that step against a low one, dB over frequency, 0 or less where"
                    + " bass is taken away")
        @Size(min = 2, max = 100)
        List<@NotNull LevelAt> bassLoss) {

  public FactorySignal {
    outputs = outputs == null ? List.of() : outputs;
  }

  /** One output. */
  public record Output(
      @Schema(description = "Id")
          @NotNull
          @Size(min = 1, max = 40)
          @Pattern(regexp = VehiclePlan.ID)
          String id,
      @Schema(description = "Largest volume step at which a full-scale sine is still clean")
          @DecimalMin("-200")
          @DecimalMax("1000")
          Integer cleanVolumeStep,
      @Schema(description = "High-pass it has by itself") Filter highPass,
      @Schema(description = "Low-pass it has by itself") Filter lowPass) {}
}
