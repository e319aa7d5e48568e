package org.footwell.web.request;

import org.footwell.calculation.Faults;

/** Ends the handling of a request with a problem answer. */
public final class ProblemException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final ProblemType type;
  private final transient Faults faults;
  private final String allow;

  private ProblemException(ProblemType type, String detail, Faults faults, String allow) {
    super(detail, null, false, false);
    this.type = type;
    this.faults = faults;
    this.allow = allow;
  }

  public static ProblemException of(ProblemType type, String detail) {
    return new ProblemException(type, detail, null, null);
  }

  public static ProblemException invalid(Faults faults) {
    return new ProblemException(ProblemType.INVALID, "invalid", faults, null);
  }

  public static ProblemException wrongMethod(String method, String allow) {
    return new ProblemException(
        ProblemType.WRONG_METHOD, method + " is not allowed here; use " + allow + ".", null, allow);
  }

  public ProblemType type() {
    return type;
  }

  /** What is wrong with the request, or null if it could not be read at all. */
  Faults faults() {
    return faults;
  }

  String allow() {
    return allow;
  }
}
