package org.footwell.catalogue.service;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import java.util.List;
import org.footwell.catalogue.row.Level;
import org.footwell.catalogue.row.Remark;
import org.footwell.client.model.Fault;
import org.footwell.client.model.Finding;

/**
 * What the service says of one row: findings, or the problem with it. The figures of the result are
 * passed over; a catalogue check has no use for them. A problem says in which line of the request it
 * is.
 */
@JsonIgnoreProperties(ignoreUnknown = true)
record RowAnswer(
    Result result,
    List<Finding> findings,
    List<String> safety,
    String type,
    String title,
    Integer status,
    String detail,
    Long line,
    List<Fault> errors) {

  /**
   * What is read of the result.
   *
   * @param part what the row was called on its way
   */
  @JsonIgnoreProperties(ignoreUnknown = true)
  record Result(String part) {}

  private static final int SERVER_FAULT = 500;

  /** Whether the service failed on the row: no fault of the row's. */
  boolean failed() {
    return status != null && status >= SERVER_FAULT;
  }

  boolean recognised() {
    return findings != null || (status != null && type != null && sentence() != null);
  }

  /**
   * Whether it is the answer to a row.
   *
   * @param index of the row among those that were sent
   * @param inFile line of the catalogue, by which the row was called
   */
  boolean isOf(int index, long inFile) {
    return findings == null
        ? line != null && line == index + 1
        : result != null && Long.toString(inFile).equals(result.part());
  }

  /** What a problem says; its detail may be absent. */
  String sentence() {
    return detail == null ? title : detail;
  }

  List<Remark> remarks() {
    if (findings != null) {
      return findings.stream().map(RowAnswer::remark).toList();
    }
    if (errors == null || errors.isEmpty()) {
      return List.of(Remark.refusal(type.substring(type.lastIndexOf('/') + 1), "", sentence()));
    }
    return errors.stream()
        .map(
            fault -> Remark.refusal(fault.getCode(), dotted(fault.getPointer()), fault.getDetail()))
        .toList();
  }

  private static Remark remark(Finding finding) {
    return new Remark(
        Level.of(finding.getLevel()),
        finding.getCode(),
        dotted(finding.getPointer()),
        inFull(finding));
  }

  /** What was found and what to do about it. */
  private static String inFull(Finding finding) {
    String advice = finding.getAdvice();
    return advice == null ? finding.getText() : finding.getText() + " " + advice;
  }

  /** {@code /sensitivity/basis} becomes {@code sensitivity.basis}. */
  private static String dotted(String pointer) {
    return pointer.replaceFirst("^/", "").replace('/', '.');
  }
}
