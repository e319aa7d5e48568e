package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.footwell.analysis.Point;
import org.footwell.analysis.Sweep;
import org.footwell.analysis.SweepRequest;
import org.footwell.analysis.Varied;
import org.footwell.analysis.registry.Analysis;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Brief;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Document;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Shape;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;

/** A calculation with everything prepared that a request to it needs. */
public final class Endpoint<Q extends Record, R extends Record> {

  private final Calculation<Q, R> calculation;
  private final Engine engine;
  private final Duration deadline;
  private final Shape<Q> request;

  /** Of the request that stands within its own, or null. */
  private final Shape<?> within;

  private final Shape<R> result;
  private final Formats<Q, R> formats;
  private final Map<String, List<String>> options;
  private final Map<String, List<String>> optionsOfDocument;

  public Endpoint(Calculation<Q, R> calculation, Engine engine, Duration deadline) {
    this(calculation, null, engine, deadline);
  }

  private Endpoint(
      Calculation<Q, R> calculation, Shape<?> within, Engine engine, Duration deadline) {
    Card<Q, R> card = calculation.card();
    this.calculation = calculation;
    this.engine = engine;
    this.deadline = deadline;
    this.request = Shape.of(card.request());
    this.within = within;
    this.result = Shape.of(card.result());
    this.formats = new Formats<>(card);
    this.options = Query.optionsWith(formats.names());
    this.optionsOfDocument = Query.withPlace(options);
  }

  public Card<Q, R> card() {
    return calculation.card();
  }

  public Shape<Q> request() {
    return request;
  }

  /** Whether its request can be a query or a CSV row. */
  public boolean flat() {
    return request.flat() && (within == null || within.flat());
  }

  public Shape<R> result() {
    return result;
  }

  public Formats<Q, R> formats() {
    return formats;
  }

  /** Options a query to it may carry, with their values. */
  public Map<String, List<String>> options() {
    return options;
  }

  /** The same where it is put to a document. */
  public Map<String, List<String>> optionsOfDocument() {
    return optionsOfDocument;
  }

  /**
   * Answers a request in JSON.
   *
   * @throws ProblemException if it is not well-formed JSON
   * @throws org.footwell.calculation.Refused if it cannot be answered
   */
  public Answered<Q, R> answer(byte[] json, boolean workings, Reader reader) {
    // A request within the request has no type here, and its money would not stay exact.
    return request.holdsRequest()
        ? answerUntyped(untyped(json), workings, reader)
        : answer(
            read(json, request, untyped -> engine.bind(calculation, untyped, false)),
            workings,
            reader);
  }

  /** Answers a request made of maps, lists and texts, as a query or a CSV row gives it. */
  public Answered<Q, R> answerCells(Map<String, Object> cells, boolean workings, Reader reader) {
    return answer(bind(within == null ? cells : withRequest(cells)), workings, reader);
  }

  /** With the request among the cells as JSON would give it; where nothing of it is given, an empty one. */
  private Map<String, Object> withRequest(Map<String, Object> cells) {
    Map<String, Object> all = new LinkedHashMap<>(cells);
    String name = Varied.REQUEST.substring(1);
    all.put(name, within.typed(cells.getOrDefault(name, Map.of())));
    return all;
  }

  /** Answers a request without the sentences. */
  public Brief brief(Q request) {
    return engine.brief(calculation, request, deadline);
  }

  /** The request of cells. */
  public Q bind(Object cells) {
    return engine.bind(calculation, cells, true);
  }

  /** Answers a request made of maps, lists, texts, numbers and series. */
  public Answered<Q, R> answerUntyped(Object untyped, boolean workings, Reader reader) {
    return answer(engine.bind(calculation, untyped, false), workings, reader);
  }

  /**
   * Prepares to sweep it.
   *
   * @throws ProblemException if it is not well-formed JSON
   * @throws org.footwell.calculation.Refused with everything that is wrong with it
   */
  public Sweep<Q, R> sweep(byte[] json) {
    return Sweep.of(calculation, engine.checked(SweepRequest.class, untyped(json)));
  }

  /** What it comes to with these inputs of a sweep. */
  public Point point(Sweep<Q, R> sweep, List<Object> inputs) {
    return sweep.at(inputs, engine, deadline);
  }

  /** An analysis of it, with everything prepared. */
  Endpoint<?, ?> of(Analysis analysis) {
    return new Endpoint<>(analysis.of(calculation), request, engine, deadline);
  }

  /** How places are written that it can be about in a document; none if it cannot be put to it. */
  public List<String> places(Document<?> kind) {
    return kind.places(calculation);
  }

  /**
   * Puts it to a document in JSON.
   *
   * @param about the place it is about, or null
   * @throws ProblemException if it is not well-formed JSON
   * @throws org.footwell.calculation.Refused if it cannot be answered from that
   */
  public <D extends Record> Answered<Q, R> answerOf(
      Document<D> kind, byte[] json, String about, boolean workings, Reader reader) {
    D document = read(json, Shape.of(kind.type()), untyped -> engine.bind(kind, untyped));
    String place = about == null ? "" : about;
    Answer<R> answer =
        engine.answer(calculation, kind, document, place, workings, deadline, reader);
    return new Answered<>(card().request().cast(answer.request()), answer);
  }

  private Answered<Q, R> answer(Q request, boolean workings, Reader reader) {
    return new Answered<>(request, engine.answer(calculation, request, workings, deadline, reader));
  }

  /**
   * Reads JSON straight, and once more without a type where that fails: so malformed JSON is told from
   * faulty, and every fault is found.
   */
  private static <T extends Record> T read(
      byte[] json, Shape<T> shape, Function<Object, T> untyped) {
    try {
      T record = JsonTokens.read(shape, json);
      return record != null ? record : untyped.apply(untyped(json));
    } catch (JsonProcessingException | NumberFormatException notAsExpected) {
      return untyped.apply(untyped(json));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * JSON as maps, lists, texts, numbers and truth values.
   *
   * @throws ProblemException if it is not well-formed, or nothing
   */
  public static Object untyped(byte[] json) {
    try (UntypedJson reader = new UntypedJson(json)) {
      if (!reader.begins()) {
        throw ProblemException.of(ProblemType.UNREADABLE, ProblemWords.EMPTY);
      }
      Object untyped = reader.whole();
      if (untyped == null) {
        throw ProblemException.of(ProblemType.UNREADABLE, ProblemWords.NULL);
      }
      return untyped;
    } catch (JsonProcessingException malformed) {
      throw ProblemException.of(ProblemType.UNREADABLE, malformed(malformed));
    } catch (NumberFormatException exponentTooLarge) {
      throw beyondLimits();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Of JSON with a number whose exponent no number can have; the parser throws that past its own failures. */
  public static ProblemException beyondLimits() {
    return ProblemException.of(
        ProblemType.UNREADABLE,
        Phrase.of(ProblemWords.BEYOND_LIMITS).with("place", Phrase.nothing()));
  }

  /** What is wrong with JSON, and where. */
  public static Phrase malformed(JsonProcessingException malformed) {
    return Phrase.of(what(malformed)).with("place", place(malformed.getLocation()));
  }

  private static ProblemWords what(JsonProcessingException malformed) {
    if (malformed instanceof StreamConstraintsException) {
      return ProblemWords.BEYOND_LIMITS;
    }
    if (malformed.getOriginalMessage().startsWith("Duplicate")) {
      return ProblemWords.FIELD_TWICE;
    }
    if (malformed instanceof JsonEOFException) {
      return ProblemWords.ENDS_EARLY;
    }
    return malformed instanceof JsonParseException
        ? ProblemWords.MALFORMED
        : ProblemWords.MORE_THAN_ONE_VALUE;
  }

  private static Phrase place(JsonLocation place) {
    if (place == null) {
      return Phrase.nothing();
    }
    // A row of a batch has a line of its own in the file, and is one line.
    return place.getLineNr() == 1
        ? Phrase.of(ProblemWords.AT_COLUMN).with("column", place.getColumnNr())
        : Phrase.of(ProblemWords.AT_LINE_AND_COLUMN)
            .with("line", place.getLineNr())
            .with("column", place.getColumnNr());
  }

  /** Answers the example, for nobody: most of what any answer takes is there then. */
  public void rehearse() {
    byte[] example = card().example().getBytes(StandardCharsets.UTF_8);
    json(answer(example, false, Reader.ANYONE).answer(), Digits.ALL);
  }

  public byte[] json(Answer<R> answer, Digits digits) {
    return Json.bytes(answer, digits);
  }
}
