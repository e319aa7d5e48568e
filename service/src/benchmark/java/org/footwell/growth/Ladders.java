package org.footwell.growth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.footwell.Calculations;
import org.footwell.analysis.registry.Analysis;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Shape;
import org.footwell.growth.Ladder.Rung;
import org.footwell.web.LargestUploads;
import org.footwell.web.UploadBody;

/** The ladders of all calculations, and of analyses of two of them. */
final class Ladders {

  private static final double[] SHARES = {0, 0.25, 0.5, 0.75, 1};
  private static final int[] SAMPLES = {1 << 18, 1 << 19, 1 << 20, LargestUploads.SAMPLES};

  /** A request that takes longer is taken for one that is answered, at first. */
  private static final Duration TRYING = Duration.ofSeconds(1);

  /** So many of what grows are named. */
  private static final int NAMED = 3;

  private static final int FEWEST_DRAWN = 100;
  private static final int MOST_DRAWN = 100_000;

  private final LargeRequest.Source source = new LargeRequest.Source();

  /** What stays below what its constraint allows, and why. */
  private final Consumer<String> bounded;

  Ladders(Consumer<String> bounded) {
    this.bounded = bounded;
  }

  /** From the example of the card to the largest, by the values in the request. */
  Ladder values(Calculation<?, ?> calculation) {
    return values(calculation.card().id(), calculation, calculation.card().example());
  }

  /** The demo van of the documentation with what is offered for it: more positions are free than in the example. */
  Ladder packagesOfVan() {
    Calculation<?, ?> packages = Calculations.BY_ID.get("package-options").get();
    String offer = documented("camper-van-offer.json").strip();
    String request = "{\"plan\": " + documented("camper-van.json") + ", " + offer.substring(1);
    return values("package-options/van", packages, request);
  }

  private static String documented(String name) {
    try (InputStream in = Calculations.class.getResourceAsStream("/examples/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** From one request to the largest grown from it. */
  private Ladder values(String id, Calculation<?, ?> calculation, String start) {
    Asking<?, ?> asking = Asking.of(calculation, Ladder.DEADLINE);
    LargeRequest large = largest(calculation, start, asking);
    large.bounds().stream()
        .filter(bound -> bound.reached() < bound.most())
        .forEach(
            bound ->
                bounded.accept(
                    "%-20s %-45s %5d of %5d  %s"
                        .formatted(
                            id, bound.path(), bound.reached(), bound.most(), bound.why())));
    List<Rung> rungs = new ArrayList<>();
    for (double share : SHARES) {
      JsonNode request = share == 1 ? large.largest() : large.between(share);
      int size = LargeRequest.values(request);
      boolean larger = rungs.isEmpty() || size > rungs.get(rungs.size() - 1).size();
      if (larger && asking.refusal(request).isEmpty()) {
        rungs.add(new Rung(size, Asking.bytes(request)));
      }
    }
    return new Ladder(id, "values", named(large), calculation, rungs);
  }

  private LargeRequest largest(
      Calculation<?, ?> calculation, String start, Asking<?, ?> asking) {
    Asking<?, ?> trying = Asking.of(calculation, TRYING);
    LargeRequest large = source.of(calculation.card(), start, trying::refusal);
    return asking.refusal(large.largest()).isEmpty()
        ? large
        : source.of(calculation.card(), start, asking::refusal);
  }

  private static String named(LargeRequest large) {
    return large.bounds().stream()
        .filter(bound -> bound.reached() > 1)
        .sorted(Comparator.comparing(bound -> -bound.reached()))
        .limit(NAMED)
        .map(bound -> bound.path() + " " + bound.reached())
        .collect(Collectors.joining(", "));
  }

  /** With six recordings, by the samples of each. */
  static Ladder samples(Calculation<?, ?> calculation) {
    String id = calculation.card().id();
    List<Rung> rungs = new ArrayList<>();
    for (int samples : SAMPLES) {
      UploadBody body = LargestUploads.of(LargestUploads.MOST_RECORDINGS, samples).get(id);
      rungs.add(new Rung(samples, Recorded.of(body)));
    }
    return new Ladder(id, "samples", "samples of each of 6 recordings", calculation, rungs);
  }

  /** Which calculations take recordings. */
  static boolean takesRecordings(Calculation<?, ?> calculation) {
    return Shape.of(calculation.card().request()).holdsSeries();
  }

  /** The usual tolerances of the example of a calculation, by the samples drawn: up to as many as are allowed. */
  static Ladder tolerance(String id) {
    Calculation<?, ?> subject = Calculations.BY_ID.get(id).get();
    Calculation<?, ?> tolerance = Analysis.TOLERANCE.of(subject);
    // Without any time only too many are refused.
    Asking<?, ?> asking = Asking.of(tolerance, Duration.ZERO);
    int least = FEWEST_DRAWN;
    int beyond = MOST_DRAWN + 1;
    while (beyond - least > 1) {
      int middle = (least + beyond) / 2;
      if (asking.refusal(tolerance(subject, middle)).isEmpty()) {
        least = middle;
      } else {
        beyond = middle;
      }
    }
    List<Rung> rungs = new ArrayList<>();
    for (double share : SHARES) {
      int count = (int) (FEWEST_DRAWN * Math.pow((double) least / FEWEST_DRAWN, share));
      rungs.add(new Rung(count, Asking.bytes(tolerance(subject, count))));
    }
    return new Ladder(id + "/tolerance", "drawn", "samples drawn", tolerance, rungs);
  }

  private static JsonNode tolerance(Calculation<?, ?> subject, int samples) {
    ObjectNode asked = Lenders.MAPPER.createObjectNode();
    asked.set("request", Lenders.read(subject.card().example()));
    return asked.put("usual_tolerances", true).put("sample_count", samples);
  }
}
