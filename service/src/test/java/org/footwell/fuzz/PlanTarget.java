package org.footwell.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.footwell.Calculations;
import org.footwell.Committed;
import org.footwell.calculation.Engine;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.web.request.Endpoint;

/** Plans: read alike both ways, and reviewed and asked what can be asked of them, or refused. */
final class PlanTarget implements Target {

  private static final Endpoint<?, ?> REVIEW = endpoint("plan-review");
  private static final Endpoint<?, ?> QUESTIONS = endpoint("plan-questions");

  private static Endpoint<?, ?> endpoint(String id) {
    return new Endpoint<>(Calculations.BY_ID.get(id).get(), new Engine(), Duration.ofSeconds(10));
  }

  @Override
  public void read(byte[] given) throws Exception {
    if (BothWays.read(VehiclePlan.class, given) != null) {
      Refusals.orNull(() -> REVIEW.answer(given, false, Reader.ANYONE));
      Refusals.orNull(() -> QUESTIONS.answer(given, false, Reader.ANYONE));
    }
  }

  @Override
  public List<byte[]> seeds() {
    return List.of(
        example("camper-van"), example("low-budget-hatchback"), example("factory-estate"));
  }

  /** A plan of the documentation. */
  static byte[] example(String name) {
    Path file = Path.of("docs", "examples", name + ".json");
    try {
      return Files.readAllBytes(Committed.PROJECT.resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
