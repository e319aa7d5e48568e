package org.footwell.web.pages;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.footwell.calculation.text.Texts;
import org.footwell.web.request.Body;
import org.footwell.web.request.Exchange;
import org.footwell.web.request.Format;
import org.footwell.web.request.Languages;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;
import org.footwell.web.request.Rendering;

/** Fixed texts the service carries: the contract, its pages, explanations of problems. */
public final class Pages {

  private static final List<String> REFERENCE =
      List.of(
          "reference.js",
          "reference.css",
          "sweep.js",
          "swagger-ui.css",
          "swagger-ui-bundle.js",
          "favicon.svg");

  private static final List<String> PLAN =
      List.of(
          "look.css",
          "form.css",
          "review.css",
          "print.css",
          "main.js",
          "cabin.js",
          "contract.js",
          "controls.js",
          "dom.js",
          "exporting.js",
          "folds.js",
          "job.js",
          "json-text.js",
          "lists.js",
          "numbers.js",
          "opening.js",
          "places.js",
          "plots.js",
          "records.js",
          "remarks.js",
          "review.js",
          "reviewing.js",
          "sections.js",
          "words.js");

  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html;charset=utf-8",
          "css", "text/css;charset=utf-8",
          "js", "text/javascript;charset=utf-8",
          "json", "application/json",
          "yaml", "application/yaml",
          "svg", "image/svg+xml");

  /** What is served as it stands, by its address. */
  public static final Map<String, String> FIXED = fixed();

  private final Map<String, Body> loaded = new ConcurrentHashMap<>();
  private final String version;

  public Pages(String version) {
    this.version = version;
  }

  private static Map<String, String> fixed() {
    Map<String, String> files = new LinkedHashMap<>();
    for (String contract : List.of("openapi.json", "openapi.yaml")) {
      String ending = contract.substring("openapi".length());
      files.put("/openapi" + ending, "/contract/openapi-3.0" + ending);
      files.put("/openapi-3.1" + ending, "/contract/openapi-3.1" + ending);
    }
    files.put("/codes", "/contract/codes.html");
    files.put("/codes.json", "/contract/codes.json");
    files.put("/", "/reference/index.html");
    REFERENCE.forEach(file -> files.put("/reference/" + file, "/reference/" + file));
    files.put("/plan", "/plan/index.html");
    PLAN.forEach(file -> files.put("/plan/" + file, "/plan/" + file));
    PageWords.examples().forEach(name -> files.put("/plan/examples/" + name, "/examples/" + name));
    return Collections.unmodifiableMap(files);
  }

  /** Serves a file of the jar. */
  public void serve(Context ctx, String resource) {
    Body body = loaded.computeIfAbsent(resource, Pages::load);
    String ending = resource.substring(resource.lastIndexOf('.') + 1);
    serve(ctx, TYPES.get(ending), body);
  }

  /** Serves the words of the pages in the reader's language. */
  public void words(Context ctx) {
    Locale language = Languages.reader(ctx).language();
    serve(
        ctx,
        Format.JSON.contentType(),
        loaded.computeIfAbsent(
            PageWords.PATH + language, any -> new Body(PageWords.json(language))));
  }

  private void serve(Context ctx, String type, Body body) {
    ctx.res().setHeader("Cache-Control", "public, max-age=300");
    Exchange.writeKept(ctx, type, body, version);
  }

  private static Body load(String resource) {
    try (InputStream in = Pages.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("missing from the jar: " + resource);
      }
      return new Body(in.readAllBytes());
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
