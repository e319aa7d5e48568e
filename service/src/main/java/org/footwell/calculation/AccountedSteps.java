package org.footwell.calculation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Completes the workings of an answer: a step for each number of the result whose field says how it
 * comes about, unless the run noted that very step. Of a list the first entry that has the number is
 * shown; the others come about likewise. Nothing is computed here.
 */
final class AccountedSteps {

  /** Names of fields, and the ways to them, in a formula. */
  private static final Pattern NAME =
      Pattern.compile("[a-z][a-z0-9_]*(?:\\.(?:[a-z][a-z0-9_]*|\\*))*");

  /** Of longer lists the numbers stand in the answer. */
  private static final int MOST_SHOWN = 32;

  /** A record and those around it, innermost first. */
  private record Scope(Node.Group shape, Object record, Scope around) {}

  private final List<Step> steps;
  private final Scope request;
  private final String model;

  /** Places of numbers that were come upon, an index for any. */
  private final Set<String> met = new HashSet<>();

  private AccountedSteps(List<Step> noted, Card<?, ?> card, Record request) {
    this.steps = new ArrayList<>(noted);
    this.request = new Scope(Shape.of(card.request()).root(), request, null);
    this.model = "the model of " + card.id() + ", from the sources listed with it";
  }

  /** The steps a run noted, and those of the result after them. */
  static List<Step> after(List<Step> noted, Card<?, ?> card, Record request, Record result) {
    AccountedSteps all = new AccountedSteps(noted, card, request);
    Node.Group shape = Shape.of(card.result()).root();
    all.group(new Scope(shape, result, all.request), "", "");
    return all.steps;
  }

  private void group(Scope here, String path, String kind) {
    for (Node.Member member : here.shape().members().values()) {
      Object value = member.of(here.record());
      if (value != null) {
        node(member.node(), value, here, member.name(), path + member.name(), kind + member.name());
      }
    }
  }

  /**
   * Goes on to what is below.
   *
   * @param kind the path with {@code *} for every index
   */
  private void node(Node node, Object value, Scope in, String field, String path, String kind) {
    if (node instanceof Node.Group group) {
      group(new Scope(group, value, in), path + ".", kind + ".");
    } else if (node instanceof Node.Repeated list) {
      List<?> entries = (List<?>) value;
      for (int i = 0; i < entries.size(); i++) {
        if (entries.get(i) != null) {
          node(list.element(), entries.get(i), in, field, path + "." + i, kind + ".*");
        }
      }
    } else if (value instanceof Number number && met.add(kind)) {
      FieldAccounts.of(in.shape().type(), field)
          .ifPresent(account -> add(account, in, field, path, number.doubleValue()));
    }
  }

  private void add(
      FieldAccounts.Account account, Scope in, String field, String path, double value) {
    if (steps.stream().anyMatch(step -> step.quantity().equals(field) && step.value() == value)) {
      return;
    }
    steps.add(
        new Step(
            null,
            path,
            account.formula(),
            inputs(account.formula(), in, field),
            value,
            Units.of(field),
            account.byModel() ? model : account.source().citation()));
  }

  private Map<String, Double> inputs(String formula, Scope in, String field) {
    Map<String, Double> inputs = new LinkedHashMap<>();
    Matcher names = NAME.matcher(formula);
    while (names.find()) {
      Map<String, Double> found = found(names.group(), in, field);
      if (found.size() <= MOST_SHOWN) {
        inputs.putAll(found);
      }
    }
    return inputs;
  }

  /** What has this name: nearest to a field, but not itself, or else a step that was noted. */
  private Map<String, Double> found(String name, Scope in, String field) {
    Map<String, Double> found = new LinkedHashMap<>();
    Scope nearest = name.equals(field) ? in.around() : in;
    for (Scope scope = nearest; scope != null && found.isEmpty(); scope = scope.around()) {
      numbers(scope.shape(), scope.record(), name.split("\\."), 0, "", found);
    }
    if (found.isEmpty()) {
      steps.stream()
          .filter(step -> step.quantity().equals(name))
          .forEach(step -> found.put(name, step.value()));
    }
    return found;
  }

  private static void numbers(
      Node node, Object value, String[] parts, int at, String path, Map<String, Double> into) {
    if (value == null) {
      return;
    }
    if (at == parts.length) {
      if (value instanceof Number number) {
        into.put(path.substring(1), number.doubleValue());
      }
    } else if (node instanceof Node.Group group && group.members().containsKey(parts[at])) {
      Node.Member member = group.members().get(parts[at]);
      numbers(member.node(), member.of(value), parts, at + 1, path + "." + parts[at], into);
    } else if (node instanceof Node.Repeated list && parts[at].equals("*")) {
      List<?> entries = (List<?>) value;
      for (int i = 0; i < entries.size(); i++) {
        numbers(list.element(), entries.get(i), parts, at + 1, path + "." + i, into);
      }
    }
  }
}
