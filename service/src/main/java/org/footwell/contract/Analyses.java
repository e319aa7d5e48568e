package org.footwell.contract;

import com.fasterxml.jackson.databind.JsonNode;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.Paths;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.parameters.RequestBody;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.analysis.Sweep;
import org.footwell.analysis.SweepRequest;
import org.footwell.analysis.Varied;
import org.footwell.analysis.registry.Analysis;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Shape;
import org.footwell.calculation.text.Coded;
import org.footwell.web.batch.SweepTable;

/** What can be asked about every calculation alike: one operation each, with the calculation in its path. */
final class Analyses {

  /** The tag they stand under. */
  static final String TAG = "analysis";

  /** The calculation that the examples are about. */
  private static final String EXAMPLE_OF = "sound-level";

  private static final String JSON = "application/json";

  private final Operations beside;
  private final Schemas schemas;
  private final Examples examples = new Examples();
  private final ProblemAnswers problems;
  private final Options options;
  private final Answers answers;
  private final List<Calculation<?, ?>> calculations;
  private final Calculation<?, ?> subject;

  Analyses(Operations beside, List<Calculation<?, ?>> calculations) {
    this.beside = beside;
    this.schemas = beside.schemas();
    this.problems = beside.problems();
    this.options = beside.options();
    this.answers = beside.answers();
    this.calculations = calculations;
    this.subject =
        calculations.stream()
            .filter(one -> one.card().id().equals(EXAMPLE_OF))
            .findFirst()
            .orElseThrow();
  }

  void add(Paths paths) {
    for (Analysis analysis : Analysis.values()) {
      Calculation<?, ?> made = analysis.of(subject);
      PathItem item = new PathItem().post(operation(analysis.id(), made));
      if (flat(made)) {
        item.get(query(analysis.id(), made.card()));
      }
      add(paths, analysis.id(), item);
    }
    add(paths, "sweep", new PathItem().post(sweep()));
  }

  private static void add(Paths paths, String id, PathItem item) {
    paths.addPathItem("/v1/{calculation}/" + id, item);
  }

  private static boolean flat(Calculation<?, ?> calculation) {
    return Shape.of(calculation.card().request()).flat();
  }

  private Operation query(String id, Card<?, ?> card) {
    JsonNode question = Examples.read(card.example());
    List<Parameter> parameters = beside.cells(card, question);
    parameters.add(
        options.requestFields(
            Examples.cells(question, name -> name.startsWith(Varied.REQUEST.substring(1) + "."))));
    parameters.addAll(options.single(card));
    Operation operation =
        operation(
                id + "-get",
                card.title(),
                "The request as a query, of calculations that have one; see the POST.")
            .parameters(parameters(Analyses::flat, parameters))
            .responses(beside.kept(card));
    operation.addExtension("x-result", schemas.name(card.result()));
    return operation;
  }

  private Operation operation(String id, Calculation<?, ?> analysis) {
    Card<?, ?> card = analysis.card();
    answers.declareAnswer(card, examples.answer(analysis));
    Operation operation =
        operation(id, card.title(), Operations.description(card, codesOf(subject.card())))
            .parameters(parameters(any -> true, options.single(card)))
            .requestBody(body(card.request(), card.example()))
            .responses(problems.ofCalculation().addApiResponse("200", answers.single(card)));
    operation.addExtension("x-result", schemas.name(card.result()));
    return operation;
  }

  private Operation sweep() {
    Schema<?> table = schemas.of(SweepTable.class, false);
    Schema<?> text = schemas.plain("string");
    Content rows =
        new Content()
            .addMediaType(JSON, new MediaType().schema(table).example(examples.sweep(subject)))
            .addMediaType("text/csv", new MediaType().schema(text))
            .addMediaType("application/x-ndjson", new MediaType().schema(text))
            .addMediaType("text/plain", new MediaType().schema(text));
    return operation("sweep", Sweep.TITLE, Sweep.PURPOSE)
        .parameters(parameters(any -> true, options.sweep()))
        .requestBody(body(SweepRequest.class, Sweep.EXAMPLE))
        .responses(
            problems
                .ofCalculation()
                .addApiResponse(
                    "200", new ApiResponse().description("The table, row by row").content(rows)));
  }

  private static Operation operation(String id, String title, String description) {
    return new Operation().operationId(id).summary(title).description(description).addTagsItem(TAG);
  }

  private RequestBody body(Class<?> request, String example) {
    Schema<?> schema = schemas.of(request, true);
    schemas.target(schema).setExample(Examples.read(example));
    return new RequestBody()
        .required(true)
        .content(new Content().addMediaType(JSON, new MediaType().schema(schema)));
  }

  private List<Parameter> parameters(
      Predicate<Calculation<?, ?>> subjects, List<Parameter> others) {
    List<Parameter> all = new ArrayList<>();
    List<String> ids = calculations.stream().filter(subjects).map(one -> one.card().id()).toList();
    all.add(
        new Parameter()
            .in("path")
            .name("calculation")
            .required(true)
            .description("The calculation that is asked")
            .schema(schemas.oneOf(ids))
            .example(EXAMPLE_OF));
    all.addAll(others);
    return all;
  }

  private static Set<String> codesOf(Card<?, ?> card) {
    return Stream.concat(card.findings().stream(), card.refusals().stream())
        .map(Coded::code)
        .collect(Collectors.toSet());
  }
}
