package org.footwell.growth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.footwell.calculation.Card;

/**
 * The largest request of a calculation that is answered, grown from the example of its card place by
 * place: where one is refused, half of it is asked for.
 */
public final class LargeRequest {

  /** What is put in by one round can itself be larger in the next. */
  private static final int ROUNDS = 3;

  private final Grower grower;
  private final JsonNode example;
  private final Function<JsonNode, Optional<String>> refusal;
  private final List<Step> steps = new ArrayList<>();
  private final Map<String, Bound> bounds = new LinkedHashMap<>();
  private JsonNode largest;

  /**
   * How large something became, and why no larger.
   *
   * @param most what its constraint allows
   * @param why what a larger one was refused for; empty where it is as large as allowed
   */
  public record Bound(String path, int reached, int most, String why) {}

  private record Step(Size size, int count, Grower.Way way) {}

  private LargeRequest(
      Grower grower, JsonNode example, Function<JsonNode, Optional<String>> refusal) {
    this.grower = grower;
    this.example = example;
    this.refusal = refusal;
    this.largest = example;
  }

  /** Grows them, with what all of them share read once. */
  public static final class Source {
    private final Schemas schemas = new Schemas();
    private final Lenders lenders = new Lenders(schemas);

    /**
     * Of one calculation, from its example.
     *
     * @param refusal why a request is not answered, if so
     */
    public LargeRequest of(Card<?, ?> card, Function<JsonNode, Optional<String>> refusal) {
      return of(card, card.example(), refusal);
    }

    /** The same from another request in JSON. */
    public LargeRequest of(
        Card<?, ?> card, String start, Function<JsonNode, Optional<String>> refusal) {
      Grower grower = new Grower(schemas, lenders, schemas.ofRequest(card.id()));
      LargeRequest request = new LargeRequest(grower, Lenders.read(start), refusal);
      request.grow();
      return request;
    }
  }

  private void grow() {
    for (int round = 0; round < ROUNDS; round++) {
      boolean grown = false;
      Collection<Size> sizes = grower.sizes(largest);
      for (Size size : sizes) {
        grown |= grow(size);
      }
      if (!grown) {
        return;
      }
    }
  }

  private boolean grow(Size size) {
    String why = "";
    for (int count = size.most(); count > size.now(); count = (count + size.now()) / 2) {
      Set<JsonNode> tried = new HashSet<>();
      for (Grower.Way way : Grower.Way.values()) {
        JsonNode candidate = grower.grown(largest, size, count, way);
        if (!tried.add(candidate)) {
          continue;
        }
        Optional<String> refused = refusal.apply(candidate);
        if (refused.isEmpty()) {
          largest = candidate;
          steps.add(new Step(size, count, way));
          bounds.put(size.path(), new Bound(size.path(), count, size.most(), why));
          return true;
        }
        why = why.isEmpty() ? refused.get() : why;
      }
    }
    bounds.put(size.path(), new Bound(size.path(), size.now(), size.most(), why));
    return false;
  }

  /** Everything that can be larger than in the example, and how large it is here. */
  public Collection<Bound> bounds() {
    return bounds.values();
  }

  public JsonNode largest() {
    return largest;
  }

  /**
   * A request between the example and the largest.
   *
   * @param share how far from the one to the other, in ratios
   */
  public JsonNode between(double share) {
    if (share == 0) {
      return example;
    }
    JsonNode whole = between(share, any -> true);
    return answered(whole) ? whole : between(share, this::answered);
  }

  private boolean answered(JsonNode request) {
    return refusal.apply(request).isEmpty();
  }

  /** By the steps that lead to a request that will do. */
  private JsonNode between(double share, Predicate<JsonNode> does) {
    JsonNode request = example;
    for (Step step : steps) {
      int from = Math.max(1, step.size().now());
      int count = (int) Math.round(from * Math.pow((double) step.count() / from, share));
      JsonNode next = grower.grown(request, step.size(), count, step.way());
      request = does.test(next) ? next : request;
    }
    return request;
  }

  /** How many values a request holds: texts, numbers and truth values. */
  public static int values(JsonNode request) {
    int values = request.isContainerNode() ? 0 : 1;
    for (JsonNode below : request) {
      values += values(below);
    }
    return values;
  }
}
