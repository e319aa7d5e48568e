package org.footwell.calculation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.footwell.calculation.rule.FieldRule;
import org.footwell.calculation.rule.Rule;
import org.footwell.calculation.rule.Rules;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Exact;
import org.footwell.calculation.text.Form;
import org.footwell.calculation.text.Given;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;

/** The rules of one record, ready to be held against it. */
final class DeclaredRules {

  private final Prepared[] rules;
  private final OwnRule[] own;

  /**
   * Reads them from a record, or from a calculation that is asked by it.
   *
   * @param members of the record
   * @throws IllegalStateException if one names a field that the record has not
   */
  DeclaredRules(Class<?> declaring, Map<String, Node.Member> members) {
    this.rules =
        Rules.of(declaring).stream()
            .map(rule -> prepared(rule, declaring, members))
            .toArray(Prepared[]::new);
    this.own = OwnRule.of(declaring, members).toArray(OwnRule[]::new);
  }

  private static Prepared prepared(
      FieldRule rule, Class<?> declaring, Map<String, Node.Member> members) {
    try {
      return Prepared.of(rule, ways(members, rule.fields()), members);
    } catch (IllegalArgumentException nowhere) {
      throw new IllegalStateException("rule " + rule.sentence() + " of " + declaring, nowhere);
    }
  }

  /**
   * The ways to fields.
   *
   * @throws IllegalArgumentException if there is no such field
   */
  static List<FieldPath> ways(Map<String, Node.Member> members, List<String> paths) {
    return paths.stream().map(path -> FieldPath.of(members, path)).toList();
  }

  List<Rule> list() {
    return Stream.<Rule>concat(Arrays.stream(rules).map(Prepared::rule), Arrays.stream(own))
        .toList();
  }

  /** Dotted paths of what must be given where what holds it is. */
  List<String> needed() {
    return Arrays.stream(rules)
        .map(Prepared::rule)
        .filter(FieldRule::eachAlone)
        .flatMap(rule -> rule.fields().stream())
        .toList();
  }

  /**
   * Adds a fault for each rule that a record breaks, save those about a field that is faulty itself:
   * of such a field it is only known that it is given.
   */
  void check(Object record, FaultyPlaces faulty, Faults faults) {
    for (Prepared rule : rules) {
      rule.check(record, faulty, faults);
    }
    if (own.length > 0) {
      FaultyPlaces unknown = faulty.forOwnRules();
      for (OwnRule rule : own) {
        rule.check(record, unknown, faults);
      }
    }
  }

  /**
   * A rule with the ways to its fields.
   *
   * @param single whether none of them stands in each entry of a list
   * @param members of the record
   */
  private record Prepared(
      FieldRule rule, List<FieldPath> paths, boolean single, Map<String, Node.Member> members) {

    static Prepared of(FieldRule rule, List<FieldPath> paths, Map<String, Node.Member> members) {
      boolean single = paths.stream().allMatch(path -> path.pointer() != null);
      return new Prepared(rule, paths, single, members);
    }

    void check(Object record, FaultyPlaces faulty, Faults faults) {
      if (single && faulty.none() && isKept(record)) {
        return;
      }
      List<FieldPath> known = faulty.none() ? paths : known(faulty);
      if (known.size() == paths.size() || rule.eachAlone()) {
        List<List<Rule.Place>> places = new ArrayList<>(known.size());
        for (FieldPath path : known) {
          places.add(path.in(record));
        }
        rule.check(
            rule.ofPresence() ? faulty.markUnread(places) : places,
            new ToldBreaches(faulty, faults, pointer -> quantity(pointer, record)));
      }
    }

    /** Whether it is enough to count what is given. */
    private boolean isKept(Object record) {
      int given = 0;
      int missing = 0;
      for (int i = 0; i < paths.size(); i++) {
        if (paths.get(i).value(record) != null) {
          given++;
        } else if (paths.get(i).isMissing(record)) {
          missing++;
        }
      }
      return rule.keptWith(given, missing, paths.size());
    }

    /** Path of the quantity that a number is one of: its own, or what a field beside it says. */
    private String quantity(String pointer, Object record) {
      Node.Member member = members.get(pointer.substring(1));
      return member == null || member.inUnitOf() == null
          ? pointer
          : String.valueOf(members.get(member.inUnitOf()).of(record));
    }

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
  private record ToldBreaches(FaultyPlaces faulty, Faults faults, UnaryOperator<String> quantity)
      implements Rule.Breaches {

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
        faulty.miss(pointer);
      }
    }

    @Override
    public void missingBeside(String pointer, String field) {
      if (!faulty.at(pointer)) {
        faults.add(CoreFault.NEEDED_BESIDE).at(faulty.above() + pointer).field("other", field);
        faulty.miss(pointer);
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
          .given(Exact.given(given).of(quantity.apply(pointer)))
          .allowed(Allowed.after(before, orEqual, quantity.apply(pointer)));
    }
  }
}
