package org.footwell.web.request;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.footwell.calculation.text.Reader;

/**
 * Who reads an answer: {@code lang=} says so, else the header Accept-Language; {@code units=} says in what measures are
 * shown.
 */
public final class Languages {

  private static final String READER = Reader.class.getName();

  private Languages() {}

  /** Who reads the answer to a request; the answer says so, and caches learn of it. */
  public static Reader reader(Context ctx) {
    Object known = ctx.req().getAttribute(READER);
    if (known != null) {
      return (Reader) known;
    }
    Reader reader = reader(ctx.queryString(), ctx.header("Accept-Language"), ctx.res()::addHeader);
    ctx.req().setAttribute(READER, reader);
    return reader;
  }

  /**
   * The same of an address that is not looked at yet. What its query asks for without there being
   * texts in it is refused with the query, to whom the header names.
   *
   * @param query the raw query, or null
   * @param acceptLanguage what the header of that name says, or null
   * @param headers takes the headers of the answer
   */
  public static Reader reader(
      String query, String acceptLanguage, BiConsumer<String, String> headers) {
    String language = Query.language(query);
    Optional<Reader> asked = language.isEmpty() ? Optional.empty() : Reader.in(language);
    if (asked.isEmpty()) {
      headers.accept("Vary", "Accept-Language");
    }
    Reader reader = asked.orElseGet(() -> Reader.of(acceptLanguage));
    headers.accept("Content-Language", reader.language().getLanguage());
    return query == null
        ? reader
        : Reader.Units.named(Query.units(query)).map(reader::shown).orElse(reader);
  }
}
