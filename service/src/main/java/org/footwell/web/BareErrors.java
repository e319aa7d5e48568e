package org.footwell.web;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Languages;
import org.footwell.web.request.Problem;
import org.footwell.web.request.ProblemWords;
import org.footwell.web.request.RequestId;
import org.footwell.web.request.WrittenProblem;

/** Problem answers for requests that break off before any route sees them, such as a bad address. */
final class BareErrors extends ErrorHandler {

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    int status = response.getStatus();
    HttpFields.Mutable headers = response.getHeaders();
    Reader reader =
        Languages.reader(
            request.getHttpURI().getQuery(),
            request.getHeaders().get(HttpHeader.ACCEPT_LANGUAGE),
            headers::add);
    RequestId known =
        RequestId.sent(
            request.getHeaders().get(RequestId.HEADER),
            request.getHeaders().get(RequestId.TRACE_HEADER));
    Problem problem = Problem.unreadable(status, detail(status), reader).of(known);
    headers.put(RequestId.HEADER, known.id());
    WrittenProblem written = WrittenProblem.of(problem, request.getHttpURI().getQuery());
    response.setStatus(written.status());
    headers.put(HttpHeader.CONTENT_TYPE, written.contentType());
    headers.put(HttpHeader.CACHE_CONTROL, "no-store");
    Safeguards.apply(headers);
    response.write(true, ByteBuffer.wrap(written.body()), callback);
    return true;
  }

  private static Phrase detail(int status) {
    return switch (status) {
      case HttpStatus.URI_TOO_LONG_414 -> Phrase.of(ProblemWords.ADDRESS_TOO_LONG);
      case HttpStatus.REQUEST_HEADER_FIELDS_TOO_LARGE_431 ->
          Phrase.of(ProblemWords.HEADERS_TOO_LARGE);
      case HttpStatus.EXPECTATION_FAILED_417 -> Phrase.of(ProblemWords.WRONG_EXPECT);
      case HttpStatus.UPGRADE_REQUIRED_426, HttpStatus.HTTP_VERSION_NOT_SUPPORTED_505 ->
          Phrase.of(ProblemWords.WRONG_PROTOCOL);
      case HttpStatus.BAD_REQUEST_400 -> Phrase.of(ProblemWords.BROKEN_ADDRESS);
      default -> Phrase.of(ProblemWords.NOT_SERVED).own("reason", HttpStatus.getMessage(status));
    };
  }
}
