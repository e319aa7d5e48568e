package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFinding.NO_TRIMS_FROM_ARRIVALS;
import static org.footwell.acoustic.alignment.AlignmentFinding.SEATS_DISAGREE;
import static org.footwell.acoustic.alignment.AlignmentFinding.TEMPERATURE_DRIFT;
import static org.footwell.calculation.Source.COMMON_PRACTICE;
import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.FilterFault;
import org.footwell.parts.Seat;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Air;
import org.footwell.physics.FilterPrototype;
import org.footwell.physics.PointSource;

/** How long each loudspeaker waits so that everything arrives together. */
public final class SeatDelays
    implements Calculation<SeatDelaysRequest, SeatDelaysResult>, AskOfPlan<SeatDelaysRequest> {

  private static final double COLD_C = -20;
  private static final double HOT_C = 60;

  /** Spread that is remarked on when several points are aligned, ms (common practice). */
  private static final double REMARKABLE_SPREAD_MS = 1;

  /** Drift over the range of temperatures that is remarked on, ms (common practice). */
  private static final double REMARKABLE_DRIFT_MS = 0.5;

  private static final Formula.Of2 DELAY =
      Formula.of("delay_ms", "t_last − t", "ms", DEFINITION)
          .with("t_last", "t", (last, own) -> last - own);
  private static final Formula.Of2 PATH =
      Formula.of("path_mm", "t·c", "mm", DEFINITION).with("t", "c", (t, c) -> t * c);
  private static final Card<SeatDelaysRequest, SeatDelaysResult> CARD =
      Card.of("seat-delays", SeatDelaysRequest.class, SeatDelaysResult.class)
          .title("Delays for the seats")
          .purpose(
              "How long must each loudspeaker wait so that everything arrives together at the"
                  + " listening positions, and where channels meet in the bass, so that they add"
                  + " there; what rounding, several seats and temperature leave.")
          .example(
              """
              {"channels": [
                 {"name": "front left", "position": {"x_m": 0.75, "y_m": 0.72, "z_m": 0.35},
                  "high_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 80}},
                 {"name": "front right", "position": {"x_m": 0.75, "y_m": -0.72, "z_m": 0.35},
                  "high_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 80}},
                 {"name": "subwoofer", "position": {"x_m": -1.6, "y_m": 0.1, "z_m": 0.3},
                  "low_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 80}}],
               "seats": [
                 {"name": "driver", "weight": 2, "position": {"x_m": 0, "y_m": 0.4, "z_m": 1.1}},
                 {"name": "passenger", "position": {"x_m": 0, "y_m": -0.4, "z_m": 1.1}}],
               "crossovers": [
                 {"lower": "subwoofer", "upper": "front left", "frequency_hz": 80},
                 {"lower": "subwoofer", "upper": "front right", "frequency_hz": 80}],
               "processor": {"rate_hz": 48000, "maximum_delay_ms": 15}}
              """)
          .sources(
              Air.ISO_9613_1,
              FilterPrototype.BUTTERWORTH,
              FilterPrototype.LINKWITZ,
              FilterPrototype.THOMSON,
              PointSource.INVERSE_SQUARE,
              Source.of(
                  "D. Goldfarb and A. Idnani, A numerically stable dual method for solving strictly"
                      + " convex quadratic programs, Mathematical Programming 27 (1983)"),
              COMMON_PRACTICE)
          .limits(
              "Straight paths: what reaches the seat by a reflection or around a seat arrives"
                  + " later.",
              "Filters are of analog form; digital ones depart from it near half the sample rate.",
              "The loudspeaker's own phase is not in it, which in the bass can outweigh all of this:"
                  + " measure the sum of a subwoofer and its partners.",
              "Where channels meet they are taken to be equally loud at the seat, as the trims make"
                  + " them; in the bass one moved for the main seat may add worse at another.",
              "Filters set phases, not delays: their group delay is neither added nor taken off.",
              "The weighted spread of two unequal seats is least when the heavier seat is aligned"
                  + " alone; equal weights share what is left.",
              "Trims follow the distance law, which inside a cabin holds for a few tenths of a metre"
                  + " only.",
              "Measured arrivals must all count from the same moment and be taken at the temperature"
                  + " given; what all channels have in common does no harm.")
          .findings(AlignmentFinding.values())
          .refusals(FilterFault.and(AlignmentFault.values()))
          .build();

  @Override
  public Card<SeatDelaysRequest, SeatDelaysResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.PLAN);
  }

  @Override
  public SeatDelaysRequest ask(PlanReader plan) {
    VehiclePlan vehicle = plan.plan();
    List<SeatDelaysRequest.PlacedChannel> channels = new ArrayList<>();
    for (int c = 0; c < vehicle.channels().size(); c++) {
      PlannedChannel channel = vehicle.channels().get(c);
      plan.called("/channels/" + c + "/name", "/channels/" + c + "/id");
      channels.add(
          SeatDelaysRequestPlacedChannelBuilder.builder()
              .name(channel.id())
              .chainDelayMs(channel.chainDelayMs())
              .highPass(channel.highPass())
              .lowPass(channel.lowPass())
              .fullRange(channel.fullRange())
              .polarity(channel.polarity())
              .build());
    }
    return SeatDelaysRequestBuilder.builder()
        .channels(channels)
        .seats(vehicle.seats().stream().map(seat -> unplaced(seat, plan)).toList())
        .distances(distances(plan))
        .crossovers(vehicle.crossovers())
        .processor(vehicle.processor())
        .temperatureC(plan.temperatureC())
        .build();
  }

  /** By name and weight only: how far it is from each channel is said beside. */
  private static Seat unplaced(Seat seat, PlanReader plan) {
    return plan.made(
        new Seat(seat.name(), seat.weight(), null, null, null),
        "/seats/" + plan.plan().seats().indexOf(seat));
  }

  /** The mean over the drivers of each channel: so long its sound is on the way. */
  private static List<SeatDelaysRequest.Distance> distances(PlanReader plan) {
    VehiclePlan vehicle = plan.plan();
    List<SeatDelaysRequest.Distance> distances = new ArrayList<>();
    for (int c = 0; c < vehicle.channels().size(); c++) {
      for (Seat seat : vehicle.seats()) {
        double sum = 0;
        for (int driver : plan.index().driversOf(c)) {
          sum += vehicle.drivers().get(driver).position().distanceTo(seat.head());
        }
        distances.add(
            plan.made(
                new SeatDelaysRequest.Distance(
                    vehicle.channels().get(c).id(),
                    seat.name(),
                    sum / plan.index().driversOf(c).size()),
                PlanReader.channelAt(c)));
      }
    }
    return distances;
  }

  @Override
  public SeatDelaysResult compute(SeatDelaysRequest q, Run run) {
    double speed = run.apply(Air.SPEED_OF_SOUND, q.temperatureC());
    Layout layout = LayoutReader.of(q, speed, run);
    double[] chainMs = q.channels().stream().mapToDouble(PlacedChannel::chainDelayMs).toArray();
    Spreads spreads = new Spreads(layout, chainMs);

    double[][] arrivals = spreads.arrivalsMs(speed, run);
    double[] flight =
        layout.points() == 1
            ? untilLast(arrivals, run)
            : LeastSpread.delaysMs(arrivals, layout.weight, run::checkDeadline);
    BassMatches matches = new BassMatches(q, layout, later(arrivals, flight), run);
    new MatchRemarks(q, run).remark(matches);
    double[] moved = matches.movedMs();
    double[] exact = fromNone(sum(flight, moved));
    DelaySteps settings = new DelaySteps(exact, q.processor(), run);
    DelayRemarks.on(q, settings.addedMs, run);
    double[] absolute = sum(chainMs, settings.addedMs);
    List<SeatDelaysResult.Crossover> crossovers =
        new CrossoverSums(q, layout, later(arrivals, settings.addedMs), run).all(matches);
    double cold = run.apply(Air.SPEED_OF_SOUND, COLD_C);
    double hot = run.apply(Air.SPEED_OF_SOUND, HOT_C);
    List<SeatDelaysResult.Seat> seats =
        seats(q, spreads, difference(settings.addedMs, moved), List.of(speed, cold, hot));
    remark(seats, layout.points(), run);
    double drift = drift(spreads, cold, hot, run);
    double[] trims = trims(q, layout, run);

    List<SeatDelaysResult.ChannelDelay> channels = new ArrayList<>();
    for (int c = 0; c < exact.length; c++) {
      channels.add(
          SeatDelaysResultChannelDelayBuilder.builder()
              .name(q.channels().get(c).name())
              .distanceM(layout.mean(layout.distanceM[c]))
              .arrivalMs(layout.mean(arrivals[c]))
              .flightDelayMs(flight[c])
              .delayMs(exact[c])
              .pathMm(run.apply(PATH, exact[c], speed))
              .delaySamples(settings.samples(c))
              .settingMs(settings.roundedMs(c))
              .absoluteSettingMs(absolute[c])
              .roundingErrorUs(
                  q.processor() == null ? null : 1000 * (settings.addedMs[c] - exact[c]))
              .trimDb(trims[c])
              .build());
    }
    return SeatDelaysResultBuilder.builder()
        .channels(channels)
        .seats(seats)
        .matches(matches.results())
        .crossovers(crossovers)
        .speedOfSoundMPerS(speed)
        .spreadMs(most(seats, SeatDelaysResult.Seat::spreadMs))
        .coldSpreadMs(most(seats, SeatDelaysResult.Seat::coldSpreadMs))
        .hotSpreadMs(most(seats, SeatDelaysResult.Seat::hotSpreadMs))
        .driftMs(drift)
        .build();
  }

  /** By the distance law; measured arrivals tell no distance, so nothing is turned down then. */
  private static double[] trims(SeatDelaysRequest q, Layout layout, Run run) {
    if (q.arrivals() == null) {
      return Trims.db(layout, run);
    }
    new Arrivals(q).remark(run);
    run.find(NO_TRIMS_FROM_ARRIVALS).at("/arrivals");
    return new double[q.channels().size()];
  }

  /** One listening point: everything waits for what arrives last. */
  private static double[] untilLast(double[][] arrivals, Run run) {
    double last = Arrays.stream(arrivals).mapToDouble(a -> a[0]).max().orElseThrow();
    return Arrays.stream(arrivals).mapToDouble(a -> run.apply(DELAY, last, a[0])).toArray();
  }

  /** What is left at each seat, at the speeds of sound as given, cold and hot. */
  private static List<SeatDelaysResult.Seat> seats(
      SeatDelaysRequest q, Spreads spreads, double[] addedMs, List<Double> speeds) {
    int count = q.seats().size();
    double[] unaligned = spreads.bySeatMs(speeds.get(0), new double[addedMs.length], count);
    List<double[]> left =
        speeds.stream().map(speed -> spreads.bySeatMs(speed, addedMs, count)).toList();
    List<SeatDelaysResult.Seat> seats = new ArrayList<>();
    for (int s = 0; s < count; s++) {
      seats.add(
          new SeatDelaysResult.Seat(
              q.seats().get(s).name(),
              unaligned[s],
              left.get(0)[s],
              left.get(1)[s],
              left.get(2)[s]));
    }
    return seats;
  }

  private static void remark(List<SeatDelaysResult.Seat> seats, int points, Run run) {
    for (int s = 0; s < seats.size(); s++) {
      if (points > 1 && seats.get(s).spreadMs() > REMARKABLE_SPREAD_MS) {
        run.find(SEATS_DISAGREE)
            .at("/seats/" + s)
            .value(seats.get(s).spreadMs())
            .limit(REMARKABLE_SPREAD_MS)
            .own("name", seats.get(s).name());
      }
    }
  }

  private static double drift(Spreads spreads, double cold, double hot, Run run) {
    double drift = spreads.driftMs(cold, hot, run);
    if (drift > REMARKABLE_DRIFT_MS) {
      run.find(TEMPERATURE_DRIFT).at("/temperature_c").value(drift).limit(REMARKABLE_DRIFT_MS);
    }
    return drift;
  }

  private static double[] sum(double[] one, double[] other) {
    double[] sum = one.clone();
    Arrays.setAll(sum, i -> one[i] + other[i]);
    return sum;
  }

  private static double[] difference(double[] one, double[] other) {
    return sum(one, Arrays.stream(other).map(value -> -value).toArray());
  }

  /** Delays moved together so that the smallest is 0. */
  private static double[] fromNone(double[] delays) {
    double least = Arrays.stream(delays).min().orElseThrow();
    return Arrays.stream(delays).map(delay -> delay - least).toArray();
  }

  /** Arrivals by channel and point with a delay added to each channel. */
  private static double[][] later(double[][] arrivals, double[] addedMs) {
    double[][] later = new double[arrivals.length][];
    for (int c = 0; c < later.length; c++) {
      double added = addedMs[c];
      later[c] = Arrays.stream(arrivals[c]).map(arrival -> arrival + added).toArray();
    }
    return later;
  }

  private static double most(
      List<SeatDelaysResult.Seat> seats, ToDoubleFunction<SeatDelaysResult.Seat> spread) {
    return seats.stream().mapToDouble(spread).max().orElseThrow();
  }
}
