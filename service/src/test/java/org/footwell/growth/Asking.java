package org.footwell.growth;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.DeadlinePassed;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Refused;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.ProblemException;

/** A calculation asked as its POST asks it, from the bytes of a request to those of its answer. */
public final class Asking<Q extends Record, R extends Record> {

  /** The standard of {@code FOOTWELL_BODY_BYTES}. */
  private static final int BODY_BYTES = 1 << 20;

  private final Endpoint<Q, R> endpoint;

  private Asking(Calculation<Q, R> calculation, Duration within) {
    endpoint = new Endpoint<>(calculation, new Engine(), within);
  }

  public static <Q extends Record, R extends Record> Asking<Q, R> of(
      Calculation<Q, R> calculation, Duration within) {
    return new Asking<>(calculation, within);
  }

  public static byte[] bytes(JsonNode request) {
    return request.toString().getBytes(StandardCharsets.UTF_8);
  }

  /**
   * The bytes of its answer.
   *
   * @throws Refused if it cannot be answered
   * @throws DeadlinePassed if time ran out
   */
  public byte[] answer(byte[] request) {
    return endpoint.json(endpoint.answer(request, false, Reader.ANYONE).answer(), Digits.ALL);
  }

  /** The same of a request with recordings, read already. */
  public byte[] answerUntyped(Object request) {
    return endpoint.json(
        endpoint.answerUntyped(request, false, Reader.ANYONE).answer(), Digits.ALL);
  }

  /** Why a request is refused; nothing if it is answered, or would be with more time. */
  public Optional<String> refusal(JsonNode request) {
    byte[] bytes = bytes(request);
    if (bytes.length > BODY_BYTES) {
      return Optional.of("larger than a body may be");
    }
    try {
      answer(bytes);
      return Optional.empty();
    } catch (DeadlinePassed legal) {
      return Optional.empty();
    } catch (Refused refused) {
      Fault first = refused.faults().get(0);
      return Optional.of(first.code() + " at " + first.pointer());
    } catch (ProblemException problem) {
      return Optional.of(problem.getMessage());
    }
  }
}
