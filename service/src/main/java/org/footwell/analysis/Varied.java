package org.footwell.analysis;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Outcome;
import org.footwell.calculation.Place;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Run;
import org.footwell.calculation.Shape;
import org.footwell.calculation.UnknownPath;
import org.footwell.calculation.Variations;
import org.footwell.calculation.text.CoreWords;
import org.footwell.calculation.text.Phrase;

/**
 * A calculation that can be asked again and again with some values of its request varied. What it
 * comes to is that of the request as it would be sent with these values, without any sentence. For any
 * number of threads.
 */
public final class Varied<Q extends Record, R extends Record> {

  /** Where the request that is varied stands in the request of an analysis. */
  public static final String REQUEST = "/request";

  private final Calculation<Q, R> subject;
  private final List<Place> inputs;
  private final List<Place> outputs;
  private final Variations<Q> variations;
  private final Q asSent;

  private Varied(
      Calculation<Q, R> subject,
      List<Place> inputs,
      List<Place> outputs,
      Variations<Q> variations,
      Q asSent) {
    this.subject = subject;
    this.inputs = inputs;
    this.outputs = outputs;
    this.variations = variations;
    this.asSent = asSent;
  }

  /**
   * Prepares a calculation.
   *
   * @param request as it was sent, what is varied in it or not
   * @param faults takes every path that leads nowhere and every fault of form in what is not varied
   * @return empty if there is any
   */
  public static <Q extends Record, R extends Record> Optional<Varied<Q, R>> of(
      Calculation<Q, R> subject,
      Map<?, ?> request,
      List<Said> inputs,
      List<Said> outputs,
      Faults faults) {
    Shape<Q> asked = Shape.of(subject.card().request());
    Shape<R> answered = Shape.of(subject.card().result());
    Faults own = new Faults();
    List<Place> in =
        places(inputs, path -> asked.place(path, request), AnalysisFault.UNKNOWN_INPUT, own);
    List<Place> out = places(outputs, answered::place, AnalysisFault.UNKNOWN_OUTPUT, own);
    Faults ofRequest = Faults.below(REQUEST);
    Variations<Q> variations = asked.variations(request, in, ofRequest);
    own.addAll(ofRequest);
    faults.addAll(own);
    return own.none()
        ? Optional.of(
            new Varied<>(subject, in, out, variations, asked.bind(request, false, new Faults())))
        : Optional.empty();
  }

  /** How a path is looked up. */
  private interface Lookup {
    Place of(String path) throws UnknownPath;
  }

  private static List<Place> places(
      List<Said> said, Lookup lookup, AnalysisFault unknown, Faults faults) {
    List<Place> places = new ArrayList<>();
    Set<String> known = new HashSet<>();
    for (Said one : said) {
      try {
        Place place = lookup.of(one.path());
        places.add(place);
        if (!known.add(place.pointer())) {
          faults.add(CoreFault.DUPLICATE).at(one.at()).given(one.path());
        }
      } catch (UnknownPath nowhere) {
        faults
            .add(unknown)
            .at(one.at())
            .given(one.path())
            .with("nearest", nowhere.nearest().map(Varied::didYouMean).orElse(Phrase.nothing()));
      }
    }
    return places;
  }

  private static Phrase didYouMean(String path) {
    return Phrase.of(CoreWords.DID_YOU_MEAN).own("name", path);
  }

  /** Adds what is wrong with the request whichever of some values are put in, each set in order. */
  public void refuseWhatNoneMends(List<Object[]> some, Faults faults) {
    Faults ofRequest = Faults.below(REQUEST);
    variations.refuseWhatNoneMends(some, ofRequest);
    faults.addAll(ofRequest);
  }

  public Calculation<Q, R> subject() {
    return subject;
  }

  /** What is varied, in order. */
  public List<Place> inputs() {
    return inputs;
  }

  /** What is asked for, in order. */
  public List<Place> outputs() {
    return outputs;
  }

  /** The value of an input in the request as it was sent, its default included; null if none. */
  public Object sent(int input) {
    return inputs.get(input).of(asSent);
  }

  /**
   * The request with these values, one for each input: numbers, or texts as they stand in a query.
   *
   * @throws Refused if they are not of its form
   */
  public Q request(Object... values) {
    return variations.with(values);
  }

  /** What it comes to with these values, as part of an analysis and within its time. */
  public Point at(Run analysis, double... values) {
    return point(request -> analysis.aside(subject, request), boxed(values));
  }

  /** The same on its own. */
  public Point at(Engine engine, Duration within, Object... values) {
    return point(request -> engine.outcome(subject, request, within), values);
  }

  private Point point(Function<Q, Outcome<R>> answer, Object... values) {
    try {
      return Point.of(answer.apply(request(values)), outputs);
    } catch (Refused refused) {
      return Point.of(refused);
    }
  }

  /** Numbers as the values of a request. */
  public static Object[] boxed(double... values) {
    Object[] boxed = new Object[values.length];
    for (int i = 0; i < values.length; i++) {
      boxed[i] = values[i];
    }
    return boxed;
  }
}
