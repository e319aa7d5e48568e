package org.footwell.calculation;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Works out the text of a formula as a reader would: sums, products, roots, logarithms to ten and two,
 * {@code largest of a, b}. What has other words in it is left to the reader.
 */
final class FormulaText {

  /** Crest factor of a sine in dB, as it is printed. */
  private static final String SINE_CREST = "3.01";

  /** Not arithmetic, or a number it needs is not there. */
  private static final class Words extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  private final String text;
  private final Map<String, Double> numbers;
  private final List<String> names;
  private int at;

  private FormulaText(String text, Map<String, Double> numbers) {
    this.text = text;
    this.numbers = numbers;
    this.names =
        numbers.keySet().stream()
            .sorted(Comparator.comparingInt(String::length).reversed())
            .toList();
  }

  /** What the formula of a step gives with the numbers put in, if it is all arithmetic. */
  static OptionalDouble of(Step step) {
    FormulaText reader = new FormulaText(step.formula(), step.inputs());
    try {
      double value = reader.whole();
      return reader.at == reader.text.length() ? OptionalDouble.of(value) : OptionalDouble.empty();
    } catch (Words words) {
      return OptionalDouble.empty();
    }
  }

  private double whole() {
    for (String of : List.of("largest of ", "smallest of ", "sum of ")) {
      if (take(of)) {
        return over(of, text.substring(at));
      }
    }
    return sum();
  }

  /** Over everything that stands under names with commas between, an index for each star. */
  private double over(String how, String list) {
    String some = list.replace(".", "\\.").replace("*", "\\d+").replace(", ", "|");
    List<Double> all =
        numbers.entrySet().stream()
            .filter(one -> one.getKey().matches(some))
            .map(Map.Entry::getValue)
            .toList();
    if (all.isEmpty() || !list.matches("[a-z0-9_.*, ]+") || list.matches(".*[a-z] [a-z].*")) {
      throw new Words();
    }
    at = text.length();
    return switch (how) {
      case "largest of " -> all.stream().mapToDouble(d -> d).max().orElseThrow();
      case "smallest of " -> all.stream().mapToDouble(d -> d).min().orElseThrow();
      default -> all.stream().mapToDouble(d -> d).sum();
    };
  }

  private double sum() {
    double value = take("−") ? -product() : product();
    while (true) {
      if (take(" + ")) {
        value += product();
      } else if (take(" − ")) {
        value -= product();
      } else {
        return value;
      }
    }
  }

  private double product() {
    double value = power();
    while (true) {
      if (take("·")) {
        value *= power();
      } else if (take("/")) {
        value /= power();
      } else {
        return value;
      }
    }
  }

  private double power() {
    double value = factor();
    if (take("²")) {
      return value * value;
    }
    if (take("^")) {
      return Math.pow(value, factor());
    }
    return value;
  }

  private double factor() {
    if (take("(")) {
      return closed(sum(), ")");
    }
    if (take("|")) {
      return Math.abs(closed(sum(), "|"));
    }
    if (take("√")) {
      return Math.sqrt(factor());
    }
    if (take("lg(")) {
      return Math.log10(closed(sum(), ")"));
    }
    if (take("lb(")) {
      return Math.log(closed(sum(), ")")) / Math.log(2);
    }
    if (take("π")) {
      return Math.PI;
    }
    for (String name : names) {
      if (text.startsWith(name, at) && ends(at + name.length())) {
        at += name.length();
        return numbers.get(name);
      }
    }
    return literal();
  }

  private double closed(double value, String by) {
    if (!take(by)) {
      throw new Words();
    }
    return value;
  }

  private double literal() {
    if (take(SINE_CREST)) {
      return 10 * Math.log10(2);
    }
    int from = at;
    while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    if (from == at || !ends(at)) {
      throw new Words();
    }
    return Double.parseDouble(text.substring(from, at));
  }

  /** Whether a name or number ends here. */
  private boolean ends(int end) {
    return end == text.length()
        || !(Character.isLetterOrDigit(text.charAt(end)) || text.charAt(end) == '_');
  }

  private boolean take(String what) {
    boolean here = text.startsWith(what, at);
    at += here ? what.length() : 0;
    return here;
  }
}
