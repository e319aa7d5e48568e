package org.footwell;

import java.util.List;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;

/** A request that a test puts together step by step, and what its calculation says to it. */
public abstract class RequestUnderTest<Q extends Record, R extends Record> {

  private final Calculation<Q, R> calculation;

  protected RequestUnderTest(Calculation<Q, R> calculation) {
    this.calculation = calculation;
  }

  /** The request as it stands. */
  public abstract Q request();

  public final Answer<R> answer() {
    return Answers.of(calculation, request());
  }

  public final R result() {
    return answer().result();
  }

  /** Codes of the findings, worst first. */
  public final List<String> codes() {
    return Answers.codes(answer());
  }

  /** The findings of a code. */
  public final List<Finding> findings(String code) {
    return answer().findings().stream().filter(finding -> finding.code().equals(code)).toList();
  }

  /** The faults of a request that must be refused. */
  public final List<Fault> refusals() {
    return Answers.faults(calculation, request());
  }

  /** Every fault as its pointer and code. */
  public final List<String> faults() {
    return refusals().stream().map(fault -> fault.pointer() + " " + fault.code()).toList();
  }
}
