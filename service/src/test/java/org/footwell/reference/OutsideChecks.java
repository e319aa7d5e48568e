package org.footwell.reference;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The outside checks of one topic: one test per row, and a line each in docs/validation.md. */
public abstract class OutsideChecks {

  public abstract List<OutsideCheck> checks();

  @TestFactory
  Stream<DynamicTest> everyRowAgreesWithItsSource() {
    return checks().stream()
        .flatMap(
            check ->
                ReferenceTable.load(check.table()).rows().stream()
                    .filter(check.rows())
                    .map(
                        row ->
                            dynamicTest(
                                check.calculation() + " " + check.quantity() + " " + row,
                                () -> agree(check, row))));
  }

  private static void agree(OutsideCheck check, ReferenceTable.Row row) {
    double deviation = check.deviation(row);
    assertTrue(
        deviation <= check.tolerance(),
        () -> "off by " + deviation + ", allowed " + check.tolerance());
  }
}
