package org.footwell.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.CoreWords;
import org.footwell.calculation.text.Given;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;

/**
 * One run of a calculation: notes steps when workings are wanted, collects findings and faults, and
 * knows the deadline. Confined to one thread.
 */
public final class Run implements Arithmetic, Refusing {

  private static final Verdict[] MILDEST_FIRST = Verdict.values();

  private final Engine engine;
  private final Shape<?> request;
  private final long deadlineNanos;
  private final Rebase rebase;
  private final Run outer;
  private final List<Step> steps;
  private final List<Remark> findings;

  /** For each finding the run that has it, which knows its place. */
  private final List<Run> finders;

  /** What this request makes relevant, in the order it was said. */
  private final Set<Caution> cautions;

  private final Faults faults;

  /** A run of its own. */
  Run(Engine engine, Shape<?> request, boolean workings, long deadlineNanos) {
    this.engine = engine;
    this.request = request;
    this.deadlineNanos = deadlineNanos;
    this.rebase = Rebase.NOWHERE;
    this.outer = null;
    this.steps = workings ? new ArrayList<>() : null;
    this.findings = new ArrayList<>(2);
    this.finders = new ArrayList<>(2);
    this.cautions = new LinkedHashSet<>();
    this.faults = new Faults(this::outerPointer);
  }

  /** A run within another: shares what it collects, and points into the outer request. */
  private Run(Run outer, Shape<?> request, Rebase rebase) {
    this(outer, request, rebase, false);
  }

  /** The same, with findings and cautions of its own where it stands apart; it notes no steps then. */
  private Run(Run outer, Shape<?> request, Rebase rebase, boolean apart) {
    this.engine = outer.engine;
    this.request = request;
    this.deadlineNanos = outer.deadlineNanos;
    this.rebase = rebase;
    this.outer = outer;
    this.steps = apart ? null : outer.steps;
    this.findings = apart ? new ArrayList<>() : outer.findings;
    this.finders = apart ? new ArrayList<>() : outer.finders;
    this.cautions = apart ? new LinkedHashSet<>() : outer.cautions;
    this.faults = new Faults(this::outerPointer);
  }

  @Override
  public double apply(Formula.Of1 formula, double a) {
    double value = formula.at(a);
    return plain(value) ? value : note(formula.formula(), value, a);
  }

  @Override
  public double apply(Formula.Of2 formula, double a, double b) {
    double value = formula.at(a, b);
    return plain(value) ? value : note(formula.formula(), value, a, b);
  }

  @Override
  public double apply(Formula.Of3 formula, double a, double b, double c) {
    double value = formula.at(a, b, c);
    return plain(value) ? value : note(formula.formula(), value, a, b, c);
  }

  @Override
  public double apply(Formula.Of4 formula, double a, double b, double c, double d) {
    double value = formula.at(a, b, c, d);
    return plain(value) ? value : note(formula.formula(), value, a, b, c, d);
  }

  /** Whether nothing needs noting: the way almost every step of almost every run goes. */
  private boolean plain(double value) {
    return steps == null && Math.abs(value) <= Double.MAX_VALUE;
  }

  private double note(Formula formula, double value, double... numbers) {
    Map<String, Double> inputs = new LinkedHashMap<>();
    for (int i = 0; i < numbers.length; i++) {
      inputs.put(formula.inputs().get(i), numbers[i]);
    }
    if (!Double.isFinite(value)) {
      refuse(CoreFault.NOT_FINITE)
          .field("quantity", formula.quantity())
          .with(
              "how",
              Phrase.of(CoreWords.BY_FORMULA)
                  .own("formula", formula.text())
                  .own("inputs", inputs.toString()));
      throw refused();
    }
    String subject = outerPointer("");
    steps.add(
        new Step(
            subject.isEmpty() ? null : subject,
            formula.quantity(),
            formula.text(),
            inputs,
            value,
            formula.unit(),
            formula.source().citation()));
    return value;
  }

  /** Adds a finding; the remark returned takes what it is about. */
  public Remark find(FindingCode code) {
    Remark remark = new Remark(code, this::outerPointer, subject());
    if (!left(code)) {
      findings.add(remark);
      finders.add(this);
    }
    return remark;
  }

  /** Whether this run or one around it judges such findings on the whole. */
  private boolean left(FindingCode code) {
    return rebase.leaves(code) || (outer != null && outer.left(code));
  }

  /** Adds a caution that this request makes relevant, to those that stand with every answer. */
  public void caution(Caution caution) {
    cautions.add(caution);
  }

  /** Adds a fault: the request is refused when the calculation ends or gives up. */
  @Override
  public Remark refuse(FaultCode code) {
    return faults.add(code);
  }

  /** Refuses this request where it breaks a rule beside a calculation that it is not put to. */
  public void hold(Record asked, Class<?> declaring) {
    Shape.of(asked.getClass()).hold(asked, declaring, faults);
  }

  /** Adds faults of something that stands in this request. */
  public void refuse(Faults others) {
    faults.addAll(others);
  }

  /** Refuses unless exactly one of the alternatives below {@code pointer} is given. */
  public void exactlyOneOf(String pointer, Map<String, ?> alternatives) {
    long given = alternatives.values().stream().filter(Objects::nonNull).count();
    if (given != 1) {
      refuse(CoreFault.EXACTLY_ONE_OF)
          .at(pointer)
          .given(given == 0 ? Given.NONE_OF_THEM : Given.MORE_THAN_ONE)
          .allowed(Allowed.fields(alternatives.keySet()));
    }
  }

  /** Stops here if anything was refused so far. */
  public void requireNoFaults() {
    if (!faults.none()) {
      throw refused();
    }
  }

  /** The exception that ends a calculation which cannot go on; carries all faults so far. */
  public Refused refused() {
    return new Refused(faults);
  }

  /** Ends this run if a request of its shape is not within its bounds or breaks a rule. */
  void requireSound(Record asked, Class<?> declaring) {
    request.check(asked, declaring, faults);
    requireNoFaults();
  }

  @Override
  public void checkDeadline() {
    if (System.nanoTime() - deadlineNanos > 0) {
      throw new DeadlinePassed();
    }
  }

  /**
   * Runs another calculation as part of this one. Its findings and faults point into this request.
   *
   * @return its result, or empty if it was refused: its faults are then among those of this run
   */
  public <Q extends Record, R extends Record> Optional<R> call(
      Calculation<Q, R> calculation, Q request, Rebase to) {
    checkDeadline();
    Shape<Q> nested = Shape.of(calculation.card().request());
    assert to.leadsFrom(nested, this.request);
    try {
      return Optional.of(engine.run(calculation, request, new Run(this, nested, to)));
    } catch (Refused refused) {
      faults.addAll(refused.collected());
      return Optional.empty();
    }
  }

  /**
   * Asks another calculation on the side, within the time this one has left: what it finds is no part
   * of this run. From any thread.
   *
   * @throws Refused if it cannot answer
   */
  public <Q extends Record, R extends Record> Outcome<R> aside(
      Calculation<Q, R> calculation, Q request) {
    checkDeadline();
    return engine.outcome(calculation, request, deadlineNanos);
  }

  /**
   * What work on a part of this request came to, its findings for themselves.
   *
   * @param codes of the findings, each once, worst first
   */
  public record Apart<T>(T value, List<String> codes, Verdict verdict) {}

  /**
   * Works on a part of this request with findings and cautions that are not those of this run; faults are,
   * and point into this request.
   *
   * @throws Refused with all faults so far, if the work refuses
   */
  public <Q extends Record, T> Apart<T> apart(Class<Q> part, Rebase to, Function<Run, T> work) {
    checkDeadline();
    Shape<Q> nested = Shape.of(part);
    assert to.leadsFrom(nested, request);
    Run own = new Run(this, nested, to, true);
    try {
      T value = work.apply(own);
      own.requireNoFaults();
      return new Apart<>(value, own.codes(), own.verdict());
    } catch (Refused refused) {
      faults.addAll(refused.collected());
      throw refused();
    }
  }

  /** Patience for a share of the time that is left until the deadline; the rest is for what follows. */
  public Patience patience(double share) {
    long end = deadlineNanos - (long) ((1 - share) * leftNanos());
    return () -> System.nanoTime() - end < 0;
  }

  private long leftNanos() {
    return deadlineNanos - System.nanoTime();
  }

  /**
   * JSON Pointers to what a request that was read from the document of this run misses in it, each
   * once; none where nothing is.
   */
  public <Q extends Record> List<String> missing(Calculation<Q, ?> calculation, Asked<Q> asked) {
    return faultsOf(calculation, asked).places().stream().distinct().toList();
  }

  /** Stops here if the document of this run misses something for a request. */
  <Q extends Record> void require(Calculation<Q, ?> calculation, Asked<Q> asked) {
    faults.addAll(faultsOf(calculation, asked));
    requireNoFaults();
  }

  /** Where there is not even what the question is about, its declared rules say nothing. */
  private <Q extends Record> Faults faultsOf(Calculation<Q, ?> calculation, Asked<Q> asked) {
    Faults all = new Faults(this::outerPointer);
    asked.missing().forEach(pointer -> all.add(CoreFault.REQUIRED).at(pointer));
    if (asked.posed()) {
      Shape<Q> nested = Shape.of(calculation.card().request());
      Run within = new Run(this, nested, asked.places());
      nested.check(asked.request(), calculation.getClass(), within.faults);
      all.addAll(within.faults);
    }
    return all;
  }

  /** The worst finding so far on one part of this request, nested calculations included. */
  public Verdict verdictOn(String pointer) {
    Verdict worst = Verdict.OK;
    for (int i = 0; i < findings.size(); i++) {
      Run by = finders.get(i);
      boolean about =
          isIn(pointer, by.pointerIn(this, ""))
              || findings.get(i).pointers().stream()
                  .anyMatch(own -> isIn(pointer, by.pointerIn(this, own)));
      worst = about ? worst.orWorse(findings.get(i).level()) : worst;
    }
    return worst;
  }

  private static boolean isIn(String part, String where) {
    return where != null && (where.equals(part) || where.startsWith(part + "/"));
  }

  /** Where a place in this request stands in that of a run around it; null for any other run. */
  private String pointerIn(Run around, String pointer) {
    if (around == this) {
      return pointer;
    }
    return outer == null ? null : outer.pointerIn(around, rebase.pointer(pointer, outer.request));
  }

  Faults faults() {
    return faults;
  }

  /** The steps noted, or null when no workings were asked for. */
  List<Step> steps() {
    return steps;
  }

  List<Finding> findings(Reader reader) {
    List<Finding> told = new ArrayList<>(findings.size());
    for (Remark remark : findings) {
      Finding finding = remark.finding(reader);
      if (!told.contains(finding)) {
        told.add(finding);
      }
    }
    return told;
  }

  /** Whether the sentences of the findings are complete and the card knows all; for assertions. */
  boolean keepsTo(Card<?, ?> card) {
    return cautions.stream().allMatch(card::mayCaution)
        && findings.stream()
            .allMatch(remark -> remark.complete(Reader.ANYONE) && card.mayFind(remark.code()));
  }

  /** Cautions that this request makes relevant. */
  Set<Caution> cautions() {
    return cautions;
  }

  /** Codes of the findings, each once, worst first. */
  List<String> codes() {
    if (findings.isEmpty()) {
      return List.of();
    }
    List<String> codes = new ArrayList<>(findings.size());
    for (int level = MILDEST_FIRST.length - 1; level >= 0; level--) {
      for (Remark remark : findings) {
        if (remark.level() == MILDEST_FIRST[level] && !codes.contains(remark.code())) {
          codes.add(remark.code());
        }
      }
    }
    return codes;
  }

  /** The worst finding. */
  Verdict verdict() {
    Verdict worst = Verdict.OK;
    for (Remark remark : findings) {
      worst = worst.orWorse(remark.level());
    }
    return worst;
  }

  /** What the innermost named part of the plan is called, or null. */
  private String subject() {
    if (rebase.subject() != null || outer == null) {
      return rebase.subject();
    }
    return outer.subject();
  }

  /** Where a place in this request stands in the outermost one; the place must exist. */
  private String outerPointer(String pointer) {
    assert request.leadsTo(pointer) : pointer + " leads nowhere";
    return outer == null ? pointer : outer.outerPointer(rebase.pointer(pointer, outer.request));
  }
}
