package org.footwell.web.batch;

import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Json;
import org.footwell.web.request.Problem;
import org.footwell.web.request.Problems;

/** How a row of a batch in JSON is answered: a request becomes an answer, or a problem with its number. */
record BatchRow<R extends Record>(Endpoint<?, R> endpoint, Digits digits, Reader reader) {

  Part answer(byte[] json, long number) {
    try {
      return Part.of(endpoint.json(endpoint.answer(json, false, reader).answer(), digits));
    } catch (RuntimeException failure) {
      return problem(failure, number);
    }
  }

  Part problem(Exception failure, long number) {
    Problem problem = Problems.of(failure, null, reader).atLine(number);
    return before -> Json.bytes(before.next(problem));
  }
}
