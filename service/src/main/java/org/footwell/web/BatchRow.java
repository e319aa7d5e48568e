package org.footwell.web;

/** One row of a batch in JSON: a request becomes an answer, or a problem with its number. */
final class BatchRow {

  private BatchRow() {}

  static <R extends Record> byte[] answer(Endpoint<?, R> endpoint, byte[] json, long number) {
    try {
      return endpoint.json(endpoint.answer(json, false));
    } catch (RuntimeException failure) {
      return problem(failure, number);
    }
  }

  static byte[] problem(Exception failure, long number) {
    return Json.bytes(Problems.of(failure, null).atLine(number));
  }
}
