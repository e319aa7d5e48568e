package org.footwell.fuzz;

import java.util.List;
import org.footwell.calculation.DeadlinePassed;
import org.footwell.calculation.Refused;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Json;
import org.footwell.web.request.Problem;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.Problems;

/** What a reader may answer instead of a value. */
public final class Refusals {

  private static final List<Reader> READERS =
      Reader.languages().stream().flatMap(code -> Reader.in(code).stream()).toList();

  private Refusals() {}

  /** Something that reads. */
  public interface Reading<T> {
    T value() throws Exception;
  }

  /**
   * What it comes to, or null where it is refused as callers are told, in whole sentences of every
   * language.
   */
  public static <T> T orNull(Reading<T> reading) throws Exception {
    try {
      return reading.value();
    } catch (Refused | ProblemException | DeadlinePassed refused) {
      for (Reader reader : READERS) {
        Problem problem = Problems.of(refused, null, reader);
        require(problem.status() != 500, "a refusal is no failure of the service");
        require(!problem.sentence().isBlank(), "a refusal says why");
        require(Json.bytes(problem).length > 0, "a refusal can be sent");
      }
      return null;
    }
  }

  /** Fails where something does not hold. */
  public static void require(boolean holds, String what) {
    if (!holds) {
      throw new AssertionError(what);
    }
  }

  /** Fails where two are not alike. */
  public static void requireEqual(Object expected, Object found, String what) {
    if (!expected.equals(found)) {
      throw new AssertionError(what + ": " + expected + " became " + found);
    }
  }
}
