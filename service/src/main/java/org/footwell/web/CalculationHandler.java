package org.footwell.web;

import io.javalin.http.Context;
import java.util.List;
import org.footwell.analysis.registry.Analysis;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Document;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Answered;
import org.footwell.web.request.Body;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Endpoints;
import org.footwell.web.request.Exchange;
import org.footwell.web.request.Format;
import org.footwell.web.request.Languages;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;
import org.footwell.web.request.Query;
import org.footwell.web.request.Rendering;
import org.footwell.web.upload.Intake;

/** {@code /v1/{calculation}}, {@code of-plan} and the analyses below it: read, compute, render. */
final class CalculationHandler {

  private final Endpoints endpoints;
  private final Document<?> document;
  private final int bodyBytes;
  private final Intake intake;
  private final String version;

  CalculationHandler(Endpoints endpoints, Document<?> document, Settings settings, String version) {
    this.endpoints = endpoints;
    this.document = document;
    this.bodyBytes = settings.bodyBytes();
    this.intake = new Intake(settings.bodyBytes(), settings.uploadBytes(), settings.deadline());
    this.version = version;
  }

  /** Methods the address of this request takes. */
  List<String> allowed(Context ctx) {
    return allowed(endpoints.of(ctx));
  }

  private static List<String> allowed(Endpoint<?, ?> endpoint) {
    return endpoint.flat() ? List.of("GET", "HEAD", "POST", "OPTIONS") : List.of("POST", "OPTIONS");
  }

  void post(Context ctx) {
    post(ctx, endpoints.of(ctx));
  }

  private <Q extends Record, R extends Record> void post(Context ctx, Endpoint<Q, R> endpoint) {
    Query query = Query.of(ctx.queryString(), endpoint.options());
    query.requireNoFields();
    Format format = format(ctx, endpoint, query);
    Reader reader = query.reader(Languages.reader(ctx), format);
    Answered<Q, R> answered =
        endpoint.request().holdsSeries()
            ? intake.answer(
                ctx, untyped -> endpoint.answerUntyped(untyped, query.workings(), reader))
            : endpoint.answer(Exchange.jsonBody(ctx, bodyBytes), query.workings(), reader);
    byte[] bytes = render(endpoint, answered, query, format, reader);
    describe(ctx, endpoint, answered.answer(), format);
    Exchange.write(ctx, 200, format.contentType(), bytes);
  }

  /** Methods the address of an analysis takes. */
  List<String> allowed(Context ctx, Analysis analysis) {
    return allowed(endpoints.of(ctx, analysis));
  }

  void post(Context ctx, Analysis analysis) {
    post(ctx, endpoints.of(ctx, analysis));
  }

  void get(Context ctx) {
    get(ctx, endpoints.of(ctx));
  }

  void get(Context ctx, Analysis analysis) {
    get(ctx, endpoints.of(ctx, analysis));
  }

  private <Q extends Record, R extends Record> void get(Context ctx, Endpoint<Q, R> endpoint) {
    if (!endpoint.flat()) {
      throw ProblemException.wrongMethod(ctx.method().name(), allowed(endpoint));
    }
    Query query = Query.of(ctx.queryString(), endpoint.options());
    Format format = format(ctx, endpoint, query);
    Reader reader = query.reader(Languages.reader(ctx), format);
    Answered<Q, R> answered = endpoint.answerCells(query.tree(), query.workings(), reader);
    byte[] bytes = render(endpoint, answered, query, format, reader);
    ctx.res().setHeader("Cache-Control", "public, max-age=3600");
    describe(ctx, endpoint, answered.answer(), format);
    if (query.option("format") == null && query.option("field") == null) {
      ctx.res().addHeader("Vary", "Accept");
    }
    Exchange.writeKept(ctx, format.contentType(), new Body(bytes), version);
  }

  /** Methods the address of a question to a document takes. */
  List<String> allowedOfDocument(Context ctx) {
    asked(ctx);
    return List.of("POST", "OPTIONS");
  }

  void postDocument(Context ctx) {
    postDocument(ctx, asked(ctx));
  }

  /** A calculation that can be put to the document. */
  private Endpoint<?, ?> asked(Context ctx) {
    Endpoint<?, ?> endpoint = endpoints.of(ctx);
    if (endpoint.places(document).isEmpty()) {
      throw ProblemException.of(
          ProblemType.NOT_FOUND,
          Phrase.of(ProblemWords.NOT_OF_PLAN).own("calculation", endpoint.card().id()));
    }
    return endpoint;
  }

  private <Q extends Record, R extends Record> void postDocument(
      Context ctx, Endpoint<Q, R> endpoint) {
    Query query = Query.of(ctx.queryString(), endpoint.optionsOfDocument());
    query.requireNoFields();
    Format format = format(ctx, endpoint, query);
    Reader reader = query.reader(Languages.reader(ctx), format);
    Answered<Q, R> answered =
        endpoint.answerOf(
            document,
            Exchange.jsonBody(ctx, bodyBytes),
            query.option("about"),
            query.workings(),
            reader);
    byte[] bytes = render(endpoint, answered, query, format, reader);
    describe(ctx, endpoint, answered.answer(), format);
    Exchange.write(ctx, 200, format.contentType(), bytes);
  }

  /** A single value is text, a whole answer JSON unless something else is asked for. */
  private static Format format(Context ctx, Endpoint<?, ?> endpoint, Query query) {
    Format format =
        query.option("field") == null
            ? endpoint.formats().wanted(query.option("format"), ctx.header("Accept"))
            : Format.TEXT;
    query.requireDigitsFit(format);
    return format;
  }

  private static <Q extends Record, R extends Record> byte[] render(
      Endpoint<Q, R> endpoint, Answered<Q, R> answered, Query query, Format format, Reader reader) {
    String field = query.option("field");
    Digits digits = query.digits();
    return field == null
        ? Rendering.render(endpoint, answered, format, digits, reader)
        : Rendering.part(endpoint.result(), answered.answer(), field, digits);
  }

  /** What an answer without an envelope would not tell. */
  private static <R extends Record> void describe(
      Context ctx, Endpoint<?, R> endpoint, Answer<R> answer, Format format) {
    ctx.res().setHeader("Footwell-Verdict", Names.of(answer.verdict()));
    if (endpoint.formats().view(format) != null) {
      // A view such as setup_csv is a file that ends in csv.
      int ending = format.name().lastIndexOf('_') + 1;
      String what = ending == 0 ? "" : "-" + format.name().substring(0, ending - 1);
      String file = endpoint.card().id() + what + "." + format.name().substring(ending);
      ctx.res().setHeader("Content-Disposition", "inline; filename=\"" + file + "\"");
    }
  }
}
