package org.footwell.contract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.footwell.analysis.Sweep;
import org.footwell.analysis.registry.Analysis;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.text.Coded;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Texts;

/**
 * A code as it is published.
 *
 * @param level how bad a finding is; {@code refusal} for why a request is refused
 * @param text its sentence, the names of its arguments in braces
 * @param advice what to do, likewise; absent where there is nothing to do
 * @param arguments their kinds by their names
 * @param calculations which may give it, analyses of any of them included
 */
public record PublishedCode(
    String code,
    String level,
    String text,
    String advice,
    Map<String, String> arguments,
    List<String> calculations) {

  /** Every code of these calculations, those of the core first, in the order of the cards. */
  public static List<PublishedCode> all(List<Calculation<?, ?>> calculations) {
    Map<Coded, List<String>> givenBy = new LinkedHashMap<>();
    for (Calculation<?, ?> calculation : calculations) {
      Stream.of(CoreFault.values()).forEach(code -> add(code, calculation.card().id(), givenBy));
    }
    for (Calculation<?, ?> calculation : calculations) {
      Card<?, ?> card = calculation.card();
      codes(card).forEach(code -> add(code, card.id(), givenBy));
    }
    ofAnalyses(calculations.get(0), givenBy);
    return givenBy.entrySet().stream().map(one -> of(one.getKey(), one.getValue())).toList();
  }

  /** What an analysis says of its own, whichever calculation it is put to. */
  private static void ofAnalyses(Calculation<?, ?> any, Map<Coded, List<String>> givenBy) {
    for (Analysis analysis : Analysis.values()) {
      List<? extends Coded> known = codes(any.card()).toList();
      codes(analysis.of(any).card())
          .filter(code -> !known.contains(code))
          .forEach(code -> add(code, analysis.id(), givenBy));
    }
    Sweep.REFUSALS.forEach(code -> add(code, "sweep", givenBy));
  }

  private static Stream<Coded> codes(Card<?, ?> card) {
    return Stream.concat(card.findings().stream(), card.refusals().stream());
  }

  private static void add(Coded code, String by, Map<Coded, List<String>> givenBy) {
    givenBy.computeIfAbsent(code, any -> new ArrayList<>()).add(by);
  }

  private static PublishedCode of(Coded code, List<String> calculations) {
    return new PublishedCode(
        code.code(),
        code instanceof FindingCode finding ? Names.of(finding.level()) : "refusal",
        Texts.of(code),
        Texts.advice(code).orElse(null),
        Texts.arguments(code),
        calculations);
  }
}
