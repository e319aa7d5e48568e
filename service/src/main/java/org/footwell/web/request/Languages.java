package org.footwell.web.request;

import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.footwell.calculation.text.Reader;

/** The languages answers are given in, and which of them a caller reads. */
public final class Languages {

  private static final String LANGUAGES = Languages.class.getName();
  private static final String READER = Reader.class.getName();

  private final List<Locale> all;

  /**
   * Languages there are texts in.
   *
   * @param all the one for everybody else first
   */
  public Languages(List<Locale> all) {
    this.all = List.copyOf(all);
  }

  /** Notes that a request is answered in one of these. */
  public void apply(Context ctx) {
    ctx.req().setAttribute(LANGUAGES, this);
  }

  /** Who reads the answer to a request; caches learn of it where it makes a difference. */
  public static Reader reader(Context ctx) {
    Object known = ctx.req().getAttribute(READER);
    if (known != null) {
      return (Reader) known;
    }
    Languages languages = (Languages) ctx.req().getAttribute(LANGUAGES);
    if (languages == null) {
      return Reader.ANYONE;
    }
    Reader reader =
        languages.reader(ctx.queryString(), ctx.header("Accept-Language"), ctx.res()::addHeader);
    ctx.req().setAttribute(READER, reader);
    return reader;
  }

  /**
   * Who reads an answer: {@code lang=} says so, else the header.
   *
   * @param query the raw query of the address, or null
   * @param acceptLanguage what the header of that name says, or null
   * @param headers takes the headers of the answer that say so
   */
  public Reader reader(String query, String acceptLanguage, BiConsumer<String, String> headers) {
    Optional<Reader> asked = asked(Query.language(query));
    Reader reader = asked.orElseGet(() -> Reader.of(acceptLanguage, all));
    if (all.size() > 1) {
      if (asked.isEmpty()) {
        headers.accept("Vary", "Accept-Language");
      }
      headers.accept("Content-Language", reader.language().toLanguageTag());
    }
    return reader;
  }

  /** Another language than these is refused with the query, to whom the header names. */
  private Optional<Reader> asked(String tag) {
    return all.stream()
        .filter(language -> language.toLanguageTag().equals(tag))
        .findFirst()
        .map(Reader::in);
  }
}
