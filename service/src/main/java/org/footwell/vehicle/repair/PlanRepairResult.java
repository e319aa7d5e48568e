package org.footwell.vehicle.repair;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Called;
import org.footwell.calculation.Verdict;

/** What least has to be changed in a plan. */
public record PlanRepairResult(
    @Schema(description = "Verdict of the review of the plan as it is") @NotNull
        Verdict verdictBefore,
    @Schema(description = "Its warnings and stops, each with one place") @NotNull
        List<Trouble> troubles,
    @Schema(description = "How many plans were reviewed on the way") int reviewCount,
    @Schema(
            description =
                "Whether every change there is was tried, and every pair of those that help most;"
                    + " otherwise these are the best found so far")
        boolean complete,
    @Schema(description = "Changes that help, those that keep the level and clear most first")
        @NotNull
        List<Repair> repairs) {

  /** A warning or stop at one place. */
  public record Trouble(
      @Schema(description = "How bad it is") @NotNull Verdict level,
      @Schema(description = "Code of the finding") @NotNull String code,
      @Schema(description = "JSON Pointer to its place in the plan") @NotNull String place) {}

  /** Changes to be made together, and the review they lead to. */
  @Built
  public record Repair(
      @Schema(description = "What is changed, one or two things") @NotNull List<ChangeLine> changes,
      @Schema(description = "Effort beside that of others; 1 is a setting") int effort,
      @Schema(description = "Price of what is bought; absent where one is not known")
          BigDecimal price,
      @Schema(
              description =
                  "Level it costs at full scale, dB: of all channels together at the main seat or of"
                      + " the one that loses most; negative where it gains; absent where it was not"
                      + " known")
          Double levelLostDb,
      @Schema(description = "Verdict of the review it leads to") @NotNull Verdict verdict,
      @Schema(description = "Warnings and stops that are gone") @NotNull List<Trouble> cleared,
      @Called("left_over") @Schema(description = "Those that are left") @NotNull List<Trouble> left,
      @Schema(description = "Those that are new, milder than the worst that is gone") @NotNull
          List<Trouble> caused) {}

  /** One change. */
  public record ChangeLine(
      @Schema(description = "What kind of change it is") @NotNull RepairKind change,
      @Schema(description = "JSON Pointers to what is changed in the plan") @NotNull
          List<String> places,
      @Schema(description = "What stands there; absent where nothing does") String was,
      @Schema(description = "What stands there then; absent where nothing does") String becomes) {}
}
