package org.footwell.contract;

import com.fasterxml.jackson.databind.JsonNode;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.examples.Example;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.calculation.Card;
import org.footwell.calculation.Verdict;
import org.footwell.calculation.View;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Problem;
import org.footwell.web.request.ProblemWords;
import org.footwell.web.request.Trees;

/** Good answers: the envelope, the rows of a batch, and what stands around them. */
final class Answers {

  private static final String JSON = "application/json";
  private static final String FAULTY_ROW = "FaultyRow";

  private final Schemas schemas;
  private final Components components;

  Answers(Schemas schemas, Components components) {
    this.schemas = schemas;
    this.components = components;
    List<String> verdicts = Stream.of(Verdict.values()).map(Names::of).toList();
    shared("Verdict", schemas.oneOf(verdicts), "The worst finding");
    shared("Findings", schemas.list(schemas.reference("Finding")), "Worst first");
    shared("Safety", schemas.list(schemas.plain("string")), "Usual cautions");
    Schema<?> workings = schemas.list(schemas.reference("Step"));
    shared("Workings", workings, "Every step, with workings=true");
    header("Footwell-Verdict", "The verdict, for answers without one");
    header("ETag", "Strong, quoted, with the version in it");
    header("Cache-Control", "How long the answer may be kept");
    shareRow();
  }

  private void shared(String name, Schema<?> schema, String description) {
    components.addSchemas(name, schema.description(description));
  }

  private void header(String name, String description) {
    components.addHeaders(
        name, new Header().description(description).schema(schemas.plain("string")));
  }

  /** What any row of a batch may hold: the envelope, or a problem in its place. */
  private void shareRow() {
    Schema<?> row = schemas.plain("object");
    row.addProperty("findings", schemas.reference("Findings"));
    row.addProperty("verdict", schemas.reference("Verdict"));
    row.addProperty("safety", schemas.reference("Safety"));
    schemas.target(schemas.reference("Problem")).getProperties().forEach(row::addProperty);
    shared("Row", row, "An answer, or in its place a problem with the line it is about");
    components.addExamples(
        FAULTY_ROW,
        new Example()
            .summary("A row that cannot be answered; the others are as a single answer")
            .value(
                List.of(
                    Trees.MAPPER.valueToTree(
                        Problem.unreadable(400, notJson(), Reader.ANYONE).atLine(1)))));
  }

  private static Phrase notJson() {
    Phrase place = Phrase.of(ProblemWords.AT_COLUMN).with("column", 1);
    return Phrase.of(ProblemWords.MALFORMED).with("place", place);
  }

  /** Declares the envelope of a calculation and a row of its batch. */
  void declare(Card<?, ?> card, JsonNode example) {
    declareAnswer(card, example);
    Schema<?> result = schemas.of(card.result(), false);
    Schema<?> own = schemas.plain("object");
    own.addProperty("result", result);
    Schema<?> row = schemas.allOf(List.of(schemas.reference("Row"), own));
    shared(name(card, "Row"), row, "Row of a batch of " + card.id());
  }

  /** Declares the envelope alone. */
  void declareAnswer(Card<?, ?> card, JsonNode example) {
    Schema<?> answer = envelope(null, card);
    answer.setExample(example);
    shared(name(card, "Answer"), answer, "Answer of " + id(card));
  }

  /** An analysis is called after the calculation it is put to as well, and is the same for all. */
  private static String id(Card<?, ?> card) {
    return card.id().substring(card.id().indexOf('/') + 1);
  }

  /** The answer to a question put to a plan: the envelope with the request that was read beside it. */
  ApiResponse ofPlan(Card<?, ?> card) {
    Schema<?> answer = envelope(schemas.reference(schemas.name(card.request())), card);
    shared(name(card, "OfPlan"), answer, "Answer of " + card.id() + " put to a plan");
    ApiResponse response = single(card);
    response.getContent().get(JSON).schema(schemas.reference(name(card, "OfPlan")));
    return response;
  }

  /** The envelope of a calculation; with a request, or null. */
  private Schema<?> envelope(Schema<?> request, Card<?, ?> card) {
    Schema<?> answer = schemas.plain("object");
    List<String> required = new ArrayList<>(List.of("result", "findings", "verdict", "safety"));
    if (request != null) {
      answer.addProperty("request", request);
      required.add(0, "request");
    }
    answer.addProperty("result", schemas.of(card.result(), false));
    answer.addProperty("findings", schemas.reference("Findings"));
    answer.addProperty("verdict", schemas.reference("Verdict"));
    answer.addProperty("safety", schemas.reference("Safety"));
    answer.addProperty("workings", schemas.reference("Workings"));
    answer.setRequired(required);
    return answer;
  }

  private static String name(Card<?, ?> card, String kind) {
    return Stream.of(id(card).split("-", -1))
            .map(part -> Character.toUpperCase(part.charAt(0)) + part.substring(1))
            .collect(Collectors.joining())
        + kind;
  }

  /** The answer to a single request. */
  ApiResponse single(Card<?, ?> card) {
    Content content =
        new Content()
            .addMediaType(JSON, new MediaType().schema(schemas.reference(name(card, "Answer"))));
    for (String type : List.of("text/plain", "text/csv", "application/xml")) {
      content.addMediaType(type, new MediaType().schema(schemas.plain("string")));
    }
    for (View<?, ?> view : card.views()) {
      content.addMediaType(
          view.mediaType(), new MediaType().schema(schemas.plain("string").format("binary")));
    }
    return with("Footwell-Verdict", new ApiResponse())
        .description("The answer, with its verdict")
        .content(content);
  }

  /** The answer to a request that was a query, which may be kept. */
  ApiResponse kept(Card<?, ?> card) {
    return with("Cache-Control", with("ETag", single(card)));
  }

  private static ApiResponse with(String header, ApiResponse answer) {
    return answer.addHeaderObject(header, new Header().$ref(header));
  }

  /** The answers to the rows of a batch. */
  ApiResponse rows(Card<?, ?> card, boolean flat) {
    MediaType json =
        new MediaType()
            .schema(schemas.list(schemas.reference(name(card, "Row"))))
            .addExamples("faulty", new Example().$ref(FAULTY_ROW));
    Content content = new Content().addMediaType(JSON, json);
    content.addMediaType("application/x-ndjson", new MediaType().schema(schemas.plain("string")));
    if (flat) {
      content.addMediaType("text/csv", new MediaType().schema(schemas.plain("string")));
    }
    content.addMediaType("text/plain", new MediaType().schema(schemas.plain("string")));
    return new ApiResponse().description("One answer or problem a row, in order").content(content);
  }
}
