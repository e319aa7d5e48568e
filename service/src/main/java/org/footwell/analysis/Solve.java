package org.footwell.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import org.footwell.analysis.Crossings.Found;
import org.footwell.analysis.SolveResult.Crossing;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Place;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;

/** The value of an input at which an output of a calculation reaches a target. */
public final class Solve<Q extends Record, R extends Record>
    implements Calculation<SolveRequest, SolveResult> {

  /** Values that are tried one by one at most. */
  static final int MOST_VALUES = 10_000;

  private static final Source BRENT =
      Source.of(
          "R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapters 4 and 5, as in"
              + " Apache Commons Math");

  private final Calculation<Q, R> subject;
  private final Card<SolveRequest, SolveResult> card;

  /** Of a calculation. */
  public Solve(Calculation<Q, R> subject) {
    this.subject = subject;
    this.card = card(subject.card());
  }

  private static Card<SolveRequest, SolveResult> card(Card<?, ?> subject) {
    return Card.of(subject.id() + "/solve", SolveRequest.class, SolveResult.class)
        .title("The value that leads to a target")
        .purpose(
            "At which value of an input does an output reach a target? Which gain gives 100 dB, which"
                + " cable loses 0.3 V, which box gives a Qtc of 0.707.")
        .example(
            """
            {"request": {"driver": {"rated_ohm": 4,
               "sensitivity": {"level_db_spl": 90, "basis": "one_watt"}}, "distance_m": 1},
             "input": "power_w", "from": 0.1, "to": 100,
             "output": "level_db_spl", "target": 100}
            """)
        .sources(BRENT)
        .limits(
            "The range is looked at in 64 steps: two crossings within one of them can be missed, where"
                + " the output turns back twice.",
            "Where only certain values may be taken, every one of them is tried.")
        .findings(SolveFinding.values())
        .refusals(
            AnalysisFault.UNKNOWN_INPUT,
            AnalysisFault.UNKNOWN_OUTPUT,
            AnalysisFault.NO_STANDARD_VALUE,
            AnalysisFault.TOO_MANY_POINTS,
            AnalysisFault.NOT_A_NUMBER)
        .withThoseOf(subject)
        .build();
  }

  @Override
  public Card<SolveRequest, SolveResult> card() {
    return card;
  }

  @Override
  public SolveResult compute(SolveRequest q, Run run) {
    Faults faults = new Faults();
    Optional<Varied<Q, R>> made =
        Varied.of(
            subject,
            q.request(),
            List.of(new Said(q.input(), "/input")),
            List.of(new Said(q.output(), "/output")),
            faults);
    Optional<double[]> only =
        made.filter(varied -> areNumbers(varied, q, faults))
            .flatMap(varied -> Candidates.of(q, varied.inputs().get(0), faults));
    made.ifPresent(
        varied ->
            varied.refuseWhatNoneMends(
                List.of(Varied.boxed(q.from()), Varied.boxed(q.to())), faults));
    run.refuse(faults);
    run.requireNoFaults();
    Varied<Q, R> varied = made.orElseThrow();
    DoubleFunction<Sample> look = value -> sample(value, varied.at(run, value));
    SolveFindings say = new SolveFindings(q, varied.inputs().get(0), varied.outputs().get(0), run);
    SolveResult result =
        only.isPresent()
            ? chosen(q, Samples.of(DoubleStream.of(only.get()), look), say)
            : crossed(q, Crossings.of(q.from(), q.to(), q.target(), q.side(), look), say);
    // Where nothing at all is known, the calculation itself says why.
    boolean nothing = result.seen().least() == null && result.seen().refusedCount() > 0;
    if (result.value() != null || nothing) {
      answerAt(nothing ? q.from() : result.value(), varied, run);
    }
    return result;
  }

  private static Sample sample(double value, Point point) {
    return new Sample(value, point.number(0), point.refused());
  }

  private static boolean areNumbers(Varied<?, ?> varied, SolveRequest q, Faults faults) {
    boolean input = isNumber(varied.inputs().get(0), "/input", q.input(), faults);
    return isNumber(varied.outputs().get(0), "/output", q.output(), faults) && input;
  }

  private static boolean isNumber(Place place, String at, String path, Faults faults) {
    if (!place.isNumber()) {
      faults.add(AnalysisFault.NOT_A_NUMBER).at(at).given(path);
    }
    return place.isNumber();
  }

  /** What the calculation says with this value becomes part of the answer. */
  private void answerAt(double value, Varied<Q, R> varied, Run run) {
    Rebase places = Rebase.to(Varied.REQUEST, null).with("", Varied.REQUEST);
    run.call(subject, varied.request(value), places);
    run.requireNoFaults();
  }

  /** Where any number may be taken. */
  private static SolveResult crossed(SolveRequest q, Crossings crossings, SolveFindings say) {
    Samples samples = crossings.samples();
    say.missing(samples);
    if (samples.isConstant()) {
      return flat(q, samples, say);
    }
    double range = samples.range();
    List<Found> jumps = crossings.found().stream().filter(one -> one.jumps(range)).toList();
    List<Sample> met =
        crossings.found().stream().filter(one -> !one.jumps(range)).map(Found::here).toList();
    // A jump is no crossing: it counts where the target is met nowhere.
    List<Sample> found = met.isEmpty() ? jumps.stream().map(q::sideOf).toList() : met;
    if (met.isEmpty()) {
      jumps.forEach(one -> say.jumps(one, q.sideOf(one)));
    }
    if (found.size() > 1) {
      say.several(found);
    }
    crossings.gaps().forEach(say::breaksOff);
    if (found.isEmpty() && crossings.gaps().isEmpty() && samples.isAnyKnown()) {
      say.notReached(samples);
    }
    return result(found, crossings.iterations(), samples);
  }

  /** Where only certain values may be taken: the best of those that will do. */
  private static SolveResult chosen(SolveRequest q, Samples samples, SolveFindings say) {
    say.missing(samples);
    if (samples.isConstant()) {
      return flat(q, samples, say);
    }
    Optional<Sample> best =
        samples.known().filter(q::allows).min(Comparator.comparingDouble(q::off));
    if (samples.isAnyKnown() && (best.isEmpty() || !samples.reach(q.target()))) {
      say.notReached(samples);
    }
    return result(best.stream().toList(), 0, samples);
  }

  private static SolveResult flat(SolveRequest q, Samples samples, SolveFindings say) {
    Sample any = samples.least().orElseThrow();
    boolean does = q.side() == Side.NEAREST ? samples.isAt(q.target()) : q.allows(any);
    say.flat(samples, does);
    return result(does ? List.of(any) : List.of(), 0, samples);
  }

  private static SolveResult result(List<Sample> found, int iterations, Samples samples) {
    return new SolveResult(
        found.isEmpty() ? null : (Double) found.get(0).value(),
        found.isEmpty() ? null : (Double) found.get(0).output(),
        iterations,
        found.size() < 2
            ? null
            : found.stream().map(one -> new Crossing(one.value(), one.output())).toList(),
        samples.told());
  }
}
