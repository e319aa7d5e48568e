package org.footwell.vehicle.packages;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.RefersTo;
import org.footwell.calculation.rule.Unique;
import org.footwell.electrical.load.NetworkNotation;
import org.footwell.parts.PossibleCable;
import org.footwell.parts.offer.Offer;
import org.footwell.parts.offer.OuterSize;
import org.footwell.parts.plan.AmplifierFeed;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.reading.BoxedDriverKnown;
import org.footwell.vehicle.reading.EqualiserBelowHalfRate;
import org.footwell.vehicle.reading.GainOfSignal;

/** A vehicle with positions that are free, what is offered for them, and what is wanted. */
@Built
@Unique("slots.*.name")
@Unique("slots.*.drivers.*")
@RefersTo(field = "slots.*.drivers.*", to = "plan.drivers.*.id")
@RefersTo(field = "wishes.keep.*", to = "slots.*.name")
@Keeps(
    value = NetworkNotation.class,
    of = {"plan.channels.*.network", "plan.channels.*.branches.*.network"})
@Keeps(value = PossibleCable.class, of = "plan.channels.*.cable")
@Keeps(value = EqualiserBelowHalfRate.class, of = "plan")
@Keeps(value = BoxedDriverKnown.class, of = "plan")
@Keeps(value = GainOfSignal.class, of = "plan")
@Keeps(OfferedIds.class)
@Keeps(value = PlanPriced.class, of = "plan")
@Keeps(StayingPartsKnown.class)
@Keeps(OfferForSlots.class)
@Keeps(OfferedSizesKnown.class)
@Keeps(OfferedAmplifiersSized.class)
@Keeps(BoxedOfferKnown.class)
@Keeps(SlotsWithNetworks.class)
@Keeps(KeptPartsAlike.class)
public record PackageOptionsRequest(
    @Schema(
            description =
                "The plan as it stands: everything that is in no slot stays, and so do channels, filters,"
                    + " seats and supply; settings and measurements are of what was and left out")
        @NotNull
        VehiclePlan plan,
    @Schema(description = "The positions that are free") @NotNull @Size(min = 1, max = 4)
        List<@NotNull FreeSlot> slots,
    @Schema(description = "What may be chosen from") @NotNull Offer offer,
    @Schema(description = "What is wanted; without any wish all there is") Wishes wishes,
    @Schema(
            description =
                "Where new amplifiers go and how they are fed; without it neither is judged")
        AmplifierPlace amplifierPlace,
    @Schema(description = "How many packages to list, the best first") @Min(1) @Max(50)
        Integer listCount,
    @Schema(
            description =
                "How many parts of packages to look at at most; of a search that ends there the best"
                    + " found so far is listed")
        @Min(1)
        @Max(1_000_000_000)
        Integer effortCount) {

  public PackageOptionsRequest {
    wishes = wishes == null ? Wishes.none() : wishes;
    listCount = listCount == null ? Integer.valueOf(10) : listCount;
    effortCount = effortCount == null ? Integer.valueOf(20_000_000) : effortCount;
  }

  /** Whether what is in a slot has to stay. */
  boolean keeps(FreeSlot slot) {
    return wishes.keep().contains(slot.name());
  }

  /** Where new amplifiers go. */
  public record AmplifierPlace(
      @Schema(
              description =
                  "Their supply cable. Where cables are offered its size and material are chosen from"
                      + " them")
          AmplifierFeed feed,
      @Schema(description = "Room there is for each") OuterSize room) {}
}
