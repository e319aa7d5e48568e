package org.footwell.web.request;

import java.util.List;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Faults;

/** Ends the handling of a request with a problem answer. */
public final class ProblemException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final ProblemType type;
  private final transient List<Fault> errors;
  private final String allow;

  private ProblemException(ProblemType type, String detail, List<Fault> errors, String allow) {
    super(detail, null, false, false);
    this.type = type;
    this.errors = errors;
    this.allow = allow;
  }

  public static ProblemException of(ProblemType type, String detail) {
    return new ProblemException(type, detail, null, null);
  }

  public static ProblemException invalid(List<Fault> errors) {
    return new ProblemException(ProblemType.INVALID, invalidDetail(errors), errors, null);
  }

  public static ProblemException wrongMethod(String method, String allow) {
    return new ProblemException(
        ProblemType.WRONG_METHOD, method + " is not allowed here; use " + allow + ".", null, allow);
  }

  static String invalidDetail(List<Fault> errors) {
    if (errors.size() == 1) {
      return errors.get(0).detail();
    }
    String count = (errors.size() >= Faults.MOST ? "At least " : "") + errors.size();
    return count + " faults; the first: " + errors.get(0).detail();
  }

  public ProblemType type() {
    return type;
  }

  List<Fault> errors() {
    return errors;
  }

  String allow() {
    return allow;
  }
}
