package org.footwell.web;

import io.javalin.http.Context;

/** Headers that keep a browser from taking an answer for something else than it is. */
final class Safeguards {

  static final String NO_GUESSING = "nosniff";

  /**
   * A page loads from this service only, and runs no script that stands in it. Styles may stand in it:
   * the reference and the printed pages carry some.
   */
  static final String OWN_PARTS_ONLY =
      "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline';"
          + " img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'";

  private Safeguards() {}

  static void apply(Context ctx) {
    ctx.res().setHeader("X-Content-Type-Options", NO_GUESSING);
    ctx.res().setHeader("Content-Security-Policy", OWN_PARTS_ONLY);
  }
}
