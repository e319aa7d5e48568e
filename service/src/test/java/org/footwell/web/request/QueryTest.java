package org.footwell.web.request;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.footwell.calculation.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QueryTest {

  private static Query read(String raw) {
    return Query.of(raw, Query.optionsWith(List.of("json", "text", "csv", "xml")));
  }

  private static List<String> faults(Executable reading) {
    return assertThrows(ProblemException.class, reading).faults().list().stream()
        .map(Fault::pointer)
        .toList();
  }

  @Test
  void noQueryIsAnEmptyOne() {
    assertEquals(Map.of(), read(null).tree());
    assertEquals(Map.of(), read("").tree());
    assertEquals(Map.of(), read("&&").tree());
  }

  @Test
  void dottedNamesBecomeATree() {
    assertEquals(
        Map.of(
            "coils",
            Map.of("0", Map.of("rated_ohm", "4"), "1", Map.of("rated_ohm", "2")),
            "a",
            "b"),
        read("coils.0.rated_ohm=4&coils.1.rated_ohm=2&a=b").tree());
  }

  @Test
  void aStarInPlaceOfTheIndexIsAColumn() {
    assertEquals(
        read("coils.0.rated_ohm=4&coils.0.cable.mm2=1&coils.1.rated_ohm=2&coils.2.cable.mm2=3")
            .tree(),
        read("coils.*.rated_ohm=4,2&coils.*.cable.mm2=1,,3").tree());
    assertEquals(Map.of("a", Map.of("0", "x", "1", "y")), read("a.*=x,y,").tree());
  }

  @Test
  void aCommaOfAColumnIsEncodedAndOneOfAValueMayStand() {
    assertEquals(Map.of("a", Map.of("0", "x,y", "1", "z")), read("a.*=x%2Cy,z").tree());
    assertEquals(Map.of("a", "x,y"), read("a=x,y").tree());
  }

  @Test
  void anEntryOfAColumnThatIsGivenBesidesIsADuplicate() {
    assertEquals(List.of("/a/1/b"), faults(() -> read("a.1.b=2&a.*.b=1,2")));
  }

  @Test
  void twoStarsAreNoColumn() {
    assertEquals(
        Map.of("a", Map.of("*", Map.of("b", Map.of("*", "1,2")))), read("a.*.b.*=1,2").tree());
  }

  @Test
  void namesAndValuesAreDecoded() {
    assertEquals(Map.of("a b", "c+d é|="), read("a+b=c%2Bd%20%C3%A9|%3D").tree());
  }

  @Test
  void onlyTheFirstEqualsSignSeparates() {
    assertEquals(Map.of("a", "b=c"), read("a=b=c").tree());
  }

  @Test
  void aNameWithoutAValueIsEmpty() {
    assertEquals(Map.of("a", "", "b", ""), read("a&b=").tree());
  }

  @Test
  void optionsAreNoFields() {
    Query query = read("format=text&field=a.b&errors=text&workings=true&x=1");
    assertEquals(Map.of("x", "1"), query.tree());
    assertEquals("text", query.option("format"));
    assertEquals("a.b", query.option("field"));
    assertTrue(query.workings());
    assertFalse(read("workings=false").workings());
    assertNull(read("x=1").option("format"));
  }

  @Test
  void everyFaultOfTheOptionsIsTold() {
    assertEquals(
        List.of("/x", "/format", "/workings"), faults(() -> read("x=1&x=2&workings=1&format=pdf")));
  }

  @Test
  void aValueAndAGroupOfOneNameAreRefusedInEitherOrder() {
    assertEquals(List.of("/a/b"), faults(() -> read("a=1&a.b=2").tree()));
    assertEquals(List.of("/a"), faults(() -> read("a.b=2&a=1").tree()));
  }

  @Test
  void fieldsOfAPostAreRefused() {
    assertEquals(List.of("/x"), faults(() -> read("x=1&format=xml").requireNoFields()));
    read("format=xml").requireNoFields();
  }

  @Test
  void aBatchHasOptionsOfItsOwn() {
    Query query = Query.ofBatch("separator=semicolon");
    assertEquals("semicolon", query.option("separator"));
    query.requireNoFields();
    assertEquals(List.of("/separator"), faults(() -> Query.ofBatch("separator=tab")));
    assertEquals(List.of("/format"), faults(() -> Query.ofBatch("format=csv").requireNoFields()));
  }

  @Test
  void aSingleValueIsTextOnly() {
    assertEquals(List.of("/format"), faults(() -> read("field=a&format=json")));
    assertEquals("text", read("field=a&format=text").option("format"));
    assertEquals(List.of("/field"), faults(() -> read("field=")));
  }

  @Test
  void aThousandParametersAreTheMost() {
    StringBuilder query = new StringBuilder("a0=1");
    for (int i = 1; i < 1_000; i++) {
      query.append("&a").append(i).append("=1");
    }
    assertEquals(1_000, read(query.toString()).tree().size());
    assertThrows(ProblemException.class, () -> read(query + "&b=1"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"errors=text", "a=1&errors=text", "errors=text&a=%zz", "a&errors=text&b"})
  void errorsAsTextAreSeenInAnyPlace(String raw) {
    assertTrue(Query.asksForTextErrors(raw));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "errors=texts", "xerrors=text", "errors=problem", "errors", "ERRORS=text"})
  void errorsAsTextAreNotSeenInWhatIsLike(String raw) {
    assertFalse(Query.asksForTextErrors(raw));
    assertFalse(Query.asksForTextErrors(null));
  }
}
