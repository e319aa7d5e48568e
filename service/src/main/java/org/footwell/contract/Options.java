package org.footwell.contract;

import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.footwell.calculation.Card;
import org.footwell.calculation.View;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Query;

/** Parameters beside the request itself: each is declared once, and operations refer to it. */
final class Options {

  private final Schemas schemas;

  Options(Schemas schemas, Components components) {
    this.schemas = schemas;
    for (Parameter shared :
        List.of(
            format(List.of()),
            parameter(
                "field",
                schemas.plain("string"),
                "Answer this part only, by its dotted path in the result, or from findings, verdict,"
                    + " safety or workings"),
            parameter(
                "digits",
                schemas.between(Digits.LEAST, Digits.MOST),
                "Significant digits of the numbers of the answer, instead of all: each is rounded as"
                    + " it is written in full, half up and away from zero. Whole numbers, money and"
                    + " what is copied into a device stay. With JSON, CSV, NDJSON, XML and field"),
            parameter("workings", schemas.plain("boolean"), "Whether to show every step"),
            parameter(
                "findings",
                schemas.oneOf(Query.WORDINGS),
                "How a JSON answer tells findings: with codes, by code, level, places and arguments"
                    + " alone, for programs that have the sentences; with beside_tables, in sentences"
                    + " whose figures are rounded as in the tables of the sheets"),
            parameter(
                "errors",
                schemas.oneOf(List.of("problem", "text")),
                "With text a problem comes as 200 with one short sentence, for cells that hide the"
                    + " rest"),
            parameter(
                "lang",
                schemas.oneOf(Reader.languages()),
                "Language of findings, cautions and problems; goes before the Accept-Language"
                    + " header, and Content-Language says which it is"),
            parameter(
                "units",
                schemas.oneOf(Stream.of(Reader.Units.values()).map(Names::of).toList()),
                "In what lengths, areas and volumes are shown to people: on sheets, in text, in findings and"
                    + " in what a problem says was given and is allowed. Numbers in JSON, XML and CSV keep"
                    + " the unit of their name"),
            parameter(
                "separator",
                schemas.oneOf(List.of("comma", "semicolon")),
                "What separates the cells of a CSV row"),
            parameter(
                "columns",
                schemas.plain("string"),
                "Figures of the result to append to a CSV row, separated by commas, instead of all;"
                    + " verdict, findings and error are always there, and naming only verdict gives"
                    + " no figures"))) {
      components.addParameters(shared.getName(), shared);
    }
  }

  /** Those of a single request. */
  List<Parameter> single(Card<?, ?> card) {
    Parameter format = card.views().isEmpty() ? shared("format") : format(card.views());
    return List.of(
        format,
        shared("field"),
        shared("digits"),
        shared("workings"),
        shared("findings"),
        shared("errors"),
        shared("lang"),
        shared("units"));
  }

  /** Those of a question to a plan, which can be about these places. */
  List<Parameter> ofPlan(Card<?, ?> card, List<String> places) {
    List<String> forms = places.stream().filter(form -> !form.isEmpty()).toList();
    List<Parameter> all = new ArrayList<>();
    if (!forms.isEmpty()) {
      all.add(
          parameter(
                  "about",
                  schemas.plain("string"),
                  "Place of the plan it is about: " + String.join(" or ", forms))
              .required(!places.contains(""))
              .example(byIndex(forms.get(0))));
    }
    all.addAll(single(card));
    return all;
  }

  /** A place by indexes, which every plan has. */
  private static String byIndex(String form) {
    return form.replace("{lower}/{upper}", "0").replaceAll("\\{[^}]*}", "0");
  }

  /** Those of a batch. */
  List<Parameter> batch(boolean flat) {
    return flat
        ? List.of(
            shared("separator"),
            shared("columns"),
            shared("digits"),
            shared("errors"),
            shared("lang"),
            shared("units"))
        : List.of(shared("digits"), shared("errors"), shared("lang"), shared("units"));
  }

  /** Those of a sweep. */
  List<Parameter> sweep() {
    Parameter format =
        parameter(
            "format",
            schemas.oneOf(List.of("json", "csv", "ndjson")),
            "Format of the table; goes before the Accept header");
    return List.of(
        format,
        shared("separator"),
        shared("digits"),
        shared("errors"),
        shared("lang"),
        shared("units"));
  }

  private static Parameter shared(String name) {
    return new Parameter().$ref(name);
  }

  private Parameter format(List<? extends View<?, ?>> views) {
    List<String> formats = new ArrayList<>(List.of("json", "text", "csv", "xml"));
    StringBuilder meanings = new StringBuilder();
    for (View<?, ?> view : views) {
      formats.add(view.format());
      meanings.append("; ").append(view.format()).append(": ").append(view.description());
    }
    return parameter(
        "format",
        schemas.oneOf(formats),
        "Format of the answer; goes before the Accept header" + meanings);
  }

  static Parameter parameter(String name, Schema<?> schema, String description) {
    return new Parameter().in("query").name(name).schema(schema).description(description);
  }

  /** Further entries of repeated groups, whose names no list of parameters can give. */
  Parameter furtherEntries(Map<String, String> example) {
    return further(
        "further_entries",
        "Further entries of repeated groups, by the same names with the index 1, 2, 3 … in place of"
            + " 0; no index may be left out.",
        example);
  }

  /** The request that an analysis is about. */
  Parameter requestFields(Map<String, String> example) {
    return further(
        "request_fields",
        "Fields of the request that is asked about, as the GET of the calculation takes them, with"
            + " `request.` before each name; and further entries of lists with the index 1, 2, 3 …",
        example);
  }

  private Parameter further(String name, String description, Map<String, String> example) {
    Schema<?> schema = schemas.plain("object");
    schema.setAdditionalProperties(schemas.plain("string"));
    return parameter(name, schema, description)
        .style(Parameter.StyleEnum.FORM)
        .explode(true)
        .example(example);
  }
}
