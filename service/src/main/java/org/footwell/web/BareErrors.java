package org.footwell.web;

import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Json;
import org.footwell.web.request.Languages;
import org.footwell.web.request.Problem;
import org.footwell.web.request.ProblemWords;
import org.footwell.web.request.Problems;
import org.footwell.web.request.RequestId;

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
    headers.put(HttpHeader.CONTENT_TYPE, Problems.CONTENT_TYPE);
    headers.put(HttpHeader.CACHE_CONTROL, "no-store");
    Safeguards.apply(headers);
    byte[] bytes = Json.bytes(problem);
    Content.Sink.write(response, true, new String(bytes, StandardCharsets.UTF_8), callback);
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
