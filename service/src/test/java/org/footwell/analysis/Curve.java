package org.footwell.analysis;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.util.function.DoubleFunction;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;

/** A made-up calculation of one number: a function, null where there is no output. */
record Curve(DoubleFunction<Double> function) implements Calculation<Curve.Asked, Curve.Answered> {

  private static final Card<Asked, Answered> CARD =
      Card.of("curve", Asked.class, Answered.class)
          .title("Curve")
          .purpose("A function.")
          .example("{}")
          .sources()
          .limits()
          .build();

  /** Ends where a number is refused. */
  static final Double REFUSED = Double.NEGATIVE_INFINITY;

  public record Asked(
      @Schema(description = "Number put in") @NotNull @DecimalMin("-100") @DecimalMax("100")
          Double x,
      @Schema(description = "Whole number added") Integer more,
      @Schema(description = "Words") String words) {
    public Asked {
      more = more == null ? Integer.valueOf(0) : more;
    }
  }

  public record Answered(
      @Schema(description = "Number that comes out") Double y,
      @Schema(description = "Words") String words) {}

  @Override
  public Card<Asked, Answered> card() {
    return CARD;
  }

  @Override
  public Answered compute(Asked q, Run run) {
    Double y = function.apply(q.x() + q.more());
    if (REFUSED.equals(y)) {
      run.refuse(CoreFault.NOT_ALLOWED).at("/x").given(q.x()).allowed(Allowed.widerRange());
      run.requireNoFaults();
    }
    return new Answered(y, q.words());
  }
}
