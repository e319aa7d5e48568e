package org.footwell.web.batch;

import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Json;
import org.footwell.web.request.Problem;
import org.footwell.web.request.Problems;

/** One row of a batch in JSON: a request becomes an answer, or a problem with its number. */
final class BatchRow {

  private BatchRow() {}

  static <R extends Record> Part answer(
      Endpoint<?, R> endpoint, byte[] json, long number, Reader reader) {
    try {
      return Part.of(endpoint.json(endpoint.answer(json, false, reader).answer()));
    } catch (RuntimeException failure) {
      return problem(failure, number, reader);
    }
  }

  static Part problem(Exception failure, long number, Reader reader) {
    Problem problem = Problems.of(failure, null, reader).atLine(number);
    return before -> Json.bytes(before.next(problem));
  }
}
