package org.footwell.web;

import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.footwell.web.request.Json;
import org.footwell.web.request.Problem;
import org.footwell.web.request.Problems;

/** Problem answers for requests that break off before any route sees them, such as a bad address. */
final class BareErrors extends ErrorHandler {

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    int status = response.getStatus();
    Problem problem = Problem.unreadable(status, detail(status));
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, Problems.CONTENT_TYPE);
    response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
    Safeguards.HEADERS.forEach(response.getHeaders()::put);
    byte[] bytes = Json.bytes(problem);
    Content.Sink.write(response, true, new String(bytes, StandardCharsets.UTF_8), callback);
    return true;
  }

  private static String detail(int status) {
    return switch (status) {
      case HttpStatus.URI_TOO_LONG_414 -> "The address is too long; send the request by POST.";
      case HttpStatus.REQUEST_HEADER_FIELDS_TOO_LARGE_431 -> "The headers are too large.";
      case HttpStatus.EXPECTATION_FAILED_417 -> "The header Expect can only ask for 100-continue.";
      case HttpStatus.UPGRADE_REQUIRED_426, HttpStatus.HTTP_VERSION_NOT_SUPPORTED_505 ->
          "Send the request in HTTP/1.1.";
      case HttpStatus.BAD_REQUEST_400 ->
          "The address or a header is not well formed. In a query write + as %2B and | as %7C.";
      default -> "The request cannot be served: " + HttpStatus.getMessage(status) + ".";
    };
  }
}
