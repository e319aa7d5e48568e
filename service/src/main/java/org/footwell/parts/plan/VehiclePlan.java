package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.footwell.calculation.Built;
import org.footwell.calculation.CallsByName;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.TextForm;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.RefersTo;
import org.footwell.calculation.rule.Unique;
import org.footwell.calculation.text.Names;
import org.footwell.parts.Crossover;
import org.footwell.parts.EvenOrder;
import org.footwell.parts.Processor;
import org.footwell.parts.Seat;

/** A vehicle, its parts and how they hang together; parts are listed once and referred to by id. */
@Built
@Needed("seats.*.name")
@Unique("seats.*.name")
@Unique("factory_parts.*.id")
@Unique("new_parts.*.id")
@Unique("drivers.*.id")
@Unique("amplifiers.*.id")
@Unique("channels.*.id")
@Unique({"crossovers.*.lower", "crossovers.*.upper"})
@Unique("settings.*.channel")
@Unique("measured.*.channel")
@Unique("measured_supply.*.amplifier")
@RefersTo(field = "drivers.*.part", to = "new_parts.*.id")
@RefersTo(field = "drivers.*.replaces", to = "factory_parts.*.id")
@RefersTo(field = "channels.*.amplifier", to = "amplifiers.*.id")
@RefersTo(field = "channels.*.factory_output", to = "factory_signal.outputs.*.id")
@RefersTo(field = "crossovers.*.lower", to = "channels.*.id")
@RefersTo(field = "crossovers.*.upper", to = "channels.*.id")
@RefersTo(field = "settings.*.channel", to = "channels.*.id")
@RefersTo(field = "measured.*.channel", to = "channels.*.id")
@RefersTo(field = "measured_supply.*.amplifier", to = "amplifiers.*.id")
@Keeps(NotBefore.class)
@Keeps(value = SeatSomewhere.class, of = "seats.*")
@Keeps(SeatsInVehicle.class)
@Keeps(NoCrossoverCircle.class)
@Keeps(FreeOutputs.class)
@Keeps(value = DriverOnChannel.class, of = "channels.*")
@Keeps(ConnectedCoils.class)
@Keeps(
    value = EvenOrder.class,
    of = {
      "channels.*.high_pass",
      "channels.*.low_pass",
      "channels.*.branches.*.high_pass",
      "channels.*.branches.*.low_pass"
    })
public record VehiclePlan(
    @Schema(description = "Day of the plan, as in 2026-05-31")
        @Size(max = 10)
        @Pattern(regexp = VehiclePlan.DAY)
        @TextForm.Of(CalendarDay.class)
        String date,
    @Schema(description = "The vehicle") @NotNull Vehicle vehicle,
    @Schema(description = "Listening positions; the one of largest weight is the main seat")
        @NotNull
        @Size(min = 1, max = 8)
        List<@NotNull Seat> seats,
    @Schema(description = "Drivers that leave the vehicle") @Size(max = 64)
        List<@NotNull PlannedPart> factoryParts,
    @Schema(description = "Drivers that come in, or stay") @NotNull @Size(min = 1, max = 64)
        List<@NotNull PlannedPart> newParts,
    @Schema(description = "Every loudspeaker position and the part in it")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull PlacedDriver> drivers,
    @Schema(description = "Amplifiers with their outputs") @NotNull @Size(min = 1, max = 8)
        List<@NotNull PlannedAmplifier> amplifiers,
    @Schema(description = "What hangs on which output, and its filters")
        @NotNull
        @Size(min = 1, max = 16)
        List<@NotNull PlannedChannel> channels,
    @Schema(description = "Where channels cross over into each other, by their ids") @Size(max = 32)
        List<@NotNull Crossover> crossovers,
    @Schema(description = "The processor that delays the channels") Processor processor,
    @Schema(description = "What feeds the amplifiers, for the gain targets") Signal signal,
    @Schema(description = "A factory head unit that stays, as it was measured")
        FactorySignal factorySignal,
    @Schema(description = "What is played; without it music with a crest factor of 12 dB")
        PlayedProgramme programme,
    @Schema(description = "What feeds the amplifiers with current") VehicleSupply supply,
    @Schema(description = "How it should sound; without it every channel as loud as the others")
        SoundTarget target,
    @Schema(description = "Labour, rings, boxes and consumables") @Size(max = 64)
        List<@NotNull Extra> extras,
    @Schema(description = "The offer made to the customer") Quote quote,
    @Schema(description = "What was really set, one entry per channel; counts instead of advice")
        @Size(max = 16)
        List<@NotNull ChannelSettings> settings,
    @Schema(description = "What was measured with these settings, one entry per channel")
        @Size(max = 16)
        List<@NotNull MeasuredChannel> measured,
    @Schema(description = "What was measured of the supply, one entry per amplifier") @Size(max = 8)
        List<@NotNull MeasuredSupply> measuredSupply,
    @Schema(description = "How far off measurements usually are") MeasuringErrors measuringErrors)
    implements CallsByName {

  /** Days are written as by ISO 8601. */
  static final String DAY = "[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])";

  /** Ids are a letter, then letters, digits, _ and -. */
  public static final String ID = "[A-Za-z][A-Za-z0-9_-]*";

  public VehiclePlan {
    factoryParts = factoryParts == null ? List.of() : factoryParts;
    crossovers = crossovers == null ? List.of() : crossovers;
    programme = programme == null ? PlayedProgramme.usual() : programme;
    target = target == null ? SoundTarget.alike() : target;
    extras = extras == null ? List.of() : extras;
    settings = settings == null ? List.of() : settings;
    measured = measured == null ? List.of() : measured;
    measuredSupply = measuredSupply == null ? List.of() : measuredSupply;
    measuringErrors = measuringErrors == null ? MeasuringErrors.usual() : measuringErrors;
  }

  /** The part of the factory with an id that is there. */
  public PlannedPart factoryPart(String id) {
    return with(id, factoryParts, PlannedPart::id);
  }

  /** The new part with an id that is there. */
  public PlannedPart newPart(String id) {
    return with(id, newParts, PlannedPart::id);
  }

  /** The amplifier with an id that is there. */
  public PlannedAmplifier amplifier(String id) {
    return with(id, amplifiers, PlannedAmplifier::id);
  }

  /** Places and channels by the words of their id, parts and amplifiers by their names. */
  @Override
  public String called(String id) {
    boolean word =
        drivers.stream().anyMatch(driver -> driver.id().equals(id))
            || channels.stream().anyMatch(channel -> channel.id().equals(id));
    return word
        ? Names.spelt(id)
        : Stream.of(
                named(id, amplifiers, PlannedAmplifier::id, PlannedAmplifier::calledName),
                named(id, newParts, PlannedPart::id, PlannedPart::calledName),
                named(id, factoryParts, PlannedPart::id, PlannedPart::calledName))
            .flatMap(Optional::stream)
            .findFirst()
            .orElse(id);
  }

  private static <T> Optional<String> named(
      String id, List<T> all, Function<T, String> idOf, Function<T, String> name) {
    return all.stream().filter(one -> idOf.apply(one).equals(id)).findFirst().map(name);
  }

  private static <T> T with(String id, List<T> all, Function<T, String> idOf) {
    return all.stream().filter(one -> idOf.apply(one).equals(id)).findFirst().orElseThrow();
  }

  /** Index of the main seat: of those of largest weight the first. */
  public int mainSeat() {
    int main = 0;
    for (int s = 1; s < seats.size(); s++) {
      main = seats.get(s).weight() > seats.get(main).weight() ? s : main;
    }
    return main;
  }
}
