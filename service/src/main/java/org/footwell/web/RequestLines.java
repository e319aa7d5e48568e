package org.footwell.web;

import io.javalin.http.Context;
import io.javalin.router.Endpoint;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.RequestLog;
import org.eclipse.jetty.server.Response;
import org.footwell.web.request.Endpoints;
import org.footwell.web.request.RequestId;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A log line for each request. Of what its caller chose it holds the ids alone: no address, no query, no body. */
final class RequestLines implements RequestLog {

  private static final Logger LOG = LoggerFactory.getLogger(RequestLines.class);

  private static final String ROUTE = RequestLines.class.getName();
  private static final String NONE = "none";
  private static final double PER_MS = TimeUnit.MILLISECONDS.toMicros(1);

  private final Endpoints endpoints;

  RequestLines(Endpoints endpoints) {
    this.endpoints = endpoints;
  }

  /** Remembers which route a request took. */
  void note(Context ctx) {
    Endpoint taken = ctx.endpoints().matchedHttpEndpoint();
    if (taken != null) {
      ctx.req().setAttribute(ROUTE, route(taken.path, ctx.path()));
    }
  }

  /** A route as it was declared, with the calculation in it where there is one of that name. */
  private String route(String declared, String path) {
    List<String> parts = List.of(path.split("/"));
    return parts.size() > 2 && endpoints.knows(parts.get(2))
        ? declared.replace("{calculation}", parts.get(2))
        : declared;
  }

  @Override
  public void log(Request request, Response response) {
    Object route = request.getAttribute(ROUTE);
    HttpMethod method = HttpMethod.fromString(request.getMethod());
    long micros = TimeUnit.NANOSECONDS.toMicros(System.nanoTime() - request.getBeginNanoTime());
    RequestId.sent(
            response.getHeaders().get(RequestId.HEADER),
            request.getHeaders().get(RequestId.TRACE_HEADER))
        .in(LOG.atInfo())
        .addKeyValue("method", method == null ? NONE : method.asString())
        .addKeyValue("route", route == null ? NONE : route)
        .addKeyValue("status", response.getStatus())
        .addKeyValue("ms", micros / PER_MS)
        .addKeyValue("bytes", Response.getContentBytesWritten(response))
        .log("answered");
  }
}
