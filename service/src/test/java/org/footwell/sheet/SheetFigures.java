package org.footwell.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.footwell.calculation.text.Measure;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The figures of a sheet, held against the numbers it is made of. */
public final class SheetFigures {

  /** A number at the end of a text, with its unit. */
  private static final Pattern FIGURE = Pattern.compile("([+\u2212]?[\\d.,]+)\u00a0(\\S.*)");

  private SheetFigures() {}

  /** A page as the tree that it is. */
  public static Document parsed(byte[] page) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    ignoreOtherHosts(factory);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(page));
  }

  private static void ignoreOtherHosts(DocumentBuilderFactory factory)
      throws ParserConfigurationException {
    factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
  }

  /**
   * Every figure is one of these numbers, rounded as its unit is.
   *
   * @param checked figures that are looked at
   * @return how many
   */
  public static int assertAllIn(
      Document page, Locale language, Predicate<Element> checked, JsonNode... sources) {
    List<BigDecimal> numbers = new ArrayList<>();
    Arrays.stream(sources).forEach(source -> collect(source, numbers));
    NodeList figures = page.getElementsByTagName("data");
    int count = 0;
    for (int i = 0; i < figures.getLength(); i++) {
      Element figure = (Element) figures.item(i);
      if (checked.test(figure)) {
        BigDecimal value = new BigDecimal(figure.getAttribute("value"));
        assertTrue(
            numbers.stream().anyMatch(number -> near(number, value)),
            "not in the answer: " + value);
        assertShows(value, figure.getTextContent(), language);
        count++;
      }
    }
    return count;
  }

  /** Some are said in words; all else is the number, or kilograms of its grams, as its unit rounds. */
  private static void assertShows(BigDecimal value, String text, Locale language) {
    Matcher figure = FIGURE.matcher(text);
    Measure measure = figure.find() ? measure(figure.group(2)) : null;
    if (measure == null) {
      assertTrue(text.matches(".*(hour|minute|second|octave|Oktave|EUR| h|[0-9]).*"), text);
      return;
    }
    DecimalFormatSymbols marks = DecimalFormatSymbols.getInstance(language);
    String digits =
        figure
            .group(1)
            .replace(String.valueOf(marks.getGroupingSeparator()), "")
            .replace(marks.getDecimalSeparator(), '.')
            .replace('\u2212', '-')
            .replace("+", "");
    BigDecimal held = measure == Measure.KG ? value.movePointLeft(3) : value;
    assertEquals(0, measure.rounded(held.doubleValue()).compareTo(new BigDecimal(digits)), text);
  }

  private static Measure measure(String symbol) {
    return Arrays.stream(Measure.values())
        .filter(one -> one.symbol().equals(symbol))
        .findFirst()
        .orElse(null);
  }

  private static boolean near(BigDecimal one, BigDecimal other) {
    return one.subtract(other).abs().doubleValue() <= 1e-12 * Math.abs(one.doubleValue());
  }

  private static void collect(JsonNode node, List<BigDecimal> into) {
    if (node.isNumber()) {
      into.add(node.decimalValue());
    }
    node.forEach(child -> collect(child, into));
  }
}
