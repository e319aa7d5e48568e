package org.footwell.web.batch;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.footwell.analysis.Sweep;
import org.footwell.calculation.Verdict;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Problem;

/**
 * The table of a sweep.
 *
 * @param rows in order; they are written one by one, and there is never a list of them
 */
public record SweepTable(
    @Schema(description = "What is varied") @NotNull List<@NotNull Column> inputs,
    @Schema(description = "What is shown of the result") @NotNull List<@NotNull Column> outputs,
    @Schema(description = "How many rows there are") int rowCount,
    @Schema(
            description =
                "With two inputs the second runs through its values for each of the first")
        @NotNull
        List<@NotNull Swept> rows) {

  /** The whole table of a small sweep, as the contract shows it. */
  public static <Q extends Record, R extends Record> SweepTable of(
      Endpoint<Q, R> endpoint, byte[] request) {
    Sweep<Q, R> sweep = endpoint.sweep(request);
    SweepJson form = new SweepJson(sweep, false, Digits.ALL);
    List<Swept> rows =
        IntStream.range(0, sweep.rowCount())
            .mapToObj(sweep::values)
            .map(values -> form.row(values, endpoint.point(sweep, values)))
            .toList();
    return form.table(rows);
  }

  /** One column. */
  public record Column(
      @Schema(description = "Its name in the rows") @NotNull String path,
      @Schema(description = "What it is, with its unit") @NotNull String meaning) {}

  /** One row: what the calculation comes to with these inputs, or why it comes to nothing. */
  public record Swept(
      @Schema(description = "Values of the inputs, by their paths") @NotNull
          Map<String, Object> inputs,
      @Schema(
              description =
                  "Values of the result, by their paths; those it does not have are left out")
          Map<String, Object> outputs,
      @Schema(description = "The worst finding") Verdict verdict,
      @Schema(description = "Codes of the findings, worst first") List<String> findings,
      @Schema(description = "Why there is no answer, where there is none") Problem problem) {}
}
