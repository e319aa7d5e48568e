package org.footwell.web;

import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Problem answers for requests that break off before any route sees them, such as a bad address. */
final class BareErrors extends ErrorHandler {

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    int status = response.getStatus();
    ProblemType type =
        status >= 500
            ? ProblemType.INTERNAL
            : status == 413 ? ProblemType.TOO_LARGE : ProblemType.UNREADABLE;
    String detail =
        "The address or a header is not well formed. In a query write + as %2B and | as %7C.";
    Problem problem = Problem.of(type, type.status() < 500 ? detail : type.title(), null, null);
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, Problems.CONTENT_TYPE);
    byte[] bytes = Json.bytes(problem);
    Content.Sink.write(response, true, new String(bytes, StandardCharsets.UTF_8), callback);
    return true;
  }
}
