package org.footwell.contract;

import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.Paths;
import io.swagger.v3.oas.models.SpecVersion;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import io.swagger.v3.oas.models.servers.Server;
import io.swagger.v3.oas.models.tags.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Document;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Step;
import org.footwell.web.limits.Admission;
import org.footwell.web.request.Problem;

/** The OpenAPI document, derived from the list of calculations. */
final class Contract {

  private static final String KEY = "key";

  private final List<Calculation<?, ?>> calculations;
  private final Document<?> document;
  private final String version;
  private final boolean v31;
  private final Components components = new Components();
  private final Schemas schemas;
  private final ProblemAnswers problems;

  Contract(
      List<Calculation<?, ?>> calculations, Document<?> document, String version, boolean v31) {
    this.calculations = calculations;
    this.document = document;
    this.version = version;
    this.v31 = v31;
    this.schemas = new Schemas(components, v31);
    this.problems = new ProblemAnswers(schemas, components);
  }

  OpenAPI build() {
    components.addSecuritySchemes(
        KEY,
        new SecurityScheme()
            .type(SecurityScheme.Type.HTTP)
            .scheme("bearer")
            .description("A key of the operator's, where the service wants one"));
    for (Class<?> shared : List.of(Finding.class, Step.class, Fault.class, Problem.class)) {
      schemas.of(shared, false);
    }
    OpenAPI api =
        new OpenAPI(v31 ? SpecVersion.V31 : SpecVersion.V30)
            .openapi(v31 ? "3.1.0" : "3.0.3")
            .info(info())
            .servers(List.of(new Server().url("/").description("This service")))
            .tags(tags())
            .components(components)
            .security(List.of(new SecurityRequirement(), new SecurityRequirement().addList(KEY)))
            .paths(new Paths());
    Operations operations = new Operations(schemas, problems, components);
    for (Calculation<?, ?> calculation : calculations) {
      Card<?, ?> card = calculation.card();
      operations.add(api.getPaths(), card, Shape.of(card.request()).rules(calculation.getClass()));
      List<String> places = document.places(calculation);
      if (!places.isEmpty()) {
        operations.addOfPlan(api.getPaths(), card, document.type(), places);
      }
    }
    new Analyses(operations, calculations).add(api.getPaths());
    plainPages(api.getPaths());
    return api;
  }

  private Info info() {
    return new Info()
        .title("Footwell")
        .version(version)
        .description(
            """
            Calculations for people who upgrade the sound system of a vehicle. Stateless: nothing \
            is stored, and the same request gives the same answer on the same version.

            Names end in their unit; ratios carry none. Numbers are unrounded unless `digits` asks for fewer. Every answer in \
            JSON is an envelope of `result`, `findings`, `verdict`, `safety` and, with \
            `workings=true`, every step with its formula and source. Where a request is flat, GET \
            takes it as a query with dotted names and an index from 0 for repeated groups. A `*` \
            in place of the index stands for all entries, with their values in order between \
            commas, as in `channels.*.name=left,right`; an empty value is left out, a comma within \
            a value is written `%2C`. Lists in the example answers are cut after three entries.

            Faults of form, of bounds and of the rules between fields (`x-rules` of a schema) are told \
            all at once. What depends on values is judged once these hold, and is then told all at once too.

            In CSV answers a cell that a spreadsheet would run as a formula has an apostrophe before it: \
            one that begins with =, +, -, @, a tab or a return and is no number.

            Batches: POST to `/batch` takes many requests in one call, as an array in JSON, one a line in NDJSON or, \
            where the request is flat, one a row in CSV, whose columns are dotted field names; others pass through, and \
            empty lines are skipped. They are answered row by row, in order and in constant memory; a faulty row carries its \
            own problem and never stops the rest. Of faults of one kind, the same codes at the same fields, the first 1,000 \
            are told in full, the others by the line of the first. Above 2 MiB, or without a Content-Length, the caller has \
            to read while it sends.

            Plans: POST a vehicle plan to `/of-plan` of a calculation, and its request is read from the plan, about \
            the place that `about` names by ids or by indexes, such as `/drivers/sub_left`. The answer is that of \
            the calculation with the `request` beside it; findings and faults point into the plan, and what the plan \
            lacks is refused as required. `/v1/plan-questions` lists all questions a plan poses.

            Analyses: below the address of every calculation, `/sweep` makes a table of what comes of it while one input \
            or two go through their values, `/solve` looks for the value of an input that leads to a target, and \
            `/tolerance` tells how far an answer may be off with its inputs known within tolerances only. \
            All take the request of the calculation as `request`; inputs and outputs are named by dotted paths, such as \
            `drivers.0.re_ohm`, or by JSON Pointers, and an entry of a list by its index or by its `id` or `name`. \
            Where the request of the calculation is flat, GET takes `/solve` and `/tolerance` as a query too, with \
            `request.` before the names of its fields.

            Codings: an answer above 1 KiB, and every batch and sweep, comes in gzip where `Accept-Encoding` takes it; \
            each coding has an ETag of its own. A body may come in gzip with `Content-Encoding`: limits hold for what it \
            unpacks to, and beyond 1 MiB that may be 100 times as large at most.

            Request ids: a request is known by its header `X-Request-Id`, of at most 64 letters, digits, `.`, `_` and `-`, or \
            else is given an id; either goes back in the same header of every answer and stands in problems and in the log, \
            with the trace id of a `traceparent` header beside it.

            Keys: where the operator of a service gives keys to callers, every request below `/v1/` has its own, \
            as `Authorization: Bearer` and the key; what is open without one is the rest. A key is no part of an \
            address. OPTIONS needs none.

            Calls: an operator may bound how many calls a caller makes a minute, and how many requests it has under way. \
            A caller is the name of its key, or else the address it calls from, of IPv6 the first 64 bits. A request that the service works on for \
            long counts for more calls, one for every %d ms, once it is answered. `RateLimit-Policy` and `RateLimit` \
            say what is allowed and left, by draft-ietf-httpapi-ratelimit-headers-11: `calls` of which `q` may be made at \
            once and are there again after `w` seconds, `under-way` at a time. Beyond it comes 429 with `Retry-After`. OPTIONS counts for nothing.

            """
                    .replace("%d", Long.toString(Admission.CALL_MS))
                + ShippedLimits.ofRequests());
  }

  private List<Tag> tags() {
    List<Tag> tags = new ArrayList<>();
    for (Calculation<?, ?> calculation : calculations) {
      Card<?, ?> card = calculation.card();
      tags.add(new Tag().name(card.id()).description(card.title()));
    }
    tags.add(new Tag().name(Analyses.TAG).description("What can be asked about every calculation"));
    tags.add(new Tag().name("operation").description("For whoever runs the service"));
    return tags;
  }

  private void plainPages(Paths paths) {
    page(paths, "/health/live", "live", "Whether the process runs", health());
    page(paths, "/health/ready", "ready", "Whether requests are taken", health());
    MediaType figures =
        new MediaType()
            .schema(schemas.plain("string"))
            .example("# TYPE footwell_calculation_seconds histogram\n");
    page(
        paths,
        "/metrics",
        "metrics",
        "Figures for Prometheus",
        new Content().addMediaType("text/plain", figures));
  }

  private Content health() {
    Schema<?> schema = schemas.plain("object");
    schema.addProperty("status", schemas.oneOf(List.of("up")).description("Always up"));
    schema.setRequired(List.of("status"));
    return new Content()
        .addMediaType(
            "application/json", new MediaType().schema(schema).example(Map.of("status", "up")));
  }

  private void page(Paths paths, String path, String id, String summary, Content content) {
    ApiResponses responses =
        problems
            .ofAnyRequest()
            .addApiResponse("200", new ApiResponse().description(summary).content(content));
    if (id.equals("ready")) {
      responses.addApiResponse("503", problems.own("Starting or stopping"));
    }
    paths.addPathItem(
        path,
        new PathItem()
            .get(
                new Operation()
                    .operationId(id)
                    .summary(summary)
                    .description(summary + ".")
                    .addTagsItem("operation")
                    .security(List.of())
                    .responses(responses)));
  }
}
