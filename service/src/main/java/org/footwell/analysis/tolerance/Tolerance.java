package org.footwell.analysis.tolerance;

import static org.footwell.calculation.Source.COMMON_PRACTICE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.analysis.AnalysisFault;
import org.footwell.analysis.Point;
import org.footwell.analysis.Said;
import org.footwell.analysis.Varied;
import org.footwell.analysis.tolerance.ToleranceResult.SampledInput;
import org.footwell.analysis.tolerance.ToleranceResult.VerdictShares;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Caution;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Faults;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Place;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Source;
import org.footwell.calculation.UnknownPath;

/**
 * The error budget of a calculation: it is asked with many values of the inputs that are known within
 * tolerances only.
 */
public final class Tolerance<Q extends Record, R extends Record>
    implements Calculation<ToleranceRequest, ToleranceResult> {

  private static final Source GUM = Source.of("JCGM 100:2008 (GUM), 4.3.4, 4.3.7 and 4.3.9");

  private static final Formula.Of2 DEVIATION =
      Formula.of("deviation", "a·k, k 1/1.96 normal, 1/√3 uniform, 1/√6 triangular", "", GUM)
          .with("a", "k", (around, share) -> around * share);

  private final Calculation<Q, R> subject;
  private final Shape<Q> asked;
  private final Shape<R> answered;
  private final Card<ToleranceRequest, ToleranceResult> card;

  /** Of one calculation. */
  public Tolerance(Calculation<Q, R> subject) {
    this.subject = subject;
    this.asked = Shape.of(subject.card().request());
    this.answered = Shape.of(subject.card().result());
    this.card = card(subject.card());
  }

  private static <Q extends Record, R extends Record> Card<ToleranceRequest, ToleranceResult> card(
      Card<Q, R> subject) {
    return Card.of(subject.id() + "/tolerance", ToleranceRequest.class, ToleranceResult.class)
        .title("Error budget")
        .purpose(
            "The inputs of a calculation are known within tolerances only: how far may its answer be"
                + " off, which verdict may it come to, which input drives it, and which measurement is"
                + " worth making next?")
        .example("{\"request\": " + subject.example().strip() + ", \"usual_tolerances\": true}")
        .sources(
            GUM,
            Source.of("A. B. Owen, Latin supercube sampling, ACM TOMACS 8 (1998)"),
            Source.of("D. G. Bonett and T. A. Wright, Psychometrika 65 (2000)"),
            Source.of("A. Saltelli et al., Computer Physics Communications 181 (2010)"),
            COMMON_PRACTICE)
        .limits(
            "Inputs are taken as independent of each other unless they share a group; those of one data"
                + " sheet, such as qts and its parts, are not.",
            "The error of the model itself is not in it: only that of its inputs.",
            "Values beyond what a field allows are refused by the calculation, counted and left out of"
                + " the figures; none is moved to the limit.")
        .findings(ToleranceFinding.values())
        .refusals(refusals(subject))
        .cautions(subject.cautions().toArray(Caution[]::new))
        .occasionalCautions(subject.occasionalCautions().toArray(Caution[]::new))
        .build();
  }

  private static FaultCode[] refusals(Card<?, ?> subject) {
    return Stream.of(
            Stream.of(ToleranceFault.values()),
            Stream.of(AnalysisFault.values()),
            subject.refusals().stream())
        .flatMap(all -> all)
        .toArray(FaultCode[]::new);
  }

  @Override
  public Card<ToleranceRequest, ToleranceResult> card() {
    return card;
  }

  @Override
  public ToleranceResult compute(ToleranceRequest q, Run run) {
    Uncertainties uncertain = new Uncertainties(q, asked);
    Varied<Q, R> varied = varied(q, uncertain, run);
    Point stated = stated(varied, uncertain, run);
    Sampling sampling =
        new Sampling(q.sampleCount(), uncertain.drawn().size(), q.indices(), q.seed());
    Runs runs =
        RunsInTime.of(
            sampling,
            varied.outputs().size(),
            n -> varied.at(run, uncertain.at(sampling.shares(n))),
            run);
    requireAnswers(runs, sampling.count(), run);
    Budgets budgets = new Budgets(sampling, uncertain.drawn(), runs, run);
    List<OutputBudget> outputs =
        IntStream.range(0, varied.outputs().size())
            .mapToObj(i -> budgets.of(i, varied.outputs().get(i).path(), stated.number(i)))
            .filter(budget -> q.outputs() != null || budget.answeredCount() > 0)
            .toList();
    ToleranceResult result =
        new ToleranceResult(
            sampling.count(),
            sampling.runCount(),
            stated.verdict(),
            VerdictShares.of(runs, sampling.count()),
            outputs,
            uncertain.all().stream().map(one -> sampled(one, run)).toList(),
            runs.refusals());
    Remarks.on(result, run);
    return result;
  }

  private static SampledInput sampled(Tolerated one, Run run) {
    return new SampledInput(
        one.said().path(),
        (Double) one.number(),
        one.around(),
        one.distribution(),
        run.apply(DEVIATION, one.around(), one.distribution().deviation()),
        one.group(),
        one.source());
  }

  /** Refuses with everything that is wrong before a number is drawn. */
  private Varied<Q, R> varied(ToleranceRequest q, Uncertainties uncertain, Run run) {
    boolean sound = uncertain.require(run);
    List<Said> outputs = outputs(q, run);
    Cost.require(q, uncertain.drawn().size(), run);
    Faults faults = new Faults();
    Optional<Varied<Q, R>> varied =
        Varied.of(subject, q.request(), uncertain.said(), outputs, faults);
    if (sound) {
      List<Object[]> stated = List.<Object[]>of(Varied.boxed(uncertain.stated()));
      varied.ifPresent(of -> of.refuseWhatNoneMends(stated, faults));
    }
    run.refuse(faults);
    run.requireNoFaults();
    return varied.orElseThrow();
  }

  private List<Said> outputs(ToleranceRequest q, Run run) {
    if (q.outputs() == null) {
      List<Said> single = singleNumbers();
      if (single.isEmpty()) {
        run.refuse(CoreFault.REQUIRED).at("/outputs");
      }
      return single;
    }
    List<Said> said = new ArrayList<>();
    for (int i = 0; i < q.outputs().size(); i++) {
      String path = q.outputs().get(i);
      said.add(new Said(path, "/outputs/" + i));
      if (place(path).filter(place -> !place.isNumber()).isPresent()) {
        run.refuse(AnalysisFault.NOT_A_NUMBER).at("/outputs/" + i).given(path);
      }
    }
    return said;
  }

  /** The numbers of the result outside of lists. */
  private List<Said> singleNumbers() {
    return answered.singles().stream()
        .filter(path -> place(path).filter(Place::isNumber).isPresent())
        .limit(ToleranceRequest.MOST_OUTPUTS)
        .map(path -> new Said(path, "/outputs"))
        .toList();
  }

  private Optional<Place> place(String path) {
    try {
      return Optional.of(answered.place(path));
    } catch (UnknownPath toldWithTheOthers) {
      return Optional.empty();
    }
  }

  /** The answer with the inputs exactly as stated; without one there is nothing to be off from. */
  private Point stated(Varied<Q, R> varied, Uncertainties uncertain, Run run) {
    double[] numbers = uncertain.stated();
    Point stated = varied.at(run, numbers);
    if (stated.refused() != null) {
      Rebase within =
          Rebase.to(Varied.REQUEST, null)
              .with("", Varied.REQUEST)
              .without(subject.card().findings().toArray(FindingCode[]::new));
      run.call(subject, varied.request(Varied.boxed(numbers)), within);
      run.requireNoFaults();
    }
    return stated;
  }

  private static void requireAnswers(Runs runs, int samples, Run run) {
    double answers = (double) Math.round((1 - runs.share(null, samples)) * samples);
    if (answers < Budgets.LEAST) {
      RefusedRuns why = runs.refusals().get(0);
      run.refuse(ToleranceFault.TOO_FEW_ANSWERED)
          .at("/inputs")
          .value(answers)
          .limit(samples)
          .own("place", why.pointer())
          .own("code", why.code());
      run.requireNoFaults();
    }
  }
}
