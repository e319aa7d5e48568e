package org.footwell.web.request;

import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import org.footwell.calculation.Reader;

/** The languages answers are given in, and which of them a caller reads. */
public final class Languages {

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

  /** Notes who reads the answer; caches learn of it where it makes a difference. */
  public void apply(Context ctx) {
    Reader reader = Reader.of(ctx.header("Accept-Language"), all);
    ctx.req().setAttribute(READER, reader);
    if (all.size() > 1) {
      ctx.res().addHeader("Vary", "Accept-Language");
      ctx.res().setHeader("Content-Language", reader.language().toLanguageTag());
    }
  }

  /** Who reads the answer to a request. */
  public static Reader reader(Context ctx) {
    Object known = ctx.req().getAttribute(READER);
    return known == null ? Reader.ANYONE : (Reader) known;
  }
}
