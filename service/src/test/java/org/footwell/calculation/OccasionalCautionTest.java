package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.footwell.calculation.text.Texts;
import org.junit.jupiter.api.Test;

/** Cautions that a request makes relevant stand behind those that stand with every answer. */
class OccasionalCautionTest {

  public record Asked(@Schema(description = "Said here") @NotNull Double times) {}

  public record Answered(@Schema(description = "Said here") double times) {}

  /** Named after sentences that the package has. */
  private enum Cautions implements Caution {
    REQUIRED,
    DUPLICATE,
    NOT_ALLOWED
  }

  /** Says the second caution as often as it is asked to. */
  private static Calculation<Asked, Answered> calculation(Caution said) {
    Card<Asked, Answered> card =
        Card.of("careful", Asked.class, Answered.class)
            .title("Careful")
            .purpose("Cautions.")
            .example("{}")
            .sources()
            .limits()
            .cautions(Cautions.REQUIRED)
            .occasionalCautions(Cautions.DUPLICATE)
            .build();
    return new Calculation<>() {
      @Override
      public Card<Asked, Answered> card() {
        return card;
      }

      @Override
      public Answered compute(Asked request, Run run) {
        for (int i = 0; i < request.times(); i++) {
          run.caution(said);
        }
        return new Answered(request.times());
      }
    };
  }

  private static List<String> safety(Engine engine, Caution said, double times) {
    return engine
        .answer(calculation(said), new Asked(times), false, Duration.ofSeconds(5))
        .safety();
  }

  private static String text(Caution caution) {
    return Texts.of(caution, Locale.ROOT);
  }

  @Test
  void eachIsSaidOnceAndOnlyWhereItIsRelevant() {
    Engine engine = new Engine();
    List<String> both = List.of(text(Cautions.REQUIRED), text(Cautions.DUPLICATE));
    assertEquals(both, safety(engine, Cautions.DUPLICATE, 2));
    assertEquals(List.of(text(Cautions.REQUIRED)), safety(engine, Cautions.DUPLICATE, 0));
    assertEquals(both, safety(engine, Cautions.DUPLICATE, 1));
  }

  @Test
  void oneThatTheCardDoesNotAnnounceIsAnError() {
    assertThrows(AssertionError.class, () -> safety(new Engine(), Cautions.NOT_ALLOWED, 1));
  }
}
