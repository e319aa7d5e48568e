package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.footwell.Calculations;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What the build writes for a record makes and reads it as reflection does. */
@Tag("long")
class RecordAccessTest {

  /** A record that the build knows nothing of. */
  public record Unknown(String name, double size, Integer count) {}

  @TestFactory
  List<DynamicTest> everyRecordOfARequestOrResultIsWritten() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Calculation<?, ?> calculation : Calculations.all()) {
      Card<?, ?> card = calculation.card();
      tests.add(
          DynamicTest.dynamicTest(
              card.id(),
              () -> {
                written(Shape.of(card.request()).root());
                written(Shape.of(card.result()).root());
              }));
    }
    return tests;
  }

  private static void written(Node node) {
    if (node instanceof Node.Repeated list) {
      written(list.element());
    } else if (node instanceof Node.Group group) {
      assertEquals(
          RecordAccess.name(group.type()),
          group.access().getClass().getName(),
          "as the build writes it");
      group.members().values().forEach(member -> written(member.node()));
    }
  }

  @TestFactory
  List<DynamicTest> requestsAndResultsAreReadAlike() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Calculation<?, ?> calculation : Calculations.all()) {
      tests.add(DynamicTest.dynamicTest(calculation.card().id(), () -> readAlike(calculation)));
    }
    return tests;
  }

  private static void readAlike(Calculation<?, ?> calculation) throws IOException {
    for (AnsweredRequests.Answered one : new AnsweredRequests().of(calculation, 0)) {
      alike(Shape.of(one.request().getClass()).root(), one.request());
      Record result = (Record) one.answer().result();
      alike(Shape.of(result.getClass()).root(), result);
    }
  }

  /** A record and all below it, read in both ways and made again of what was read. */
  private static void alike(Node node, Object value) {
    if (value == null) {
      return;
    }
    if (node instanceof Node.Repeated list) {
      ((List<?>) value).forEach(entry -> alike(list.element(), entry));
    } else if (node instanceof Node.Group group) {
      RecordAccess reflecting = new Reflecting(group.type());
      Object[] components = new Object[group.inOrder().size()];
      for (Node.Member member : group.inOrder()) {
        components[member.read().at()] = member.of(value);
        assertEquals(reflecting.get(value, member.read().at()), components[member.read().at()]);
        if (member.isNumber()) {
          assertEquals(reflecting.number(value, member.read().at()), member.number(value));
        }
        alike(member.node(), components[member.read().at()]);
      }
      assertArrayEquals(components, group.access().all(value));
      assertEquals(reflecting.make(components), group.construct(components));
      assertThrows(
          IndexOutOfBoundsException.class, () -> group.access().get(value, components.length));
    }
  }

  @Test
  void anyOtherRecordIsReflectedUpon() {
    RecordAccess access = RecordAccess.of(Unknown.class);
    Unknown record = new Unknown("a", 2.5, null);
    assertEquals(record, access.make(new Object[] {"a", 2.5, null}));
    assertEquals("a", access.get(record, 0));
    assertEquals(2.5, access.number(record, 1));
    assertArrayEquals(new Object[] {"a", 2.5, null}, access.all(record));
  }
}
