package org.footwell.web;

import java.util.List;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.PreEncodedHttpField;
import org.eclipse.jetty.server.Request;

/** Headers that keep a browser from taking an answer for something else than it is. */
final class Safeguards {

  /**
   * A page loads from this service only, and runs no script that stands in it. Styles may stand in it:
   * the reference and the printed pages carry some.
   */
  private static final String OWN_PARTS_ONLY =
      "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline';"
          + " img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'";

  /** As the bytes they are sent as. */
  private static final List<HttpField> HEADERS =
      List.of(
          new PreEncodedHttpField("X-Content-Type-Options", "nosniff"),
          new PreEncodedHttpField("Content-Security-Policy", OWN_PARTS_ONLY));

  private Safeguards() {}

  /** Puts them on an answer before anything else is done for its request. */
  static Request apply(Request request, HttpFields.Mutable headers) {
    apply(headers);
    return request;
  }

  static void apply(HttpFields.Mutable headers) {
    HEADERS.forEach(headers::put);
  }
}
