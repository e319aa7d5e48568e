package org.footwell.web;

import static java.util.stream.Collectors.toCollection;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.calculation.Card;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Shape;
import org.footwell.calculation.text.Coded;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every code that a card declares is brought by a request, one file a code. */
@ExtendWith(RunningServer.class)
@Tag("long")
class DrivenCodesTest {

  /** Only a calculation that forgot a bound brings it; a made-up one does in EngineTest. */
  private static final Coded GUARD = CoreFault.NOT_FINITE;

  /** Of what is asked of a whole plan, the packages whose codes are driven there. */
  private static final Map<String, Set<String>> OWN =
      Map.of(
          "plan-review",
          Set.of("org.footwell.vehicle", "org.footwell.vehicle.reading", "org.footwell.parts.plan"),
          "fault-finder",
          Set.of("org.footwell.vehicle.faults"),
          "plan-repair",
          Set.of("org.footwell.vehicle.repair"));

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\w+}");

  /** The declared codes by their names. */
  private static final Map<String, Map<String, Coded>> CARDS = new LinkedHashMap<>();

  private static final Map<String, Coded> CORE = byName(Stream.of(CoreFault.values()));

  static {
    for (Card<?, ?> card : cards()) {
      CARDS.put(card.id(), byName(codes(card)));
    }
  }

  private static List<? extends Card<?, ?>> cards() {
    return Calculations.all().stream().map(calculation -> calculation.card()).toList();
  }

  private static Stream<Coded> codes(Card<?, ?> card) {
    return Stream.concat(card.findings().stream(), card.refusals().stream());
  }

  private static Map<String, Coded> byName(Stream<? extends Coded> codes) {
    Map<String, Coded> byName = new TreeMap<>();
    codes.forEach(code -> byName.put(code.code(), code));
    return byName;
  }

  /** What is asked of a whole plan declares what it composes too, which is driven where it is computed. */
  private static boolean itsOwn(String calculation, Coded code) {
    return !OWN.containsKey(calculation)
        || OWN.get(calculation).contains(code.getClass().getPackageName());
  }

  static Stream<CodeRequest> requests() throws Exception {
    return CodeRequest.all();
  }

  @Test
  void everyCodeHasItsRequestAndEveryRequestItsCode() throws Exception {
    Set<String> declared = new TreeSet<>();
    CARDS.forEach(
        (id, codes) ->
            codes.values().stream()
                .filter(code -> itsOwn(id, code))
                .forEach(code -> declared.add(id + " " + code.code())));
    CORE.values().stream().filter(code -> code != GUARD).forEach(c -> declared.add(c.code()));
    Set<String> driven =
        requests()
            .map(request -> request.ofCore() ? request.code() : request.toString())
            .collect(toCollection(TreeSet::new));
    assertEquals(String.join("\n", declared), String.join("\n", driven));
  }

  @ParameterizedTest
  @MethodSource("requests")
  void aRequestBringsItsCode(CodeRequest request) throws IOException, InterruptedException {
    CodeRequest.Reply reply = request.post();
    String answer = reply.body().toString();
    Map<String, Coded> declared = CARDS.get(request.calculation());
    Coded code = (request.ofCore() ? CORE : declared).get(request.code());
    boolean answered = code instanceof FindingCode;
    assertEquals(answered ? 200 : 422, reply.status(), answer);
    JsonNode said = reply.body().get(answered ? "findings" : "errors");
    assertTrue(said.findValuesAsText("code").contains(request.code()), answer);
    for (JsonNode one : said) {
      Coded known =
          declared.getOrDefault(one.get("code").asText(), CORE.get(one.get("code").asText()));
      assertTrue(known != null, () -> "not on the card: " + one);
      String sentence = one.get(answered ? "text" : "detail").asText();
      assertFalse(sentence.isBlank() || PLACEHOLDER.matcher(sentence).find(), one::toString);
      if (known instanceof FindingCode finding) {
        assertEquals(
            finding.level().name().toLowerCase(Locale.ROOT),
            one.get("level").asText(),
            one::toString);
      }
      if (!request.request().isMissingNode()) {
        leadsSomewhere(request, one.get("pointer").asText());
      }
    }
  }

  /** To something that was sent, or to the absence of something in a place that was. */
  private static void leadsSomewhere(CodeRequest request, String pointer) {
    JsonNode sent = request.request();
    if (!sent.at(pointer).isMissingNode()) {
      return;
    }
    Shape<?> shape = Shape.of(Calculations.BY_ID.get(request.calculation()).get().card().request());
    assertTrue(shape.has(pointer.substring(1).replace('/', '.')), pointer);
    String around = pointer.substring(0, pointer.lastIndexOf('/'));
    assertFalse(sent.at(around).isMissingNode(), pointer);
  }

  @Test
  void noCardHasACodeTwice() {
    for (Card<?, ?> card : cards()) {
      List<String> names = codes(card).map(Coded::code).sorted().toList();
      assertEquals(names.stream().distinct().toList(), names, card.id());
    }
  }
}
