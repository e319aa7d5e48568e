package org.footwell.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.rule.Rule;
import org.footwell.calculation.rule.Rules;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Coded;
import org.footwell.calculation.text.Form;
import org.footwell.calculation.text.Given;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;

/** The rules between the fields of one record, ready to be held against it. */
final class DeclaredRules {

  private final List<Prepared> rules;

  /**
   * Reads them from a record.
   *
   * @throws IllegalStateException if one names a field that the record has not
   */
  DeclaredRules(Class<?> type, Map<String, Node.Member> members) {
    this.rules = Rules.of(type).stream().map(rule -> prepared(rule, type, members)).toList();
  }

  private static Prepared prepared(Rule rule, Class<?> type, Map<String, Node.Member> members) {
    try {
      return new Prepared(
          rule, rule.fields().stream().map(path -> FieldPath.of(members, path)).toList());
    } catch (IllegalArgumentException nowhere) {
      throw new IllegalStateException("rule " + rule.sentence() + " of " + type, nowhere);
    }
  }

  List<Rule> list() {
    return rules.stream().map(Prepared::rule).toList();
  }

  /**
   * Adds a fault for each rule that a record breaks, save those about a field that is faulty itself:
   * of such a field it is only known that it is given.
   */
  void check(Object record, FaultyPlaces faulty, Faults faults) {
    for (Prepared one : rules) {
      List<FieldPath> known = faulty.none() ? one.paths : one.known(faulty);
      if (known.size() == one.paths.size() || one.rule.eachAlone()) {
        List<List<Rule.Place>> places = new ArrayList<>(known.size());
        for (FieldPath path : known) {
          places.add(path.in(record));
        }
        one.rule.check(
            one.rule.ofPresence() ? faulty.markUnread(places) : places,
            new ToldBreaches(faulty, faults));
      }
    }
  }

  private record Prepared(Rule rule, List<FieldPath> paths) {

    /** Those of which is known what the rule asks. */
    List<FieldPath> known(FaultyPlaces faulty) {
      List<String> below = faulty.below();
      return paths.stream()
          .filter(
              path ->
                  below.stream().noneMatch(rule.ofPresence() ? path::leadsThrough : path::touches))
          .toList();
    }
  }

  /** Puts what breaks a rule into faults. */
  private record ToldBreaches(FaultyPlaces faulty, Faults faults) implements Rule.Breaches {

    @Override
    public void notExactlyOne(List<String> alternatives, long given) {
      faults
          .add(CoreFault.EXACTLY_ONE_OF)
          .at(faulty.above())
          .given(given == 0 ? Given.NONE_OF_THEM : Given.MORE_THAN_ONE)
          .allowed(Allowed.fields(alternatives));
    }

    @Override
    public void notAtMostOne(String pointer, List<String> alternatives) {
      faults
          .add(CoreFault.AT_MOST_ONE_OF)
          .at(faulty.above() + pointer)
          .given(Given.MORE_THAN_ONE)
          .allowed(Allowed.fields(alternatives));
    }

    @Override
    public void missing(String pointer) {
      if (!faulty.at(pointer)) {
        faults.add(CoreFault.REQUIRED).at(faulty.above() + pointer);
      }
    }

    @Override
    public void missingBeside(String pointer, String field) {
      if (!faulty.at(pointer)) {
        faults.add(CoreFault.NEEDED_BESIDE).at(faulty.above() + pointer).field("other", field);
      }
    }

    @Override
    public void unwanted(String pointer, Object given) {
      Remark remark =
          faults
              .add(CoreFault.NOT_ALLOWED)
              .at(faulty.above() + pointer)
              .allowed(Phrase.of(Form.ABSENT));
      if (given != null) {
        remark.given(given);
      }
    }

    @Override
    public void duplicate(String pointer, String given) {
      faults.add(CoreFault.DUPLICATE).at(faulty.above() + pointer).given(given);
    }

    @Override
    public void unknownName(String pointer, String given, List<String> known, String field) {
      faults
          .add(CoreFault.DANGLING_REFERENCE)
          .at(faulty.above() + pointer)
          .given(given)
          .allowed(Allowed.fields(List.of(field)))
          .with("nearest", Names.didYouMean(given, known));
    }

    @Override
    public void notAscending(String pointer, double given, double before, boolean orEqual) {
      faults
          .add(CoreFault.NOT_ASCENDING)
          .at(faulty.above() + pointer)
          .given(given)
          .allowed(orEqual ? Allowed.atLeast(before, "") : Allowed.above(before, ""));
    }

    @Override
    public void told(Coded code, String pointer, Object given) {
      faults.add((FaultCode) code).at(faulty.above() + pointer).given(given);
    }
  }
}
