package org.footwell.web.request;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Faults;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Words;

/** Ends the handling of a request with a problem answer, in words that a translation has too. */
public final class ProblemException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final ProblemType type;
  private final transient Phrase detail;
  private final transient Faults faults;
  private final transient Map<String, String> headers = new HashMap<>();

  private ProblemException(ProblemType type, Phrase detail, Faults faults) {
    super(null, null, false, false);
    this.type = type;
    this.detail = detail;
    this.faults = faults;
  }

  public static ProblemException of(ProblemType type, Words detail) {
    return of(type, Phrase.of(detail));
  }

  public static ProblemException of(ProblemType type, Phrase detail) {
    return new ProblemException(type, detail, null);
  }

  public static ProblemException invalid(Faults faults) {
    return new ProblemException(ProblemType.INVALID, null, faults);
  }

  public static ProblemException wrongMethod(String method, List<String> allowed) {
    Phrase detail =
        Phrase.of(ProblemWords.WRONG_METHOD).own("method", method).own("allow", allowed);
    return of(ProblemType.WRONG_METHOD, detail).with("Allow", String.join(", ", allowed));
  }

  /** The same with a header that its answer carries. */
  ProblemException with(String header, String value) {
    headers.put(header, value);
    return this;
  }

  public ProblemType type() {
    return type;
  }

  /** What happened, or null where faults say it. */
  public Phrase detail() {
    return detail;
  }

  /** What is wrong with the request, or null if it could not be read at all. */
  Faults faults() {
    return faults;
  }

  /** Headers its answer carries. */
  Map<String, String> headers() {
    return headers;
  }

  /** As it reads in English. */
  @Override
  public String getMessage() {
    return detail == null ? faults.list().get(0).detail() : detail.toString();
  }
}
