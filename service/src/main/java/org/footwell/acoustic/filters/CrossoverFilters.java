package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FiltersFinding.BAND_PASS_CLOSED;
import static org.footwell.acoustic.filters.FiltersFinding.FULL_SCALE_EXCEEDED;
import static org.footwell.acoustic.filters.FiltersFinding.HEIGHTS_WITHOUT_LISTENER;
import static org.footwell.acoustic.filters.FiltersFinding.NEAR_HALF_RATE;
import static org.footwell.acoustic.filters.FiltersFinding.POINT_SOURCES_ASSUMED;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Listening;
import org.footwell.acoustic.filters.CrossoverFiltersResult.DesignedSection;
import org.footwell.acoustic.filters.CrossoverFiltersResult.Handover;
import org.footwell.acoustic.filters.CrossoverFiltersResult.WayCurve;
import org.footwell.acoustic.filters.CrossoverFiltersResult.WayPoint;
import org.footwell.acoustic.filters.DesignedWay.Part;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.FilterFault;
import org.footwell.parts.FrequencyFault;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.Air;
import org.footwell.physics.FilterPrototype;
import org.footwell.signal.CirclePoint;
import org.footwell.signal.Response;
import org.footwell.signal.SectionDesign;
import org.footwell.signal.SectionFault;

/** Crossover and equaliser filters as digital sections, and what all ways sum to. */
public final class CrossoverFilters
    implements Calculation<CrossoverFiltersRequest, CrossoverFiltersResult>,
        AskOfPlan<CrossoverFiltersRequest> {

  /** Above this part of the sample rate the bilinear transform visibly squeezes the curve. */
  private static final double SQUEEZED = 0.25;

  private static final double LIFT_DB = 0.1;

  private static final Card<CrossoverFiltersRequest, CrossoverFiltersResult> CARD =
      Card.of("crossover-filters", CrossoverFiltersRequest.class, CrossoverFiltersResult.class)
          .title("Digital crossover filters")
          .purpose(
              "Which coefficients make the wanted filters in a signal processor, what its number"
                  + " format does to them, and how flat all ways sum: with their delays,"
                  + " polarities and levels, and above and below the listener.")
          .example(
              """
              {"rate_hz": 48000,
               "ways": [
                {"id": "woofer",
                 "high_pass": {"kind": "butterworth", "order": 4, "frequency_hz": 60},
                 "low_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 2500},
                 "height_m": -0.15},
                {"id": "tweeter",
                 "high_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 2500},
                 "gain_db": -1.5}],
               "sections": [
                {"channel": "woofer", "kind": "peak", "frequency_hz": 140, "q": 2, "gain_db": -4},
                {"channel": "tweeter", "kind": "high_shelf", "frequency_hz": 9000, "q": 0.7071,
                 "gain_db": 1.5}],
               "coefficient_format": {"kind": "fixed", "word_bits": 28, "fraction_bits": 24},
               "listening": {"distance_m": 0.9, "heights_m": [-0.2, 0.2]},
               "frequencies": {"spacing": "third_octave"}}
              """)
          .sources(
              FilterPrototype.BUTTERWORTH,
              FilterPrototype.LINKWITZ,
              FilterPrototype.THOMSON,
              SectionDesign.COOKBOOK,
              SummedWays.SPHERICAL,
              Air.ISO_9613_1,
              CurveFrequencies.IEC_61260_1,
              Source.COMMON_PRACTICE)
          .limits(
              "The bilinear transform squeezes curves towards half the sample rate: levels are"
                  + " right at each corner and centre, bandwidths and a Bessel filter's delay are"
                  + " not kept near there.",
              "Rounding is that of coefficients; rounding of the signal within a section, its noise"
                  + " and overflow depend on the device and are left out.",
              "Filters alone: what the drivers add must be measured. A flat sum of filters is not"
                  + " yet a flat sum of sound.",
              "The sum at a listener is that of point sources without reflections.")
          .findings(FiltersFinding.values())
          .refusals(FiltersFault.values())
          .refusals(FilterFault.values())
          .refusals(SectionFault.values())
          .refusals(FrequencyFault.RANGE_WITHOUT_POINTS)
          .build();

  @Override
  public Card<CrossoverFiltersRequest, CrossoverFiltersResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.CROSSOVER, PlanPlace.CHANNEL);
  }

  @Override
  public CrossoverFiltersRequest ask(PlanReader plan) {
    return new FiltersOfPlan(plan).request();
  }

  @Override
  public CrossoverFiltersResult compute(CrossoverFiltersRequest q, Run run) {
    double[] points = q.frequencies().points();
    WayReader reader = new WayReader(q, run);
    List<DesignedWay> ways = IntStream.range(0, q.ways().size()).mapToObj(reader::way).toList();
    SummedWays sum = sum(ways, q, run);
    sum.note(run);
    remarkOnRequest(q, ways, run);
    Sums sums = new Sums(q, ways, sum, points, run);
    List<Handover> handovers = new Handovers(sum, sums, run).all();
    return new CrossoverFiltersResult(
        ways.stream().flatMap(way -> sections(way, q).stream()).toList(),
        ways.stream().map(way -> curve(way, q, sum, points, run)).toList(),
        sums.result(),
        handovers,
        sums.heights());
  }

  private static SummedWays sum(List<DesignedWay> ways, CrossoverFiltersRequest q, Run run) {
    Listening listening = q.listening();
    return listening == null
        ? new SummedWays(ways, q.rateHz(), null, 0)
        : new SummedWays(
            ways,
            q.rateHz(),
            listening.distanceM(),
            run.apply(Air.SPEED_OF_SOUND, listening.temperatureC()));
  }

  private static void remarkOnRequest(CrossoverFiltersRequest q, List<DesignedWay> ways, Run run) {
    boolean placed = false;
    for (DesignedWay way : ways) {
      placed |= way.heightM() != 0 || way.behindM() != 0;
      if (way.highPass() != null
          && way.lowPass() != null
          && way.highPass().frequencyHz() >= way.lowPass().frequencyHz()) {
        run.find(BAND_PASS_CLOSED)
            .at(way.pointer())
            .value(way.highPass().frequencyHz())
            .limit(way.lowPass().frequencyHz())
            .own("way", way.id());
      }
      for (Part part : way.parts()) {
        if (part.frequencyHz() > SQUEEZED * q.rateHz()) {
          run.find(NEAR_HALF_RATE)
              .at(part.pointer() + "/frequency_hz")
              .value(part.frequencyHz())
              .limit(SQUEEZED * q.rateHz());
        }
      }
    }
    if (q.listening() != null) {
      run.find(POINT_SOURCES_ASSUMED).at("/listening");
    } else if (placed) {
      run.find(HEIGHTS_WITHOUT_LISTENER).at("/ways");
    }
  }

  private static List<DesignedSection> sections(DesignedWay way, CrossoverFiltersRequest q) {
    boolean rounds = q.coefficientFormat().rounds();
    return way.parts().stream()
        .map(
            part ->
                new DesignedSection(
                    way.id(),
                    part.pointer(),
                    part.exact(),
                    rounds ? part.rounded() : null,
                    part.exact().poleRadius(),
                    rounds ? (Double) part.rounded().poleRadius() : null))
        .toList();
  }

  private static WayCurve curve(
      DesignedWay way, CrossoverFiltersRequest q, SummedWays sum, double[] points, Run run) {
    double[] grid = LevelRange.grid(q.frequencies().fromHz(), q.frequencies().toHz(), sum.narrow());
    LevelRange range = LevelRange.of(f -> way.levelDb(sum.point(f)), grid, run);
    if (range.highestDb() > LIFT_DB) {
      run.find(FULL_SCALE_EXCEEDED)
          .at(way.pointer())
          .value(range.highestDb())
          .limit(0)
          .own("way", way.id())
          .with("frequency", range.highestHz());
    }
    RoundingCheck.Change error =
        new RoundingCheck(q.coefficientFormat(), sum, run)
            .of(way, range.highestDb(), RoundingCheck.places(grid, points, q.rateHz()));
    List<WayPoint> curve = new ArrayList<>(points.length);
    for (double f : points) {
      CirclePoint p = sum.point(f);
      Response here = way.at(p);
      curve.add(
          new WayPoint(
              f,
              here.levelDb(),
              here.phaseDeg(),
              here.delaySamples() * 1000 / q.rateHz(),
              error == null ? null : (Double) way.roundedLevelDb(p)));
    }
    return new WayCurve(
        way.id(),
        range.highestDb(),
        range.highestHz(),
        way.delaySamples(),
        error == null ? null : (Double) error.errorDb(),
        error == null ? null : (Double) error.frequencyHz(),
        curve);
  }
}
