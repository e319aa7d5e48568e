package org.footwell.reference;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.Constructor;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The outside checks of one topic: one test per row, and a line each in docs/validation.md. */
public abstract class OutsideChecks {

  public abstract List<OutsideCheck> checks();

  /** The checks of all topics, by calculation, quantity and table. */
  static List<OutsideCheck> all() {
    return new ClassFileImporter()
        .importPackages("org.footwell").stream()
            .filter(type -> type.isAssignableTo(OutsideChecks.class))
            .filter(type -> !type.getModifiers().contains(JavaModifier.ABSTRACT))
            .map(OutsideChecks::make)
            .flatMap(checks -> checks.checks().stream())
            .sorted(
                Comparator.comparing(OutsideCheck::calculation)
                    .thenComparing(OutsideCheck::quantity)
                    .thenComparing(OutsideCheck::table))
            .toList();
  }

  private static OutsideChecks make(JavaClass type) {
    try {
      Constructor<?> constructor = type.reflect().getDeclaredConstructor();
      constructor.setAccessible(true);
      return (OutsideChecks) constructor.newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

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
