package org.footwell.web.request;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import java.util.stream.Collectors;
import org.footwell.calculation.Fault;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;

/** A problem answer by RFC 9457, with every fault of the request. */
public record Problem(
    @Schema(description = "Reference to the kind of problem") @NotNull String type,
    @Schema(description = "The kind of problem in words") @NotNull String title,
    @Schema(description = "HTTP status") int status,
    @Schema(description = "What happened this time") @NotNull String detail,
    @Schema(description = "Every fault found, at most 100") List<Fault> errors,
    @Schema(
            description =
                "What the request is known by in the log; the header X-Request-Id says the same")
        String requestId,
    @Schema(description = "Trace id, when the caller sent a traceparent") String traceId,
    @Schema(description = "In a batch or a sweep, the line, entry or row it is about, from 1")
        Long line) {

  static Problem of(ProblemType type, String detail, List<Fault> errors, Reader reader) {
    String title = Texts.of(type, reader.language());
    return new Problem(type.uri(), title, type.status(), detail, errors, null, null, null);
  }

  /** A request that could not be read, with the status the server gave it. */
  public static Problem unreadable(int status, Phrase detail, Reader reader) {
    ProblemType type = ProblemType.UNREADABLE;
    String title = Texts.of(type, reader.language());
    String said = detail.said(reader);
    return new Problem(type.uri(), title, status, said, null, null, null, null);
  }

  /** The problem of a request that is known by this. */
  public Problem of(RequestId known) {
    return new Problem(type, title, status, detail, errors, known.id(), known.trace(), line);
  }

  public Problem atLine(long number) {
    return new Problem(type, title, status, detail, errors, requestId, traceId, number);
  }

  /** The same without its list of faults. */
  public Problem inShort(String shortDetail) {
    return new Problem(type, title, status, shortDetail, null, requestId, traceId, line);
  }

  /** One short sentence for cells that hide anything else. */
  public String sentence() {
    if (errors == null || errors.isEmpty()) {
      return detail;
    }
    return errors.stream().map(Fault::detail).collect(Collectors.joining(" "));
  }
}
