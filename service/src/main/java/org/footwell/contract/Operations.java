package org.footwell.contract;

import com.fasterxml.jackson.databind.JsonNode;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.Paths;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.Encoding;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.parameters.RequestBody;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.calculation.Card;
import org.footwell.calculation.Coded;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Source;
import org.footwell.calculation.View;

/** The operations of each calculation: POST, GET where its request is flat, and batch. */
final class Operations {

  private static final String JSON = "application/json";

  private final Schemas schemas;
  private final Examples examples = new Examples();
  private final ProblemAnswers problems;

  Operations(Schemas schemas, ProblemAnswers problems) {
    this.schemas = schemas;
    this.problems = problems;
  }

  void add(Paths paths, Components components, Card<?, ?> card) {
    Schema<?> request = schemas.of(card.request(), true);
    components.addSchemas(answerName(card), answer(card));
    JsonNode question = examples.question(card);
    JsonNode answer = examples.answer(card);
    PathItem item = new PathItem().post(post(card, request, question, answer));
    if (Shape.of(card.request()).flat()) {
      item.get(get(card, question, answer));
    }
    paths.addPathItem("/v1/" + card.id(), item);
    paths.addPathItem(
        "/v1/" + card.id() + "/batch", new PathItem().post(batch(card, request, question, answer)));
  }

  private static String answerName(Card<?, ?> card) {
    return Stream.of(card.id().split("-", -1))
            .map(part -> Character.toUpperCase(part.charAt(0)) + part.substring(1))
            .collect(Collectors.joining())
        + "Answer";
  }

  private Schema<?> answer(Card<?, ?> card) {
    Schema<?> schema = schemas.plain("object");
    schema.setDescription("Answer of " + card.id());
    schema.addProperty("result", schemas.of(card.result(), false));
    schema.addProperty(
        "findings", schemas.list(schemas.reference("Finding")).description("Worst first"));
    schema.addProperty(
        "verdict",
        schemas.oneOf(List.of("ok", "note", "warning", "stop")).description("The worst finding"));
    schema.addProperty(
        "safety", schemas.list(schemas.plain("string")).description("Usual cautions"));
    schema.addProperty(
        "workings",
        schemas.list(schemas.reference("Step")).description("Every step, with workings=true"));
    schema.setRequired(List.of("result", "findings", "verdict", "safety"));
    return schema;
  }

  private Operation post(Card<?, ?> card, Schema<?> request, JsonNode question, JsonNode answer) {
    Content body =
        new Content().addMediaType(JSON, new MediaType().schema(request).example(question));
    if (Shape.of(card.request()).holdsSeries()) {
      body.addMediaType("multipart/form-data", upload(request, question));
    }
    return operation(card, card.id(), "")
        .parameters(options(card))
        .requestBody(new RequestBody().required(true).content(body))
        .responses(responses(card, answer));
  }

  /** The request with its recordings as files beside it. */
  private MediaType upload(Schema<?> request, JsonNode question) {
    Schema<?> file = schemas.plain("string");
    file.setFormat("binary");
    file.setDescription("A WAV file, by the name under which the request knows it as wav");
    Schema<?> parts = schemas.plain("object");
    parts.setDescription(
        "The request in JSON and the WAV files its recordings name: at most 129 parts, 64 MiB and"
            + " 12,000,000 samples in all, the request itself at most 1 MiB. Nothing is stored.");
    parts.addProperty("request", request);
    parts.setRequired(List.of("request"));
    parts.setAdditionalProperties(file);
    return new MediaType()
        .schema(parts)
        .example(Map.of("request", question))
        .addEncoding("request", new Encoding().contentType(JSON));
  }

  private Operation get(Card<?, ?> card, JsonNode question, JsonNode answer) {
    List<Parameter> parameters = new ArrayList<>();
    Map<String, String> given = Examples.cells(question);
    boolean repeated = false;
    for (Shape.Column column : Shape.of(card.request()).columns()) {
      String name = column.path().replace("*", "0");
      Schema<?> leaf = schemas.leaf(card.request(), column.path());
      Parameter parameter = parameter(name, leaf, leaf.getDescription());
      parameter.setRequired(column.required());
      if (given.containsKey(name)) {
        parameter.setExample(examples.value(question, name));
      }
      parameters.add(parameter);
      repeated |= column.path().contains("*");
    }
    if (repeated) {
      parameters.add(more(given));
    }
    parameters.addAll(options(card));
    ApiResponses responses = responses(card, answer);
    responses
        .get("200")
        .addHeaderObject("ETag", header("Strong, quoted, with the version in it"))
        .addHeaderObject("Cache-Control", header("How long the answer may be kept"));
    responses.addApiResponse("304", new ApiResponse().description("Not changed"));
    return operation(card, card.id() + "-get", " The request as a query.")
        .parameters(parameters)
        .responses(responses);
  }

  /** Further entries of repeated groups, whose names no list of parameters can give. */
  private Parameter more(Map<String, String> given) {
    Schema<?> schema = schemas.plain("object");
    schema.setAdditionalProperties(schemas.plain("string"));
    Map<String, String> rest = new LinkedHashMap<>(given);
    rest.keySet().removeIf(name -> !name.matches(".*\\.[1-9]\\d*(\\..*)?"));
    return new Parameter()
        .in("query")
        .name("further_entries")
        .style(Parameter.StyleEnum.FORM)
        .explode(true)
        .schema(schema)
        .example(rest)
        .description(
            "Further entries of repeated groups, by the same names with the index 1, 2, 3 … in"
                + " place of 0; no index may be left out.");
  }

  private Operation batch(Card<?, ?> card, Schema<?> request, JsonNode question, JsonNode answer) {
    Schema<?> row = schemas.plain("object");
    row.setDescription("An answer, or a problem with the line it is about");
    Schema<?> lines = schemas.plain("string");
    Content body = new Content();
    Content out = new Content();
    body.addMediaType(
        JSON, new MediaType().schema(schemas.list(request)).example(List.of(question)));
    out.addMediaType(JSON, new MediaType().schema(schemas.list(row)).example(List.of(answer)));
    body.addMediaType(
        "application/x-ndjson", new MediaType().schema(lines).example(question + "\n"));
    out.addMediaType("application/x-ndjson", new MediaType().schema(lines).example(answer + "\n"));
    List<Parameter> parameters = new ArrayList<>();
    if (Shape.of(card.request()).flat()) {
      body.addMediaType("text/csv", new MediaType().schema(lines).example(Examples.csv(question)));
      out.addMediaType("text/csv", new MediaType().schema(lines));
      Schema<?> separator = schemas.oneOf(List.of("comma", "semicolon"));
      parameters.add(parameter("separator", separator, "What separates the cells of a CSV row"));
      parameters.add(
          parameter(
              "columns",
              schemas.plain("string"),
              "Figures of the result to append to a CSV row, separated by commas, instead of all;"
                  + " verdict, findings and error are always there, and naming only verdict gives no"
                  + " figures"));
    }
    parameters.add(errors());
    out.addMediaType("text/plain", new MediaType().schema(schemas.plain("string")));
    ApiResponses responses = problems.ofCalculation();
    responses.addApiResponse(
        "200", new ApiResponse().description("One answer or problem a row, in order").content(out));
    return operation(
            card,
            card.id() + "-batch",
            " Many requests, row by row, in constant memory and in order; a faulty row carries its"
                + " own problem and never stops the rest. Of faults of one kind, the same codes at the"
                + " same fields, the first 1,000 are told in full, the others by the line of the first."
                + " CSV columns are dotted field names,"
                + " others pass through, and empty lines are skipped. Above 2 MiB, or without a"
                + " Content-Length, the caller has to read while it sends.")
        .parameters(parameters)
        .requestBody(new RequestBody().required(true).content(body))
        .responses(responses);
  }

  private static Operation operation(Card<?, ?> card, String id, String more) {
    Operation operation =
        new Operation()
            .operationId(id)
            .summary(card.title() + (more.isEmpty() ? "" : id.endsWith("batch") ? " (batch)" : ""))
            .description(description(card, more))
            .addTagsItem(card.id());
    operation.addExtension("x-sources", card.sources().stream().map(Source::citation).toList());
    return operation;
  }

  private static String description(Card<?, ?> card, String more) {
    return card.purpose()
        + more
        + section("Where the model stops holding", card.limits().stream())
        + section("Findings", codes(card.findings()))
        + section("Refusals", codes(card.refusals()))
        + section("Sources", card.sources().stream().map(Source::citation));
  }

  private static Stream<String> codes(List<? extends Coded> codes) {
    return codes.stream().map(code -> "`" + code.code() + "`");
  }

  private static String section(String title, Stream<String> items) {
    String list = items.map(item -> "- " + item).collect(Collectors.joining("\n"));
    return list.isEmpty() ? "" : "\n\n**" + title + "**\n\n" + list;
  }

  private List<Parameter> options(Card<?, ?> card) {
    List<String> formats = new ArrayList<>(List.of("json", "text", "csv", "xml"));
    StringBuilder meanings = new StringBuilder();
    for (View<?, ?> view : card.views()) {
      formats.add(view.format());
      meanings.append("; ").append(view.format()).append(": ").append(view.description());
    }
    return List.of(
        parameter(
            "format",
            schemas.oneOf(formats),
            "Format of the answer; goes before the Accept header" + meanings),
        parameter(
            "field",
            schemas.plain("string"),
            "Answer this part only, by its dotted path in the result, or from findings, verdict,"
                + " safety or workings"),
        parameter("workings", schemas.plain("boolean"), "Whether to show every step"),
        errors());
  }

  private Parameter errors() {
    return parameter(
        "errors",
        schemas.oneOf(List.of("problem", "text")),
        "With text a problem comes as 200 with one short sentence, for cells that hide the rest");
  }

  private static Parameter parameter(String name, Schema<?> schema, String description) {
    return new Parameter().in("query").name(name).schema(schema).description(description);
  }

  private Header header(String description) {
    return new Header().description(description).schema(schemas.plain("string"));
  }

  private ApiResponses responses(Card<?, ?> card, JsonNode answer) {
    Schema<?> text = schemas.plain("string");
    Content content =
        new Content()
            .addMediaType(
                JSON, new MediaType().schema(schemas.reference(answerName(card))).example(answer))
            .addMediaType("text/plain", new MediaType().schema(text))
            .addMediaType("text/csv", new MediaType().schema(text))
            .addMediaType("application/xml", new MediaType().schema(text));
    for (View<?, ?> view : card.views()) {
      content.addMediaType(
          view.mediaType(), new MediaType().schema(schemas.plain("string").format("binary")));
    }
    ApiResponses responses = problems.ofCalculation();
    responses.addApiResponse(
        "200",
        new ApiResponse()
            .description("The answer, with its verdict")
            .addHeaderObject("Footwell-Verdict", header("The verdict, for answers without one"))
            .content(content));
    return responses;
  }
}
