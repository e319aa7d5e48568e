package org.footwell.contract;

import com.fasterxml.jackson.databind.JsonNode;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.Paths;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.Encoding;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.parameters.RequestBody;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.calculation.Card;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Source;
import org.footwell.calculation.rule.Rule;
import org.footwell.calculation.text.Coded;

/** The operations of each calculation: POST, GET where its request is flat, and batch. */
final class Operations {

  private static final String JSON = "application/json";

  private static final String SEE_POST =
      " For its limits, findings, refusals and sources see the POST of a single request.";

  private final Schemas schemas;
  private final Examples examples = new Examples();
  private final ProblemAnswers problems;
  private final Options options;
  private final Answers answers;

  Operations(Schemas schemas, ProblemAnswers problems, Components components) {
    this.schemas = schemas;
    this.problems = problems;
    this.options = new Options(schemas, components);
    this.answers = new Answers(schemas, components);
  }

  Schemas schemas() {
    return schemas;
  }

  ProblemAnswers problems() {
    return problems;
  }

  Options options() {
    return options;
  }

  Answers answers() {
    return answers;
  }

  void add(Paths paths, Card<?, ?> card, List<Rule> rules) {
    Schema<?> request = schemas.of(card.request(), true);
    JsonNode question = examples.question(card);
    schemas.target(request).setExample(question);
    answers.declare(card, examples.answer(card));
    boolean flat = Shape.of(card.request()).flat();
    PathItem item = new PathItem().post(post(card, rules, request));
    if (flat) {
      item.get(get(card, question));
    }
    String path = "/v1/" + card.id();
    paths.addPathItem(path, item);
    paths.addPathItem(path + "/batch", new PathItem().post(batch(card, request, question, flat)));
  }

  private Operation post(Card<?, ?> card, List<Rule> rules, Schema<?> request) {
    Content body = new Content().addMediaType(JSON, new MediaType().schema(request));
    if (Shape.of(card.request()).holdsSeries()) {
      body.addMediaType("multipart/form-data", upload(request));
    }
    String told =
        description(card, Set.of())
            + section("Rules of this calculation alone", rules.stream().map(Rule::sentence));
    Operation operation = operation(card, card.id(), card.title(), told);
    if (!rules.isEmpty()) {
      operation.addExtension("x-rules", Schemas.rules(rules));
    }
    return operation
        .parameters(options.single(card))
        .requestBody(new RequestBody().required(true).content(body))
        .responses(responses(answers.single(card)));
  }

  /** The request with its recordings as files beside it. */
  private MediaType upload(Schema<?> request) {
    Schema<?> file = schemas.plain("string");
    file.setFormat("binary");
    file.setDescription("A WAV file, by the name under which the request knows it as wav");
    Schema<?> parts = schemas.plain("object");
    parts.setDescription(
        "The request in JSON and the WAV files its recordings name: "
            + ShippedLimits.ofUploads()
            + ". Nothing is stored.");
    parts.addProperty("request", request);
    parts.setRequired(List.of("request"));
    parts.setAdditionalProperties(file);
    return new MediaType().schema(parts).addEncoding("request", new Encoding().contentType(JSON));
  }

  private Operation get(Card<?, ?> card, JsonNode question) {
    List<Parameter> parameters = cells(card, question);
    if (Shape.of(card.request()).columns().stream().anyMatch(one -> one.path().contains("*"))) {
      parameters.add(
          options.furtherEntries(
              Examples.cells(question, name -> name.matches(".*\\.[1-9]\\d*(\\..*)?"))));
    }
    parameters.addAll(options.single(card));
    return operation(card, card.id() + "-get", card.title(), "The request as a query." + SEE_POST)
        .parameters(parameters)
        .responses(kept(card));
  }

  /** What a request has, the first entry of lists; a request within it is no parameter. */
  List<Parameter> cells(Card<?, ?> card, JsonNode question) {
    List<Parameter> parameters = new ArrayList<>();
    for (Shape.Column column : Shape.of(card.request()).columns()) {
      String name = column.path().replace("*", "0");
      if (column.type() == Map.class) {
        continue;
      }
      Schema<?> leaf = schemas.leaf(card.request(), column.path());
      Parameter parameter = Options.parameter(name, leaf, leaf.getDescription());
      parameter.setRequired(column.required() ? true : null);
      JsonNode example = examples.value(question, name);
      if (example.isValueNode()) {
        parameter.setExample(example);
      }
      parameters.add(parameter);
    }
    return parameters;
  }

  ApiResponses kept(Card<?, ?> card) {
    return responses(answers.kept(card))
        .addApiResponse("304", new ApiResponse().description("Not changed"));
  }

  private Operation batch(Card<?, ?> card, Schema<?> request, JsonNode question, boolean flat) {
    Schema<?> lines = schemas.plain("string");
    Content body =
        new Content()
            .addMediaType(JSON, new MediaType().schema(schemas.list(request)))
            .addMediaType(
                "application/x-ndjson", new MediaType().schema(lines).example(question + "\n"));
    if (flat) {
      body.addMediaType("text/csv", new MediaType().schema(lines).example(Examples.csv(question)));
    }
    return operation(
            card,
            card.id() + "-batch",
            card.title() + " (batch)",
            "Many requests, row by row; see Batches at the top of this document." + SEE_POST)
        .parameters(options.batch(flat))
        .requestBody(new RequestBody().required(true).content(body))
        .responses(responses(answers.rows(card, flat)));
  }

  /** The same question put to a plan. */
  void addOfPlan(Paths paths, Card<?, ?> card, Class<?> plan, List<String> places) {
    Content body = new Content().addMediaType(JSON, new MediaType().schema(schemas.of(plan, true)));
    Operation post =
        operation(
                card,
                card.id() + "-of-plan",
                card.title() + " (of a plan)",
                "The request is read from a plan; see Plans at the top of this document."
                    + SEE_POST)
            .parameters(options.ofPlan(card, places))
            .requestBody(new RequestBody().required(true).content(body))
            .responses(responses(answers.ofPlan(card)));
    paths.addPathItem("/v1/" + card.id() + "/of-plan", new PathItem().post(post));
  }

  private ApiResponses responses(ApiResponse good) {
    return problems.ofCalculation().addApiResponse("200", good);
  }

  private Operation operation(Card<?, ?> card, String id, String summary, String description) {
    Operation operation =
        new Operation()
            .operationId(id)
            .summary(summary)
            .description(description)
            .addTagsItem(card.id());
    // Clients in languages with generics have one envelope for all results.
    operation.addExtension("x-result", schemas.name(card.result()));
    return operation;
  }

  /** What a card says, save codes that are said elsewhere. */
  static String description(Card<?, ?> card, Set<String> without) {
    return card.purpose()
        + section("Where the model stops holding", card.limits().stream())
        + section("Findings", codes(card.findings(), without))
        + section("Refusals", codes(card.refusals(), without))
        + section("Sources", card.sources().stream().map(Source::citation));
  }

  private static Stream<String> codes(List<? extends Coded> codes, Set<String> without) {
    return codes.stream()
        .map(Coded::code)
        .filter(code -> !without.contains(code))
        .map(code -> "`" + code + "`");
  }

  private static String section(String title, Stream<String> items) {
    String list = items.map(item -> "- " + item).collect(Collectors.joining("\n"));
    return list.isEmpty() ? "" : "\n\n**" + title + "**\n\n" + list;
  }
}
