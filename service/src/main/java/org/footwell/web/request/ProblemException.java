package org.footwell.web.request;

import java.util.List;
import org.footwell.calculation.Faults;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Words;

/** Ends the handling of a request with a problem answer, in words that a translation has too. */
public final class ProblemException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final ProblemType type;
  private final transient Phrase detail;
  private final transient Faults faults;
  private final String allow;

  private ProblemException(ProblemType type, Phrase detail, Faults faults, String allow) {
    super(null, null, false, false);
    this.type = type;
    this.detail = detail;
    this.faults = faults;
    this.allow = allow;
  }

  public static ProblemException of(ProblemType type, Words detail) {
    return of(type, Phrase.of(detail));
  }

  public static ProblemException of(ProblemType type, Phrase detail) {
    return new ProblemException(type, detail, null, null);
  }

  public static ProblemException invalid(Faults faults) {
    return new ProblemException(ProblemType.INVALID, null, faults, null);
  }

  public static ProblemException wrongMethod(String method, List<String> allowed) {
    Phrase detail =
        Phrase.of(ProblemWords.WRONG_METHOD).own("method", method).own("allow", allowed);
    return new ProblemException(ProblemType.WRONG_METHOD, detail, null, String.join(", ", allowed));
  }

  public ProblemType type() {
    return type;
  }

  /** What happened, or null where faults say it. */
  Phrase detail() {
    return detail;
  }

  /** What is wrong with the request, or null if it could not be read at all. */
  Faults faults() {
    return faults;
  }

  String allow() {
    return allow;
  }

  /** As it reads in English. */
  @Override
  public String getMessage() {
    return detail == null ? faults.list().get(0).detail() : detail.toString();
  }
}
