package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needs;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.Amplifier;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.BridgedRatings;
import org.footwell.parts.ClassD;
import org.footwell.parts.Money;
import org.footwell.parts.OutputClass;
import org.footwell.parts.Rails;
import org.footwell.parts.Ratings;
import org.footwell.parts.Stage;

/** An amplifier in the vehicle, with all its outputs. */
@Built
@Unique("outputs.*.id")
public record PlannedAmplifier(
    @Schema(description = "Id") @NotNull @Size(min = 1, max = 40) @Pattern(regexp = VehiclePlan.ID)
        String id,
    @Schema(description = "What it is called") @Size(min = 1, max = 80) String name,
    Boolean supplyRegulated,
    @Schema(description = "Its outputs, those alike in one entry") @NotNull @Size(min = 1, max = 8)
        List<@NotNull Outputs> outputs,
    @Schema(description = "How it turns supply into output; without it its current is not known")
        Draw draw,
    @Schema(description = "Its supply cable; without it the drop on the way is not known")
        AmplifierFeed feed,
    @Schema(description = "Sum of the fuses in or at the amplifier itself, A") Double fuseA,
    @Schema(description = "Voltage at it below which it mutes or switches off, V")
        @DecimalMin("1")
        @DecimalMax("60")
        Double minimumV,
    Double massG,
    @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST) BigDecimal price) {

  public PlannedAmplifier {
    supplyRegulated = supplyRegulated == null ? Boolean.FALSE : supplyRegulated;
    price = Money.plain(price);
  }

  /** What it is called, or its id. */
  public String calledName() {
    return name == null ? id : name;
  }

  /** Alike outputs of an amplifier. */
  @Built
  @ExactlyOne({"rails", "ratings"})
  @Needs(field = "bridged_ratings", beside = "ratings")
  public record Outputs(
      @Schema(
              description =
                  "Id within the amplifier; several alike are called id_1, id_2 and so on")
          @NotNull
          @Size(min = 1, max = 30)
          @Pattern(regexp = "[A-Za-z0-9][A-Za-z0-9_-]*")
          String id,
      @Schema(description = "How many outputs these are") @Min(1) @Max(16) Integer outputCount,
      @Schema(description = "One output by its rails") Rails rails,
      @Schema(description = "One output by its published powers") Ratings ratings,
      @Schema(description = "Published powers of two of them bridged, beside those of one")
          BridgedRatings bridgedRatings,
      Double minimumOhm,
      Double minimumBridgedOhm,
      @Schema(description = "Output impedance of one output, ohm; a bridge has twice that")
          Double outputOhm,
      @Schema(
              description =
                  "Range of its gain control, by the input that gives its largest clean output;"
                      + " with signal, for the gain target")
          Stage.Sensitivity sensitivity) {

    public Outputs {
      outputCount = outputCount == null ? Integer.valueOf(1) : outputCount;
    }

    /** What each of them is called. */
    public List<String> ids() {
      return outputCount == 1
          ? List.of(id)
          : IntStream.rangeClosed(1, outputCount).mapToObj(n -> id + "_" + n).toList();
    }

    /** Smallest rated load in ohm as it is connected, or null; a bridge sees half of it per output. */
    public Double allowedOhm(boolean bridged) {
      if (!bridged) {
        return minimumOhm;
      }
      return minimumBridgedOhm != null || minimumOhm == null
          ? minimumBridgedOhm
          : (Double) (2 * minimumOhm);
    }

    /** One of them as calculations ask for an amplifier. */
    public Amplifier asAmplifier(boolean supplyRegulated) {
      return AmplifierBuilder.builder()
          .rails(rails)
          .ratings(ratings)
          .bridgedRatings(bridgedRatings)
          .supplyRegulated(supplyRegulated)
          .minimumOhm(minimumOhm)
          .minimumBridgedOhm(minimumBridgedOhm)
          .outputOhm(outputOhm)
          .build();
    }
  }

  /** How an amplifier turns supply into output. */
  @Built
  @Needs(field = "output_class", beside = "converter_efficiency")
  public record Draw(
      @Schema(description = "Current drawn switched on but silent, A")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("100")
          Double idleA,
      @Schema(description = "Output over input power at full clean power, idle_a left out")
          @NotNull
          @DecimalMin("0.05")
          @DecimalMax("1")
          Double fullEfficiency,
      @Schema(
              description =
                  "Output over input power at the average level of the programme, idle_a left out;"
                      + " far lower in class AB")
          @NotNull
          @DecimalMin("0.02")
          @DecimalMax("1")
          Double averageEfficiency,
      @Schema(description = "How its output stages work, for its heat") OutputClass outputClass,
      Double converterEfficiency,
      @Schema(description = "Current of each half without signal, A; needed for class AB")
          @DecimalMin("0.0001")
          @DecimalMax("20")
          Double quiescentCurrentA,
      @Schema(description = "Losses of one output; needed for class D") ClassD classD) {}
}
