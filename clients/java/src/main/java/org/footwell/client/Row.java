package org.footwell.client;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import org.footwell.client.model.Fault;
import org.footwell.client.model.Finding;
import org.footwell.client.model.Problem;
import org.footwell.client.model.Verdict;

/** A row of a batch: an answer, or in its place a problem with the line it is about. */
public record Row<R>(
    R result,
    List<Finding> findings,
    Verdict verdict,
    List<String> safety,
    String type,
    String title,
    Integer status,
    String detail,
    List<Fault> errors,
    @JsonProperty("request_id") String requestId,
    @JsonProperty("trace_id") String traceId,
    Long line) {

  public boolean answered() {
    return result != null;
  }

  /** The answer of this row, or null where it is a problem. */
  public Answer<R> answer() {
    return answered() ? new Answer<>(result, findings, verdict, safety, null) : null;
  }

  /** The problem of this row, or null where it is an answer. */
  public Problem problem() {
    return answered()
        ? null
        : new Problem()
            .type(type)
            .title(title)
            .status(status)
            .detail(detail)
            .errors(errors)
            .requestId(requestId)
            .traceId(traceId)
            .line(line);
  }
}
