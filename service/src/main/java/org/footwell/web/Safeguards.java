package org.footwell.web;

import io.javalin.http.Context;
import java.util.Map;

/** Headers that keep a browser from taking an answer for something else than it is. */
final class Safeguards {

  /**
   * A page loads from this service only, and runs no script that stands in it. Styles may stand in it:
   * the reference and the printed pages carry some.
   */
  private static final String OWN_PARTS_ONLY =
      "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline';"
          + " img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'";

  static final Map<String, String> HEADERS =
      Map.of("X-Content-Type-Options", "nosniff", "Content-Security-Policy", OWN_PARTS_ONLY);

  private Safeguards() {}

  static void apply(Context ctx) {
    HEADERS.forEach(ctx.res()::setHeader);
  }
}
