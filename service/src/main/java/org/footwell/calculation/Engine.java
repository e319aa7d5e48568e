package org.footwell.calculation;

import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;

/**
 * Answers requests: validate, compute, refuse nonsense, judge. Only it answers callers; a calculation
 * that asks another does so within its own run.
 */
public final class Engine {

  private static final Comparator<Finding> WORST_FIRST =
      Comparator.comparing(Finding::level).reversed();

  private final Map<String, Map<Locale, List<String>>> safety = new ConcurrentHashMap<>();

  /**
   * Answers a request.
   *
   * @param workings whether every step is wanted
   * @param within how long the calculation may take
   * @throws Refused with every fault, if the request cannot be answered
   * @throws DeadlinePassed if time ran out
   */
  public <Q extends Record, R extends Record> Answer<R> answer(
      Calculation<Q, R> calculation, Q request, boolean workings, Duration within) {
    return answer(calculation, request, workings, within, Reader.ANYONE);
  }

  /** The same in the language of a reader. */
  public <Q extends Record, R extends Record> Answer<R> answer(
      Calculation<Q, R> calculation, Q request, boolean workings, Duration within, Reader reader) {
    Card<Q, R> card = calculation.card();
    Run run = start(card, workings, within);
    R result = keepingTo(card, run, () -> run(calculation, request, run));
    return told(card, run, null, request, result, naming(request, reader));
  }

  /**
   * Puts a calculation to a document: reads its request from it, and answers that. Findings and faults
   * point into the document.
   *
   * @param about the place it is about, or empty for the document as a whole
   * @throws Refused with everything that is missing or wrong in the document
   */
  public <D extends Record, Q extends Record, R extends Record> Answer<R> answer(
      Calculation<Q, R> calculation,
      Document<D> kind,
      D document,
      String about,
      boolean workings,
      Duration within,
      Reader reader) {
    Card<Q, R> card = calculation.card();
    Run run = new Run(this, Shape.of(kind.type()), workings, System.nanoTime() + within.toNanos());
    run.requireSound(document, kind.getClass());
    Asked<Q> asked = kind.ask(calculation, document, about, run);
    R result = keepingTo(card, run, () -> run(calculation, asked, run));
    return told(card, run, asked.request(), asked.request(), result, naming(document, reader));
  }

  private <Q extends Record, R extends Record> R run(
      Calculation<Q, R> calculation, Asked<Q> asked, Run run) {
    run.require(calculation, asked);
    return run.call(calculation, asked.request(), asked.places()).orElseThrow(run::refused);
  }

  /** Who reads of what was sent on a sheet is told of its parts by their names. */
  private static Reader naming(Record sent, Reader reader) {
    return reader.wording() == Reader.Wording.ON_SHEETS && sent instanceof CallsByName parts
        ? reader.calling(parts::called)
        : reader;
  }

  /** An answer; shows the request where it was read from a document. */
  private <Q extends Record, R extends Record> Answer<R> told(
      Card<Q, R> card, Run run, Q shown, Q request, R result, Reader reader) {
    List<Finding> findings = run.findings(reader);
    findings.sort(WORST_FIRST);
    Verdict verdict = findings.isEmpty() ? Verdict.OK : findings.get(0).level();
    List<Step> workings =
        run.steps() == null ? null : AccountedSteps.after(run.steps(), card, request, result);
    return new Answer<>(shown, result, findings, verdict, safety(card, run, reader), workings);
  }

  /** Answers a request like {@link #answer}, with nothing put into words. */
  public <Q extends Record, R extends Record> Outcome<R> outcome(
      Calculation<Q, R> calculation, Q request, Duration within) {
    return outcome(calculation, request, System.nanoTime() + within.toNanos());
  }

  <Q extends Record, R extends Record> Outcome<R> outcome(
      Calculation<Q, R> calculation, Q request, long deadlineNanos) {
    Card<Q, R> card = calculation.card();
    Run run = new Run(this, Shape.of(card.request()), false, deadlineNanos);
    R result = keepingTo(card, run, () -> run(calculation, request, run));
    return new Outcome<>(result, run.codes(), run.verdict());
  }

  /** Answers a request like {@link #answer}, without the sentences and lists. */
  public <Q extends Record, R extends Record> Brief brief(
      Calculation<Q, R> calculation, Q request, Duration within) {
    Card<Q, R> card = calculation.card();
    Run run = start(card, false, within);
    Object[] values = keepingTo(card, run, () -> values(calculation, request, run));
    return new Brief(Arrays.asList(values), run.codes(), run.verdict());
  }

  /**
   * Makes the request of a calculation of untyped maps, lists, texts, numbers and truth values.
   *
   * @param cells whether every value came as text, as in a query or a CSV row
   * @throws Refused with every fault of form, bounds and rules, if there is any of form
   */
  public <Q extends Record> Q bind(Calculation<Q, ?> calculation, Object given, boolean cells) {
    Shape<Q> shape = Shape.of(calculation.card().request());
    return bind(shape, given, cells, (q, faults) -> shape.check(q, calculation.getClass(), faults));
  }

  /** Makes a document of untyped values likewise. */
  public <D extends Record> D bind(Document<D> kind, Object given) {
    Shape<D> shape = Shape.of(kind.type());
    return bind(shape, given, false, (d, faults) -> shape.check(d, kind.getClass(), faults));
  }

  /** Makes a record likewise, whoever is asked by it. */
  public <Q extends Record> Q bind(Class<Q> type, Object given, boolean cells) {
    Shape<Q> shape = Shape.of(type);
    return bind(shape, given, cells, shape::check);
  }

  private static <Q extends Record> Q bind(
      Shape<Q> shape, Object given, boolean cells, BiConsumer<Q, Faults> check) {
    Faults faults = new Faults();
    Q request = shape.bind(given, cells, faults);
    if (!faults.none()) {
      if (request != null) {
        check.accept(request, faults);
      }
      throw new Refused(faults);
    }
    return request;
  }

  /**
   * Makes a request of untyped maps, lists, texts, numbers and truth values, and holds it against
   * bounds and rules.
   *
   * @throws Refused with every fault
   */
  public <Q extends Record> Q checked(Class<Q> type, Object given) {
    Faults faults = new Faults();
    Q request = bind(type, given, false);
    Shape.of(type).check(request, faults);
    if (!faults.none()) {
      throw new Refused(faults);
    }
    return request;
  }

  private Run start(Card<?, ?> card, boolean workings, Duration within) {
    long deadline = System.nanoTime() + within.toNanos();
    return new Run(this, Shape.of(card.request()), workings, deadline);
  }

  /** With assertions on, an answer and a refusal carry nothing that the card does not announce. */
  private static <T> T keepingTo(Card<?, ?> card, Run run, Supplier<T> work) {
    try {
      T done = work.get();
      assert run.keepsTo(card);
      return done;
    } catch (Refused refused) {
      assert refused.collected().codes().allMatch(card::mayRefuse);
      throw refused;
    }
  }

  private <Q extends Record, R extends Record> Object[] values(
      Calculation<Q, R> calculation, Q request, Run run) {
    R result = compute(calculation, request, run);
    Object[] values = Shape.of(calculation.card().result()).values(result, run.faults());
    run.requireNoFaults();
    return values;
  }

  <Q extends Record, R extends Record> R run(Calculation<Q, R> calculation, Q request, Run run) {
    R result = compute(calculation, request, run);
    Shape.of(calculation.card().result()).requireFinite(result, run.faults());
    run.requireNoFaults();
    return result;
  }

  private <Q extends Record, R extends Record> R compute(
      Calculation<Q, R> calculation, Q request, Run run) {
    run.requireSound(request, calculation.getClass());
    R result = calculation.compute(request, run);
    run.requireNoFaults();
    return result;
  }

  /** What stands with every answer, then what this one makes relevant. */
  private List<String> safety(Card<?, ?> card, Run run, Reader reader) {
    List<String> always = safety(card, reader);
    return run.cautions().isEmpty()
        ? always
        : Stream.concat(
                always.stream(),
                run.cautions().stream().map(one -> Texts.of(one, reader.language())))
            .toList();
  }

  private List<String> safety(Card<?, ?> card, Reader reader) {
    Map<Locale, List<String>> known =
        safety.computeIfAbsent(card.id(), id -> new ConcurrentHashMap<>());
    return known.computeIfAbsent(
        reader.language(),
        language -> card.cautions().stream().map(one -> Texts.of(one, language)).toList());
  }
}
