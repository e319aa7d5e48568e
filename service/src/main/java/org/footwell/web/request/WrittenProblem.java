package org.footwell.web.request;

/**
 * A problem as it goes out: of its own kind and status, or as text for a spreadsheet, which shows a
 * sentence only of an answer that seems to have gone well.
 */
@SuppressWarnings("ArrayRecordComponent") // only handed on
public record WrittenProblem(int status, String contentType, byte[] body) {

  /**
   * A problem in the form its request asks for.
   *
   * @param query as it stands in the address, or null
   */
  public static WrittenProblem of(Problem problem, String query) {
    return Query.asksForTextErrors(query)
        ? new WrittenProblem(200, Format.TEXT.contentType(), Rendering.utf8(problem.sentence()))
        : new WrittenProblem(problem.status(), Problems.CONTENT_TYPE, Json.bytes(problem));
  }
}
