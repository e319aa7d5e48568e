package org.footwell.vehicle.packages;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Verdict;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.PlanReviewResult;

/** The packages that no other beats, as whole plans, and what is proven of them. */
@Built
public record PackageOptionsResult(
    @Schema(
            description =
                "How many packages there are that no other beats in price, level, reach and mass at once,"
                    + " as screened, and that meet the wishes")
        int frontCount,
    @Schema(description = "How many of them are listed") int listedCount,
    @Schema(description = "How many of those looked at the full review stops; they are not listed")
        int stoppedCount,
    @Schema(description = "How many choices of parts fit each slot, in the order of the slots")
        List<FittingCount> fitting,
    @Schema(description = "What is proven, and how far the answer may be from what is not")
        Proof proven,
    @Schema(
            description =
                "Without which wishes there would be packages; absent where there are some")
        List<Relaxed> relaxed,
    @Schema(description = "The packages, best first by the order of importance")
        List<OfferedPackage> packages) {

  /** What of the offer goes into a slot. */
  public record FittingCount(
      @Schema(description = "Name of the slot") String slot,
      @Schema(description = "Choices of driver and box, the part that stays included") int fitCount,
      @Schema(description = "Offered drivers of its role that do not fit") int tooLargeCount) {}

  /** What was screened. */
  public enum Screened {
    PRICE,
    MASS,
    REACH,
    LEVEL_BOUND,
    FIT,
    LOAD,
    SUPPLY,
    CABLE_AND_FUSE
  }

  /** What is proven of the list. */
  @Built
  public record Proof(
      @Schema(
              description =
                  "Whether every package that no other beats was found, as screened: false where the"
                      + " effort, the time or the memory ended before")
          boolean frontComplete,
      @Schema(description = "Whether all of them are listed") boolean allListed,
      @Schema(description = "What was screened; what is not here the plan does not say enough for")
          List<Screened> covers,
      @Schema(
              description =
                  "No package that is left out is louder by more than this, dB, than one listed that costs"
                      + " and weighs no more and plays as low; where all are listed")
          Double gapDb,
      @Schema(description = "No package costs less than this") BigDecimal priceAtLeast,
      @Schema(description = "None makes the vehicle heavier by less, g") Double massChangeAtLeastG,
      @Schema(description = "None plays lower, Hz") Double lowestAtLeastHz,
      @Schema(description = "None is louder, dB SPL") Double levelAtMostDbSpl) {}

  /** Wishes that cannot all be met, and what there is without one of them. */
  public record Relaxed(
      @Schema(
              description =
                  "Wishes that exclude each other: without any one of them the others can be"
                      + " met. A single one cannot be met at all")
          List<Aim> wishes,
      @Schema(description = "For each of them the best there is where the others are met")
          List<Double> attainable) {}

  /** A package. */
  @Built
  public record OfferedPackage(
      @Schema(description = "Price of all that is new, extras included") BigDecimal price,
      @Schema(description = "Mass that comes in less what goes out, g") double massChangeG,
      @Schema(
              description =
                  "Lowest frequency at which it is 3 dB below its loudest, Hz: in steps of half a hertz, rounded up")
          double lowestHz,
      @Schema(
              description =
                  "It is no louder than this, dB SPL: the bound it was screened by, in steps of 0.1 dB")
          double levelAtMostDbSpl,
      @Schema(description = "Level at the main seat by the review, dB SPL") double levelDbSpl,
      @Schema(description = "Whether that reaches the level wished for; true without such a wish")
          boolean levelReached,
      @Schema(
              description =
                  "How far it is from the best of the list in what matters, 0 to 1, weighted by the order"
                      + " of importance: 0 is best in everything")
          double distance,
      @Schema(description = "What is in each slot") List<FilledSlot> slots,
      @Schema(
              description =
                  "Ids of the amplifiers of the plan and how often each of the offer is in it")
          List<String> amplifiers,
      @Schema(description = "Verdict of its review") Verdict verdict,
      @Schema(description = "Codes of the findings of its review, worst first") List<String> codes,
      @Schema(description = "It as a whole plan") VehiclePlan plan,
      @Schema(description = "Its review") PlanReviewResult review) {}

  /** What is in a slot. */
  public record FilledSlot(
      @Schema(description = "Name of the slot") String slot,
      @Schema(description = "Id of the part in it") String part,
      @Schema(description = "Id of its box, where it comes in one") String box,
      @Schema(description = "Whether the part of the plan stays") boolean stays,
      @Schema(description = "How its channels are wired, by their networks") List<String> networks,
      @Schema(description = "Id of their amplifier") String amplifier,
      @Schema(description = "Whether they are bridged") boolean bridged) {}
}
