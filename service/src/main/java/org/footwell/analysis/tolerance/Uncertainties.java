package org.footwell.analysis.tolerance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.analysis.Said;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Place;
import org.footwell.calculation.Run;
import org.footwell.calculation.Shape;
import org.footwell.calculation.UnknownPath;

/** The numbers of a request that have a tolerance: those named, and others of a usual one. */
final class Uncertainties {

  private static final String ASSUMING = "/usual_tolerances";

  private final Shape<?> asked;
  private final Map<String, Object> request;
  private final Record asSent;
  private final List<Tolerated> all = new ArrayList<>();

  /** For each of them which draw moves it. */
  private final List<Integer> draws = new ArrayList<>();

  /** What each draw moves is called: an input by its path, or a group. */
  private final List<String> drawn = new ArrayList<>();

  Uncertainties(ToleranceRequest q, Shape<?> asked) {
    this.asked = asked;
    this.request = q.request();
    this.asSent = asked.bind(request, false, new Faults());
    Set<String> named = new HashSet<>();
    for (int i = 0; i < q.inputs().size(); i++) {
      Tolerated input = stated(q.inputs().get(i), "/inputs/" + i + "/path");
      all.add(input);
      if (input.place() != null) {
        named.add(input.place().pointer());
      }
    }
    if (q.usualTolerances()) {
      for (String path : asked.numbers(request)) {
        UsualTolerances.of(path).ifPresent(usual -> assume(path, usual, named));
      }
    }
    Map<String, Integer> groups = new LinkedHashMap<>();
    for (Tolerated one : all) {
      draws.add(
          one.group() == null
              ? draw(one.said().path())
              : groups.computeIfAbsent(one.group(), this::draw));
    }
  }

  private int draw(String name) {
    drawn.add(name);
    return drawn.size() - 1;
  }

  private Tolerated stated(UncertainInput input, String at) {
    Place place = place(input.path());
    boolean percent = input.plusMinusPercent() != null;
    return new Tolerated(
        new Said(input.path(), at),
        place,
        number(place),
        percent ? input.plusMinusPercent() : input.plusMinus(),
        percent,
        input.distribution(),
        input.group(),
        null);
  }

  /** Where nothing is to be said against it: it was not asked for by name. */
  private void assume(String path, UsualTolerances.Usual usual, Set<String> named) {
    Place place = place(path);
    Tolerated one =
        new Tolerated(
            new Said(path, ASSUMING),
            place,
            number(place),
            usual.plusMinus(),
            usual.percent(),
            usual.distribution(),
            null,
            usual.source());
    if (place != null
        && !named.contains(place.pointer())
        && one.number() instanceof Double
        && one.around() > 0) {
      all.add(one);
    }
  }

  private Place place(String path) {
    try {
      return asked.place(path, request);
    } catch (UnknownPath toldWithTheOthers) {
      return null;
    }
  }

  private Object number(Place place) {
    return place == null || asSent == null ? null : place.of(asSent);
  }

  /**
   * Refuses what can have no tolerance, or no percentage of it.
   *
   * @return whether all of them are numbers that are stated
   */
  boolean require(Run run) {
    if (all.isEmpty()) {
      run.refuse(ToleranceFault.NOTHING_UNCERTAIN)
          .at("/inputs")
          .field("inputs", "inputs")
          .field("usual", "usual_tolerances");
    }
    all.forEach(one -> require(one, run));
    return all.stream().allMatch(one -> one.number() instanceof Double);
  }

  private static void require(Tolerated one, Run run) {
    if (one.place() == null) {
      return;
    }
    String at = one.said().at();
    String path = one.said().path();
    if (!one.place().isFractional()) {
      run.refuse(ToleranceFault.HAS_NO_TOLERANCE).at(at).given(path);
    } else if (one.number() == null) {
      run.refuse(ToleranceFault.NOT_STATED).at(at).given(path);
    } else if (one.around() == 0) {
      run.refuse(ToleranceFault.PERCENT_OF_ZERO).at(at).given(path).field("other", "plus_minus");
    }
  }

  List<Tolerated> all() {
    return all;
  }

  /** Paths to all of them. */
  List<Said> said() {
    return all.stream().map(Tolerated::said).toList();
  }

  /** What moves on its own: inputs by their paths, and groups. */
  List<String> drawn() {
    return drawn;
  }

  /** The numbers as they are stated. */
  double[] stated() {
    return all.stream().mapToDouble(one -> (Double) one.number()).toArray();
  }

  /** The numbers where each draw came to a share; any of them above 0 and below 1. */
  double[] at(Shares shares) {
    double[] values = new double[all.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = all.get(i).at(shares.of(draws.get(i)));
    }
    return values;
  }

  /** What each draw came to. */
  interface Shares {
    double of(int draw);
  }
}
