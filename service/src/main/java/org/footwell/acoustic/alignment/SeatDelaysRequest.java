package org.footwell.acoustic.alignment;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Needs;
import org.footwell.calculation.rule.RefersTo;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.Crossover;
import org.footwell.parts.EvenOrder;
import org.footwell.parts.Filter;
import org.footwell.parts.Position;
import org.footwell.parts.Processor;
import org.footwell.parts.Seat;

/**
 * Loudspeakers and listeners. Either every channel and every seat has a position, or there is a
 * measured distance for every channel and seat, or a measured arrival.
 */
@Built
@Needed("seats.*.name")
@AtMostOne({"distances", "arrivals", "channels.*.position"})
@AtMostOne({"distances", "seats.*.position"})
@AtMostOne({"distances", "seats.*.left_ear"})
@AtMostOne({"arrivals", "seats.*.position"})
@AtMostOne({"arrivals", "seats.*.left_ear"})
@Needs(field = "microphones", beside = "arrivals")
@Unique("channels.*.name")
@Unique("seats.*.name")
@Unique({"distances.*.channel", "distances.*.seat"})
@Unique({"arrivals.*.channel", "arrivals.*.microphone"})
@Unique("microphones.*.id")
@Unique({"crossovers.*.lower", "crossovers.*.upper"})
@RefersTo(field = "distances.*.channel", to = "channels.*.name")
@RefersTo(field = "distances.*.seat", to = "seats.*.name")
@RefersTo(field = "arrivals.*.channel", to = "channels.*.name")
@RefersTo(field = "microphones.*.seat", to = "seats.*.name")
@RefersTo(field = "crossovers.*.lower", to = "channels.*.name")
@RefersTo(field = "crossovers.*.upper", to = "channels.*.name")
@Keeps(
    value = EvenOrder.class,
    of = {"channels.*.high_pass", "channels.*.low_pass"})
@Keeps(value = FullRangeUnfiltered.class, of = "channels.*")
@Keeps(PositionsEverywhere.class)
@Keeps(ChannelsOffEars.class)
@Keeps(DistancesEverywhere.class)
@Keeps(ArrivalsEverywhere.class)
@Keeps(CrossoversUpwards.class)
public record SeatDelaysRequest(
    @Schema(description = "Channels of the system, one per loudspeaker that has its own delay")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull PlacedChannel> channels,
    @Schema(description = "Who listens") @NotNull @Size(min = 1, max = 8) List<@NotNull Seat> seats,
    @Schema(
            description =
                "Distances by tape measure, one for every channel and seat; instead of positions")
        @Size(min = 0, max = 256)
        List<@NotNull Distance> distances,
    @Schema(
            description =
                "Where two channels hand over to each other. In the bass the lower one is then moved"
                    + " from its flight time so that both add there; all crossovers of one lower"
                    + " channel count together")
        @Size(min = 0, max = 32)
        List<@NotNull Crossover> crossovers,
    @Schema(description = "The processor that sets the delays; absent: exact delays only")
        Processor processor,
    Double temperatureC,
    @Schema(
            description =
                "Arrivals by measurement, one for every channel and microphone position: recordings"
                    + " as arrival-times gives them; instead of positions or distances")
        @Size(min = 0, max = 256)
        List<@NotNull MeasuredArrival> arrivals,
    @Schema(
            description =
                "Which microphone positions belong to which seat. Absent: all to the only seat, or"
                    + " of several seats each to the one of its name")
        @Size(min = 0, max = 64)
        List<@NotNull SeatMicrophone> microphones,
    Double incoherentAboveHz) {

  public SeatDelaysRequest {
    distances = noneIfEmpty(distances);
    crossovers = noneIfEmpty(crossovers);
    arrivals = noneIfEmpty(arrivals);
    microphones = noneIfEmpty(microphones);
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
    incoherentAboveHz = incoherentAboveHz == null ? Double.valueOf(300) : incoherentAboveHz;
  }

  private static <T> List<T> noneIfEmpty(List<T> list) {
    return list == null || list.isEmpty() ? null : list;
  }

  /** A microphone position of measured arrivals. */
  public record SeatMicrophone(
      @Schema(description = "Id of the microphone position") @NotNull @Size(min = 1, max = 60)
          String id,
      @Schema(description = "Name of the seat it stands for") @NotNull @Size(min = 1, max = 60)
          String seat,
      @Schema(description = "How much it counts among those of its seat") Double weight) {

    public SeatMicrophone {
      weight = weight == null ? Double.valueOf(1) : weight;
    }
  }

  /** One channel with its loudspeaker. */
  @Built
  @Ascending(
      value = {"high_pass.frequency_hz", "low_pass.frequency_hz"},
      orEqual = true)
  public record PlacedChannel(
      @Schema(description = "Name, unlike any other channel's") @NotNull @Size(min = 1, max = 60)
          String name,
      Position position,
      Double chainDelayMs,
      Filter highPass,
      Filter lowPass,
      Boolean fullRange,
      Integer polarity) {

    public PlacedChannel {
      chainDelayMs = chainDelayMs == null ? Double.valueOf(0) : chainDelayMs;
      fullRange = fullRange == null ? Boolean.FALSE : fullRange;
      polarity = polarity == null ? Integer.valueOf(1) : polarity;
    }
  }

  /** One measured distance. */
  public record Distance(
      @Schema(description = "Name of the channel") @NotNull @Size(min = 1, max = 60) String channel,
      @Schema(description = "Name of the seat") @NotNull @Size(min = 1, max = 60) String seat,
      @NotNull Double distanceM) {}
}
