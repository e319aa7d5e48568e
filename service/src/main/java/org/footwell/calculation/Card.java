package org.footwell.calculation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.footwell.calculation.text.Coded;

/**
 * The declaration of a calculation. Routes, contract, pages, metrics and logs follow from it.
 *
 * @param id kebab-case name, the last part of the address
 * @param title a few words
 * @param purpose the question it answers, in a sentence or two
 * @param example a request in JSON that works, shown in the contract and run by the tests
 * @param sources what the formulas stand on
 * @param limits where the model stops holding
 * @param findings codes the answer may carry
 * @param refusals codes a 422 answer may carry, besides those of the core
 * @param cautions where the work can hurt someone: with every answer
 * @param occasionalCautions with those answers only that a run says make them relevant
 * @param views other forms its result can be had in
 */
@Built
public record Card<Q extends Record, R extends Record>(
    String id,
    Class<Q> request,
    Class<R> result,
    String title,
    String purpose,
    String example,
    List<Source> sources,
    List<String> limits,
    List<FindingCode> findings,
    List<FaultCode> refusals,
    List<Caution> cautions,
    List<Caution> occasionalCautions,
    List<View<Q, R>> views) {

  /** Title, purpose, example, sources and limits must be given. */
  public Card {
    for (Object must : new Object[] {title, purpose, example, sources, limits}) {
      if (must == null) {
        throw new IllegalStateException("card of " + id + " is not complete");
      }
    }
    findings = eachOnce(id, findings);
    refusals = eachOnce(id, refusals);
    cautions = cautions == null ? List.of() : cautions;
    occasionalCautions = occasionalCautions == null ? List.of() : occasionalCautions;
  }

  private static <C extends Coded> List<C> eachOnce(String id, List<C> codes) {
    if (codes == null) {
      return List.of();
    }
    Set<String> seen = new HashSet<>();
    for (C code : codes) {
      if (!seen.add(code.code())) {
        throw new IllegalStateException("card of " + id + " has " + code.code() + " twice");
      }
    }
    return codes;
  }

  /** Whether an answer may carry the finding; for assertions. */
  boolean mayFind(String code) {
    return known(code, findings.stream());
  }

  /** Whether a request may be refused for it; for assertions. */
  boolean mayRefuse(String code) {
    return known(code, Stream.concat(refusals.stream(), Stream.of(CoreFault.values())));
  }

  /** Whether an answer may carry the caution; for assertions. */
  boolean mayCaution(Caution caution) {
    return known(caution.code(), occasionalCautions.stream());
  }

  private boolean known(String code, Stream<? extends Coded> codes) {
    if (codes.noneMatch(one -> one.code().equals(code))) {
      throw new AssertionError("the card of " + id + " does not have " + code);
    }
    return true;
  }

  /** The same with more views. */
  public Card<Q, R> with(List<View<Q, R>> more) {
    return CardBuilder.builder(this)
        .views(Stream.concat(views.stream(), more.stream()).toList())
        .build();
  }

  public static <Q extends Record, R extends Record> Builder<Q, R> of(
      String id, Class<Q> request, Class<R> result) {
    return new Builder<>(id, request, result);
  }

  /** Lists what a card has several of. */
  public static final class Builder<Q extends Record, R extends Record> {
    private final CardBuilder<Q, R> card = CardBuilder.builder();
    private final List<FindingCode> findings = new ArrayList<>();
    private final List<FaultCode> refusals = new ArrayList<>();
    private final List<View<Q, R>> views = new ArrayList<>();

    private Builder(String id, Class<Q> request, Class<R> result) {
      card.id(id).request(request).result(result);
    }

    public Builder<Q, R> title(String text) {
      card.title(text);
      return this;
    }

    public Builder<Q, R> purpose(String text) {
      card.purpose(text);
      return this;
    }

    public Builder<Q, R> example(String json) {
      card.example(json);
      return this;
    }

    /** The same from the {@code example.json} beside a class. */
    public Builder<Q, R> exampleBeside(Class<?> one) {
      try (InputStream in = one.getResourceAsStream("example.json")) {
        return example(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    public Builder<Q, R> sources(Source... all) {
      card.sources(List.of(all));
      return this;
    }

    public Builder<Q, R> limits(String... all) {
      card.limits(List.of(all));
      return this;
    }

    /** Adds findings; may be called once for each room they come from. */
    public Builder<Q, R> findings(FindingCode... all) {
      findings.addAll(List.of(all));
      return this;
    }

    /** Adds refusals; may be called once for each room they come from. */
    public Builder<Q, R> refusals(FaultCode... all) {
      refusals.addAll(List.of(all));
      return this;
    }

    public Builder<Q, R> cautions(Caution... all) {
      card.cautions(List.of(all));
      return this;
    }

    /** Cautions that {@link Run#caution} may add. */
    public Builder<Q, R> occasionalCautions(Caution... all) {
      card.occasionalCautions(List.of(all));
      return this;
    }

    /** Adds what the answers of another calculation carry, where they become part of this one's. */
    public Builder<Q, R> withThoseOf(Card<?, ?> within) {
      findings.addAll(within.findings());
      refusals.addAll(within.refusals());
      card.cautions(within.cautions()).occasionalCautions(within.occasionalCautions());
      return this;
    }

    /** Adds another form of the result; may be called once for each. */
    public Builder<Q, R> view(
        String format, String mediaType, String description, Function<Shown<Q, R>, byte[]> draw) {
      views.add(new View<>(format, mediaType, description, draw));
      return this;
    }

    public Card<Q, R> build() {
      return card.findings(List.copyOf(findings))
          .refusals(List.copyOf(refusals))
          .views(List.copyOf(views))
          .build();
    }
  }
}
