package org.footwell.web;

import io.javalin.http.Context;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;

/** Lets pages of other origins call the service: without cookies, any origin or a list. */
final class Cors {

  private static final String ALLOW_ORIGIN = "Access-Control-Allow-Origin";

  private final List<String> origins;
  private final boolean any;

  Cors(List<String> origins) {
    this.origins = origins;
    this.any = origins.contains("*");
  }

  /** Adds the headers when the request comes from a page. */
  void apply(Context ctx) {
    HttpServletResponse response = ctx.res();
    if (!any) {
      response.addHeader("Vary", "Origin");
    }
    String origin = ctx.header("Origin");
    if (origin == null || !(any || origins.contains(origin))) {
      return;
    }
    response.setHeader(ALLOW_ORIGIN, any ? "*" : origin);
    response.setHeader(
        "Access-Control-Expose-Headers",
        "ETag, Footwell-Verdict, RateLimit, RateLimit-Policy, Retry-After, WWW-Authenticate,"
            + " X-Request-Id");
    if (ctx.header("Access-Control-Request-Method") != null) {
      response.setHeader("Access-Control-Allow-Methods", "GET, HEAD, POST");
      response.setHeader(
          "Access-Control-Allow-Headers",
          "Content-Type, Content-Encoding, Accept, Authorization, traceparent, X-Request-Id");
      response.setHeader("Access-Control-Max-Age", "86400");
    }
  }
}
