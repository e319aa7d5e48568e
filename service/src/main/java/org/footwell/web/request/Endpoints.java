package org.footwell.web.request;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.footwell.analysis.registry.Analysis;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;

/** All calculations by their id, each prepared when it is first asked for. */
public final class Endpoints {

  private final Map<String, Supplier<Calculation<?, ?>>> known;
  private final Engine engine;
  private final Duration deadline;
  private final Map<String, Endpoint<?, ?>> prepared = new ConcurrentHashMap<>();
  private final Map<Analysed, Endpoint<?, ?>> analyses = new ConcurrentHashMap<>();

  private record Analysed(String calculation, Analysis by) {}

  /**
   * Of calculations.
   *
   * @param known how to make each of them, by its id
   * @param deadline time one may take
   */
  public Endpoints(
      Map<String, Supplier<Calculation<?, ?>>> known, Engine engine, Duration deadline) {
    this.known = known;
    this.engine = engine;
    this.deadline = deadline;
  }

  public boolean knows(String id) {
    return known.containsKey(id);
  }

  /**
   * The calculation an address names.
   *
   * @throws ProblemException if there is none of that name
   */
  public Endpoint<?, ?> of(Context ctx) {
    String id = ctx.pathParam("calculation");
    if (!knows(id)) {
      throw ProblemException.of(
          ProblemType.NOT_FOUND,
          Names.nearest(id, known.keySet()).isPresent()
              ? Phrase.of(ProblemWords.NO_CALCULATION_NEAR)
                  .with("nearest", Names.didYouMean(id, known.keySet()))
              : Phrase.of(ProblemWords.NO_CALCULATION).own("all", List.copyOf(known.keySet())));
    }
    Endpoint<?, ?> endpoint = prepared.get(id);
    return endpoint != null ? endpoint : prepared.computeIfAbsent(id, this::prepare);
  }

  /**
   * An analysis of the calculation an address names.
   *
   * @throws ProblemException if there is none of that name
   */
  public Endpoint<?, ?> of(Context ctx, Analysis analysis) {
    Endpoint<?, ?> subject = of(ctx);
    return analyses.computeIfAbsent(
        new Analysed(subject.card().id(), analysis), any -> subject.of(analysis));
  }

  private Endpoint<?, ?> prepare(String id) {
    return new Endpoint<>(known.get(id).get(), engine, deadline);
  }
}
