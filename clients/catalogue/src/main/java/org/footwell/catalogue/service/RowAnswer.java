package org.footwell.catalogue.service;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import java.util.List;
import org.footwell.catalogue.row.Level;
import org.footwell.catalogue.row.Remark;
import org.footwell.client.model.Fault;
import org.footwell.client.model.Finding;

/**
 * What the service says of one row: findings, or the problem with it. The figures of the result are
 * passed over; a catalogue check has no use for them.
 */
@JsonIgnoreProperties(ignoreUnknown = true)
record RowAnswer(
    List<Finding> findings,
    List<String> safety,
    String type,
    Integer status,
    String detail,
    List<Fault> errors) {

  private static final int SERVER_FAULT = 500;

  /** Whether the service failed on the row: no fault of the row's. */
  boolean failed() {
    return status != null && status >= SERVER_FAULT;
  }

  boolean recognised() {
    return findings != null || (status != null && type != null && detail != null);
  }

  List<Remark> remarks() {
    if (findings != null) {
      return findings.stream().map(RowAnswer::remark).toList();
    }
    if (errors == null || errors.isEmpty()) {
      return List.of(Remark.refusal(type.substring(type.lastIndexOf('/') + 1), "", detail));
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
        finding.getText());
  }

  /** {@code /sensitivity/basis} becomes {@code sensitivity.basis}. */
  private static String dotted(String pointer) {
    return pointer.replaceFirst("^/", "").replace('/', '.');
  }
}
