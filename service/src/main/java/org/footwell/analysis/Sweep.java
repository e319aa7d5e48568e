package org.footwell.analysis;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Place;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Shape;

/**
 * A calculation asked with one input or two going through their values. A row that cannot be answered
 * says why and never stops the rest. For any number of threads.
 */
public final class Sweep<Q extends Record, R extends Record> {

  public static final String TITLE = "A table over one or two inputs";

  public static final String PURPOSE =
      "What comes of a calculation while one input or two go through their values? A table row by row,"
          + " in order and in constant memory; a row that cannot be answered says why and never stops"
          + " the rest. At most 100,000 rows.";

  /** A request about sound-level: one input in preferred numbers, the other as a list. */
  public static final String EXAMPLE =
      """
      {"request": {"driver": {"rated_ohm": 4,
         "sensitivity": {"level_db_spl": 90, "basis": "one_watt"}}},
       "inputs": [{"path": "power_w", "series": "r5", "from": 10, "to": 40},
         {"path": "distance_m", "values": [1, 2]}],
       "outputs": ["level_db_spl"]}
      """;

  /** Why there may be no table, besides what any request may be refused for. */
  public static final List<AnalysisFault> REFUSALS =
      List.of(
          AnalysisFault.UNKNOWN_INPUT,
          AnalysisFault.UNKNOWN_OUTPUT,
          AnalysisFault.NO_STANDARD_VALUE,
          AnalysisFault.TOO_MANY_POINTS,
          AnalysisFault.NAMES_NEEDED);

  /** Rows a sweep may have. */
  public static final int MOST_POINTS = 100_000;

  private final Varied<Q, R> varied;
  private final List<Values> values;

  private Sweep(Varied<Q, R> varied, List<Values> values) {
    this.varied = varied;
    this.values = values;
  }

  /**
   * Prepares a sweep.
   *
   * @throws Refused with everything that is wrong with it
   */
  public static <Q extends Record, R extends Record> Sweep<Q, R> of(
      Calculation<Q, R> subject, SweepRequest asked) {
    Faults faults = new Faults();
    List<Values> values = values(asked, faults);
    Optional<Varied<Q, R>> varied =
        Varied.of(subject, asked.request(), inputs(asked), outputs(subject, asked), faults);
    varied.ifPresent(of -> requireNumbers(asked, of.inputs(), faults));
    if (!faults.none()) {
      throw new Refused(faults);
    }
    Sweep<Q, R> sweep = new Sweep<>(varied.orElseThrow(), values);
    int last = sweep.rowCount() - 1;
    sweep.varied.refuseWhatNoneMends(
        IntStream.of(0, last / 2, last).mapToObj(row -> sweep.values(row).toArray()).toList(),
        faults);
    if (!faults.none()) {
      throw new Refused(faults);
    }
    return sweep;
  }

  private static List<Said> inputs(SweepRequest asked) {
    return IntStream.range(0, asked.inputs().size())
        .mapToObj(i -> new Said(asked.inputs().get(i).path(), "/inputs/" + i + "/path"))
        .toList();
  }

  private static List<Said> outputs(Calculation<?, ?> subject, SweepRequest asked) {
    if (asked.outputs() == null) {
      return Shape.of(subject.card().result()).singles().stream()
          .map(path -> new Said(path, "/outputs"))
          .toList();
    }
    return IntStream.range(0, asked.outputs().size())
        .mapToObj(i -> new Said(asked.outputs().get(i), "/outputs/" + i))
        .toList();
  }

  private static List<Values> values(SweepRequest asked, Faults faults) {
    List<Values> all = new ArrayList<>();
    double points = 1;
    for (int i = 0; i < asked.inputs().size(); i++) {
      Optional<Values> some = Values.of(asked.inputs().get(i), "/inputs/" + i, faults);
      some.ifPresent(all::add);
      points *= some.map(Values::count).orElse(1L);
    }
    if (points > MOST_POINTS) {
      faults
          .add(AnalysisFault.TOO_MANY_POINTS)
          .at("/inputs")
          .with("count", points)
          .limit(MOST_POINTS);
    }
    return all;
  }

  private static void requireNumbers(SweepRequest asked, List<Place> inputs, Faults faults) {
    for (int i = 0; i < inputs.size(); i++) {
      if (!inputs.get(i).isNumber() && asked.inputs().get(i).names() == null) {
        faults
            .add(AnalysisFault.NAMES_NEEDED)
            .at("/inputs/" + i)
            .given(asked.inputs().get(i).path());
      }
    }
  }

  /** What is varied, in order. */
  public List<Place> inputs() {
    return varied.inputs();
  }

  /** What is shown, in order. */
  public List<Place> outputs() {
    return varied.outputs();
  }

  public int rowCount() {
    return values.stream().mapToInt(some -> (int) some.count()).reduce(1, Math::multiplyExact);
  }

  /** The values of the inputs in a row, from 0. */
  public List<Object> values(int row) {
    if (values.size() == 1) {
      return List.of(values.get(0).each().apply(row));
    }
    int inner = (int) values.get(1).count();
    return List.of(
        values.get(0).each().apply(row / inner), values.get(1).each().apply(row % inner));
  }

  /** What the calculation comes to in a row. */
  public Point at(List<Object> values, Engine engine, Duration within) {
    return varied.at(engine, within, values.toArray());
  }
}
