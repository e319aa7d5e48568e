package org.footwell.web.pages;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.footwell.calculation.text.Texts;
import org.footwell.web.request.EntityTag;
import org.footwell.web.request.Exchange;
import org.footwell.web.request.Format;
import org.footwell.web.request.Languages;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;
import org.footwell.web.request.Rendering;

/** Fixed texts the service carries: the contract, the reference page, explanations of problems. */
public final class Pages {

  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html;charset=utf-8",
          "css", "text/css;charset=utf-8",
          "js", "text/javascript;charset=utf-8",
          "json", "application/json",
          "yaml", "application/yaml",
          "svg", "image/svg+xml");

  private final Map<String, byte[]> loaded = new ConcurrentHashMap<>();
  private final String version;

  public Pages(String version) {
    this.version = version;
  }

  /** Serves a file of the jar. */
  public void serve(Context ctx, String resource) {
    byte[] bytes = loaded.computeIfAbsent(resource, Pages::load);
    String tag = EntityTag.of(version, bytes);
    ctx.res().setHeader("ETag", tag);
    ctx.res().setHeader("Cache-Control", "public, max-age=300");
    if (EntityTag.matches(ctx.header("If-None-Match"), tag)) {
      ctx.res().setStatus(304);
      return;
    }
    String ending = resource.substring(resource.lastIndexOf('.') + 1);
    Exchange.write(ctx, 200, TYPES.get(ending), bytes);
  }

  private static byte[] load(String resource) {
    try (InputStream in = Pages.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("missing from the jar: " + resource);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The page behind the type of a problem. */
  public void problem(Context ctx) {
    for (ProblemType type : ProblemType.values()) {
      if (type.uri().equals(ctx.path())) {
        Locale language = Languages.reader(ctx).language();
        String what = type.status() + " " + Texts.of(type, language);
        String text = what + "\n" + Texts.advice(type, language).orElseThrow() + "\n";
        Exchange.write(ctx, 200, Format.TEXT.contentType(), Rendering.utf8(text));
        return;
      }
    }
    throw ProblemException.of(ProblemType.NOT_FOUND, ProblemWords.NO_PROBLEM_KIND);
  }
}
