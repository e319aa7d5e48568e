package org.footwell.analysis.tolerance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;

/** A calculation of four numbers, such as their sum, so that its error budget can be worked by hand. */
record FourNumbers(ToDoubleFunction<Request> function)
    implements Calculation<FourNumbers.Request, FourNumbers.Result> {

  static final FourNumbers SUM = new FourNumbers(q -> q.a() + q.b() + q.c() + q.d());
  static final FourNumbers PRODUCT = new FourNumbers(q -> q.a() * q.b() * q.c() * q.d());

  private static final Card<Request, Result> CARD =
      Card.of("four-numbers", Request.class, Result.class)
          .title("Four numbers")
          .purpose("One number of four.")
          .example("{\"a\": 1, \"b\": 1, \"c\": 1, \"d\": 1}")
          .sources(Source.DEFINITION)
          .limits("None.")
          .build();

  /** The numbers. */
  public record Request(
      @Schema(description = "One") @NotNull @DecimalMin("-1000") @DecimalMax("1000") Double a,
      @Schema(description = "Two") @NotNull @DecimalMin("-1000") @DecimalMax("1000") Double b,
      @Schema(description = "Three") @NotNull @DecimalMin("-1000") @DecimalMax("1000") Double c,
      @Schema(description = "Four") @NotNull @DecimalMin("-1000") @DecimalMax("1000") Double d) {}

  /** What comes of them. */
  public record Result(
      @Schema(description = "What comes of them") double y,
      @Schema(description = "Always the same") double same) {}

  @Override
  public Card<Request, Result> card() {
    return CARD;
  }

  @Override
  public Result compute(Request q, Run run) {
    return new Result(function.applyAsDouble(q), 3);
  }

  /** Its error budget with the same distribution and tolerances one for each of the numbers. */
  OutputBudget budget(
      String distribution, List<Double> numbers, List<Double> plusMinus, String rest) {
    StringBuilder inputs = new StringBuilder();
    StringBuilder request = new StringBuilder();
    for (int i = 0; i < 4; i++) {
      String name = String.valueOf((char) ('a' + i));
      request.append(i == 0 ? "" : ",").append('"' + name + "\":" + numbers.get(i));
      inputs
          .append(i == 0 ? "" : ",")
          .append("{\"path\":\"" + name + "\",\"plus_minus\":" + plusMinus.get(i))
          .append(",\"distribution\":\"" + distribution + "\"" + rest + "}");
    }
    return Asking.of(
            this,
            "{\"request\":{" + request + "},\"inputs\":[" + inputs + "],\"sample_count\":16384}")
        .result()
        .outputs()
        .get(0);
  }
}
