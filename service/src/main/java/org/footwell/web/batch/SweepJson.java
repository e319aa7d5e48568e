package org.footwell.web.batch;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.footwell.analysis.Point;
import org.footwell.analysis.Sweep;
import org.footwell.calculation.Place;
import org.footwell.calculation.text.Names;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Json;
import org.footwell.web.request.Problem;
import org.footwell.web.request.Rendering;

/** The table of a sweep in JSON: as one document, or its rows alone, one a line. */
final class SweepJson implements SweepForm {

  private static final byte[] NOTHING = {};
  private static final String NO_ROWS_YET = "]}";

  private final Sweep<?, ?> sweep;
  private final boolean lines;
  private final Digits digits;
  private final List<String> inputs;
  private final List<String> outputs;

  SweepJson(Sweep<?, ?> sweep, boolean lines, Digits digits) {
    this.sweep = sweep;
    this.lines = lines;
    this.digits = digits;
    this.inputs = sweep.inputs().stream().map(Place::path).toList();
    this.outputs = sweep.outputs().stream().map(Place::path).toList();
  }

  @Override
  public byte[] head() {
    if (lines) {
      return NOTHING;
    }
    String whole = new String(Json.bytes(table(List.of())), StandardCharsets.UTF_8);
    return Rendering.utf8(whole.substring(0, whole.length() - NO_ROWS_YET.length()));
  }

  /** The table with these of its rows. */
  SweepTable table(List<SweepTable.Swept> rows) {
    return new SweepTable(
        columns(sweep.inputs()), columns(sweep.outputs()), sweep.rowCount(), rows);
  }

  private static List<SweepTable.Column> columns(List<Place> places) {
    return places.stream()
        .map(place -> new SweepTable.Column(place.path(), place.description()))
        .toList();
  }

  @Override
  public List<Part> row(long number, List<Object> values, Point point) {
    return ended(number, Part.of(bytes(row(values, point))));
  }

  /** A row that is answered. */
  SweepTable.Swept row(List<Object> values, Point point) {
    return new SweepTable.Swept(
        named(inputs, values),
        named(outputs, point.outputs()),
        point.verdict(),
        point.codes(),
        null);
  }

  @Override
  public List<Part> row(long number, List<Object> values, Problem problem) {
    Map<String, Object> given = named(inputs, values);
    return ended(
        number,
        before -> bytes(new SweepTable.Swept(given, null, null, null, before.next(problem))));
  }

  private List<Part> ended(long number, Part row) {
    if (lines) {
      return List.of(row, Part.LINE_END);
    }
    return number == 1 ? List.of(row) : List.of(Part.COMMA, row);
  }

  private static Map<String, Object> named(List<String> names, List<Object> values) {
    Map<String, Object> named = new LinkedHashMap<>();
    for (int i = 0; i < names.size(); i++) {
      Object value = values.get(i);
      if (value != null) {
        named.put(names.get(i), value instanceof Enum<?> constant ? Names.of(constant) : value);
      }
    }
    return named;
  }

  private byte[] bytes(SweepTable.Swept row) {
    return Json.bytes(row, digits);
  }

  @Override
  public byte[] tail() {
    return lines ? NOTHING : Rendering.utf8(NO_ROWS_YET);
  }
}
