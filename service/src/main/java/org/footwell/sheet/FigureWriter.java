package org.footwell.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Currency;
import java.util.Locale;
import org.footwell.calculation.text.Marks;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Quantity;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.WireGauge;
import org.footwell.calculation.text.WrittenMoney;

/** Figures in the language and the units of a reader, every fact in one form on all sheets. */
public final class FigureWriter {

  /** Stands for what is not known. */
  public static final String DASH = "–";

  /** Between a figure and its unit no line ends. */
  private static final String NO_BREAK = "\u00a0";

  private static final double GRAMS_IN_KG = 1000;

  private final Locale language;
  private final DecimalFormatSymbols marks;
  private final Reader.Units units;

  public FigureWriter(Reader reader) {
    units = reader.units();
    language = reader.language();
    marks = Marks.of(language);
  }

  /** A figure with its unit. */
  public WrittenFigure of(Measure measure, Double value) {
    return figure(value, measure, false);
  }

  /** A change: with its sign, plus included. */
  public WrittenFigure change(Measure measure, Double value) {
    return figure(value, measure, true);
  }

  private WrittenFigure figure(Double value, Measure measure, boolean signed) {
    if (value == null) {
      return new WrittenFigure(null, DASH);
    }
    Measure shown = units.of(measure);
    BigDecimal figure = shown.rounded(Quantity.converted(measure, value, shown));
    return new WrittenFigure(value, digits(figure, signed) + NO_BREAK + shown.symbol());
  }

  /** A figure without its unit, for a sentence that has it. */
  public String bare(Measure measure, double value) {
    Measure shown = units.of(measure);
    return digits(shown.rounded(Quantity.converted(measure, value, shown)), false);
  }

  /** The unit that stands behind figures of a measure. */
  public String unit(Measure measure) {
    return units.of(measure).symbol();
  }

  /** How much of a measure one of the unit is that stands behind its figures. */
  public double worth(Measure measure) {
    return Quantity.converted(units.of(measure), 1, measure);
  }

  /** The cross-section of a wire, with its gauge for those who want inches, where it is one. */
  public WrittenFigure wire(Double areaMm2) {
    WrittenFigure area = of(Measure.MM2, areaMm2);
    return areaMm2 == null || units != Reader.Units.INCH
        ? area
        : WireGauge.nameOf(areaMm2)
            .map(
                gauge -> new WrittenFigure(areaMm2, gauge + NO_BREAK + "AWG (" + area.text() + ")"))
            .orElse(area);
  }

  /** A mass: grams below a kilogram. */
  public WrittenFigure mass(Double grams) {
    return mass(grams, false);
  }

  /** A change of mass. */
  public WrittenFigure massChange(Double grams) {
    return mass(grams, true);
  }

  private WrittenFigure mass(Double grams, boolean signed) {
    if (grams == null || Math.abs(grams) < GRAMS_IN_KG) {
      return figure(grams, Measure.G, signed);
    }
    return new WrittenFigure(grams, figure(grams / GRAMS_IN_KG, Measure.KG, signed).text());
  }

  /** A plain number, such as a count. */
  public WrittenFigure number(Number value) {
    return value == null
        ? new WrittenFigure(null, DASH)
        : new WrittenFigure(value, digits(bare(new BigDecimal(value.toString())), false));
  }

  private static BigDecimal bare(BigDecimal number) {
    BigDecimal bare = number.stripTrailingZeros();
    return bare.scale() < 0 ? bare.setScale(0, RoundingMode.UNNECESSARY) : bare;
  }

  /** A sum of money with all decimals of its currency, or those it has where that has fewer. */
  public WrittenFigure money(BigDecimal sum, Currency currency) {
    return money(sum, currency, true);
  }

  /** The same, or without the currency where that stands elsewhere. */
  public WrittenFigure money(BigDecimal sum, Currency currency, boolean withCurrency) {
    if (sum == null) {
      return new WrittenFigure(null, DASH);
    }
    int decimals =
        currency == null ? WrittenMoney.USUAL_DECIMALS : currency.getDefaultFractionDigits();
    String unit = currency == null || !withCurrency ? "" : NO_BREAK + currency.getCurrencyCode();
    return new WrittenFigure(
        sum, WrittenMoney.of(WrittenMoney.withDecimals(sum, decimals), language) + unit);
  }

  /** All digits of a number, thousands set apart from ten thousand on. */
  private String digits(BigDecimal number, boolean signed) {
    DecimalFormat format = new DecimalFormat("0", marks);
    format.setMinimumFractionDigits(Math.max(0, number.scale()));
    format.setMaximumFractionDigits(Math.max(0, number.scale()));
    format.setGroupingUsed(number.abs().compareTo(BigDecimal.valueOf(10_000)) >= 0);
    format.setGroupingSize(3);
    String plus = signed && number.signum() > 0 ? "+" : "";
    return plus + format.format(number.signum() == 0 ? number.abs() : number);
  }
}
