package org.footwell.web.batch;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Shape;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;
import org.footwell.web.request.WebWords;

/** The header of a batch in CSV: which column fills which field, and which are appended. */
final class CsvHeader {

  /** What is appended to every row whatever figures are wanted. */
  private static final List<String> SAID_OF_EACH = List.of("verdict", "findings", "error");

  private final List<String> names;
  private final List<List<String>> paths = new ArrayList<>();
  private final List<String> figures;
  private final int[] wanted;

  /**
   * Reads a header.
   *
   * @throws ProblemException with every fault of it
   */
  CsvHeader(List<String> names, CsvForm form, Endpoint<?, ?> endpoint) {
    if (names.size() == 1 && names.get(0).contains(";") && form.separator() == ',') {
      throw ProblemException.of(ProblemType.UNREADABLE, ProblemWords.HEADER_OF_SEMICOLONS);
    }
    this.names = names;
    List<String> all = endpoint.result().cells();
    this.figures = form.columns() == null ? all : chosen(all, form.columns());
    this.wanted = figures.stream().mapToInt(all::indexOf).toArray();
    read(endpoint.request().columns());
  }

  /** How many columns the caller sends. */
  int size() {
    return names.size();
  }

  /** For each of them the path of the field it fills, or null where it passes through. */
  List<List<String>> paths() {
    return paths;
  }

  /** Which of the result's single values are appended, in order. */
  int[] wanted() {
    return wanted;
  }

  /** How many columns are appended. */
  int appendedCount() {
    return wanted.length + SAID_OF_EACH.size();
  }

  /** The columns of the answer. */
  List<String> answered() {
    return Stream.concat(names.stream(), appended()).toList();
  }

  /** The figures asked for; verdict, findings and error are never left out. */
  private static List<String> chosen(List<String> all, List<String> asked) {
    Faults faults = new Faults();
    for (String name : asked) {
      if (!all.contains(name) && !SAID_OF_EACH.contains(name)) {
        faults
            .add(CoreFault.UNKNOWN_FIELD)
            .at("/columns/" + name)
            .given(name)
            .with("nearest", Names.didYouMean(name, all));
      }
    }
    throwAny(faults);
    return asked.stream().filter(all::contains).distinct().toList();
  }

  private void read(List<Shape.Column> fields) {
    Faults faults = new Faults();
    Set<String> known = fields.stream().map(Shape.Column::path).collect(Collectors.toSet());
    Set<String> seen = new HashSet<>();
    for (String column : names) {
      String template = column.replaceAll("\\.\\d+", ".*");
      if (column.isBlank()) {
        paths.add(null);
        continue;
      }
      if (!seen.add(column)) {
        faults.add(CoreFault.DUPLICATE).at("/" + column).given(column);
      } else if (known.contains(template)) {
        paths.add(List.of(column.split("\\.", -1)));
        continue;
      }
      misspelt(column, template, known, faults);
      paths.add(null);
    }
    appended()
        .filter(seen::contains)
        .forEach(column -> faults.add(CoreFault.NAME_OF_RESULT).at("/" + column).given(column));
    for (Shape.Column field : fields) {
      if (field.required() && !seen.contains(field.path())) {
        faults
            .add(CoreFault.REQUIRED)
            .at("/" + field.path())
            .allowed(Phrase.of(WebWords.COLUMN_OF_THIS_NAME));
      }
    }
    throwAny(faults);
  }

  /** A column that is nearly the name of a field is refused: passing it through would hide it. */
  private static void misspelt(String column, String template, Set<String> known, Faults faults) {
    Names.nearest(template, known)
        .filter(near -> !near.equals(template))
        .ifPresent(
            near ->
                faults
                    .add(CoreFault.UNKNOWN_FIELD)
                    .at("/" + column)
                    .given(column)
                    .with("nearest", Names.didYouMean(template, known)));
  }

  /** Names of the columns that are appended; one that a field of the request has is told apart. */
  private Stream<String> appended() {
    Set<String> fields =
        IntStream.range(0, paths.size())
            .filter(i -> paths.get(i) != null)
            .mapToObj(names::get)
            .collect(Collectors.toSet());
    return Stream.concat(
        figures.stream().map(figure -> fields.contains(figure) ? "result." + figure : figure),
        SAID_OF_EACH.stream());
  }

  private static void throwAny(Faults faults) {
    if (!faults.none()) {
      throw ProblemException.invalid(faults);
    }
  }
}
