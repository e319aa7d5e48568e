package org.footwell.vehicle.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.footwell.calculation.Shown;
import org.footwell.calculation.Verdict;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Span;
import org.footwell.calculation.text.Texts;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.parts.plan.Quote;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.plot.Plot;
import org.footwell.sheet.WrittenFigure;
import org.footwell.vehicle.PlanReviewResult;
import org.footwell.vehicle.QuoteTotals;
import org.footwell.vehicle.ReplacementLine;
import org.footwell.vehicle.curves.CurvePlots;

/** What a customer is told of a plan: in words of everyday, without what only a fitter can act upon. */
public final class CustomerSheet extends PlanPage {

  private static final double WHOLE_DAY_H = 24;

  CustomerSheet(Shown<VehiclePlan, PlanReviewResult> shown) {
    super(shown);
  }

  /**
   * Something in short.
   *
   * @param means what it means in plain words, or null
   */
  public record Fact(String label, WrittenFigure figure, String means) {}

  /** Places where the same part takes the place of the same other. */
  public record Change(
      String places,
      String before,
      String after,
      WrittenFigure louder,
      WrittenFigure lower,
      WrittenFigure heavier) {}

  /** A line of the bill. */
  public record Item(
      String name, WrittenFigure quantity, WrittenFigure each, WrittenFigure amount) {}

  public String title() {
    Quote quote = plan().quote();
    return quote == null || quote.number() == null
        ? say(CustomerWords.TITLE)
        : say(Phrase.of(CustomerWords.QUOTE).own("number", quote.number()));
  }

  public String vehicle() {
    return plan().vehicle().name();
  }

  public String date() {
    return plan().date();
  }

  public String validUntil() {
    return plan().quote() == null ? null : plan().quote().validUntil();
  }

  /** Who makes the offer, or null. */
  public Quote.Party shop() {
    return plan().quote() == null ? null : plan().quote().shop();
  }

  /** Who gets it, or null. */
  public Quote.Party customer() {
    return plan().quote() == null ? null : plan().quote().customer();
  }

  /** What matters most, as far as it is known. */
  public List<Fact> inShort() {
    Stream<Fact> facts =
        Stream.of(
            new Fact(
                say(Phrase.of(CustomerWords.LEVEL).own("seat", result().mainSeat())),
                figures().of(Measure.DB_SPL, result().levelDbSpl()),
                say(CustomerWords.LEVEL_MEANS)),
            new Fact(
                say(CustomerWords.OVER_ROAD_NOISE),
                figures().of(Measure.DB, result().overRoadNoiseDb()),
                say(CustomerWords.OVER_ROAD_NOISE_MEANS)),
            new Fact(
                say(CustomerWords.LISTENING),
                time(result().exposureAllowedH()),
                say(CustomerWords.LISTENING_MEANS)),
            new Fact(
                say(CustomerWords.HEAVIER), figures().massChange(result().massChangeG()), null),
            new Fact(say(CustomerWords.PRICE), price(), null));
    return facts.filter(fact -> fact.figure().known()).toList();
  }

  private WrittenFigure time(Double hours) {
    return hours == null
        ? figures().of(Measure.H, null)
        : new WrittenFigure(
            hours, hours >= WHOLE_DAY_H ? say(CustomerWords.ALL_DAY) : say(Span.of(hours)));
  }

  private WrittenFigure price() {
    QuoteTotals totals = result().quote();
    return figures().money(totals == null ? null : totals.total(), currency());
  }

  private Currency currency() {
    return plan().quote() == null ? null : plan().quote().inCurrency();
  }

  /** Every place of a driver; those that change alike are one. */
  public List<Change> changes() {
    Map<List<Object>, List<PlacedDriver>> alike = new LinkedHashMap<>();
    for (PlacedDriver driver : plan().drivers()) {
      alike
          .computeIfAbsent(
              Stream.of(driver.part(), String.valueOf(driver.replaces()), line(driver).change())
                  .map(Object.class::cast)
                  .toList(),
              any -> new ArrayList<>())
          .add(driver);
    }
    return alike.values().stream().map(this::change).toList();
  }

  /** What is said of a place against what was there. */
  private record Said(Double louder, Double lower, Double heavier) {
    List<Double> change() {
      return Arrays.asList(louder, lower, heavier);
    }
  }

  private Said line(PlacedDriver driver) {
    List<ReplacementLine> lines =
        result().replacements() == null ? List.of() : result().replacements();
    return lines.stream()
        .filter(line -> line.driver().equals(driver.id()))
        .findFirst()
        .map(line -> new Said(line.levelChangeDb(), line.lowerReachOctaves(), line.massChangeG()))
        .orElseGet(() -> new Said(null, null, massOfNew(driver)));
  }

  /** Where nothing goes out, all that comes in is more. */
  private Double massOfNew(PlacedDriver driver) {
    return driver.replaces() == null ? plan().newPart(driver.part()).driver().massG() : null;
  }

  private Change change(List<PlacedDriver> places) {
    PlacedDriver first = places.get(0);
    Said said = line(first);
    return new Change(
        String.join(", ", places.stream().map(place -> Names.spelt(place.id())).toList()),
        first.replaces() == null
            ? say(CustomerWords.NOTHING)
            : plan().factoryPart(first.replaces()).calledName(),
        plan().newPart(first.part()).calledName(),
        figures().change(Measure.DB, said.louder()),
        lower(said.lower()),
        figures().massChange(said.heavier()));
  }

  private static <T> Stream<T> lines(List<T> known) {
    return known == null ? Stream.empty() : known.stream();
  }

  /** Before against after over frequency, where the data of both parts allow it. */
  public List<Plot> beforeAgainstAfter() {
    return CurvePlots.beforeAgainstAfter(plan(), curves(), reader());
  }

  /** Names of amplifiers and of everything else that is neither driver nor work. */
  public List<String> alsoComes() {
    return Stream.concat(
            plan().amplifiers().stream().map(PlannedAmplifier::calledName),
            plan().extras().stream().map(extra -> extra.name()))
        .toList();
  }

  /** The bill; empty where nothing is quoted. */
  public List<Item> items() {
    return result().quote() == null
        ? List.of()
        : result().quote().items().stream()
            .map(
                item ->
                    new Item(
                        item.name(),
                        quantity(item),
                        figures().money(item.unitPrice(), currency()),
                        figures().money(item.amount(), currency())))
            .toList();
  }

  private WrittenFigure quantity(QuoteTotals.QuoteItem item) {
    WrittenFigure number = figures().number(item.quantity());
    return item.byTheHour()
        ? new WrittenFigure(
            item.quantity(), say(Phrase.of(CustomerWords.HOURS).own("value", number.text())))
        : number;
  }

  /** What the sum lacks, or null where it lacks nothing. */
  public String priceMissing() {
    List<String> names =
        result().quote() == null
            ? List.of()
            : result().quote().items().stream()
                .filter(item -> item.amount() == null)
                .map(QuoteTotals.QuoteItem::name)
                .toList();
    return names.isEmpty() ? null : say(Phrase.of(CustomerWords.PRICE_MISSING).own("names", names));
  }

  /** Sum, tax and what is to be paid. */
  public List<Fact> sums() {
    QuoteTotals totals = result().quote();
    if (totals == null || totals.total() == null) {
      return List.of();
    }
    boolean included = plan().quote().taxIncluded();
    CustomerWords words = included ? CustomerWords.TAX_INCLUDED : CustomerWords.TAX;
    String percent = figures().number(plan().quote().taxPercent()).text();
    return List.of(
        sum(say(CustomerWords.NET), totals.net()),
        sum(say(Phrase.of(words).own("percent", percent)), totals.tax()),
        sum(say(CustomerWords.TOTAL), totals.total()));
  }

  private Fact sum(String label, BigDecimal amount) {
    return new Fact(label, figures().money(amount, currency()), null);
  }

  /** What becomes of the factory parts; null where none goes out. */
  public String takenOutAgain() {
    List<String> kept =
        plan().factoryParts().stream()
            .filter(part -> plan().drivers().stream().anyMatch(d -> part.id().equals(d.replaces())))
            .map(PlannedPart::calledName)
            .toList();
    return kept.isEmpty() ? null : say(Phrase.of(CustomerWords.KEPT).own("names", kept));
  }

  /** The usual cautions that a customer can heed. */
  public List<String> toKnow() {
    List<String> all = new ArrayList<>();
    if (answer().verdict() == Verdict.STOP) {
      all.add(say(CustomerWords.STOPPED));
    }
    long open =
        answer().findings().stream()
            .filter(finding -> finding.level().compareTo(Verdict.WARNING) >= 0)
            .count();
    if (open > 0) {
      all.add(say(Phrase.of(CustomerWords.STILL_OPEN).with("value", open)));
    }
    all.add(Texts.of(Safety.HEARING, reader().language()));
    return all;
  }

  /** What the figures rest on, and what is not known. */
  public List<String> assumed() {
    List<String> all = new ArrayList<>();
    all.add(say(CustomerWords.ASSUMED_MODEL));
    all.add(say(CustomerWords.ASSUMED_LOUDNESS));
    all.add(
        say(
            Phrase.of(CustomerWords.ASSUMED_MUSIC)
                .with("value", plan().programme().crestFactorDb())));
    List<Phrase> unknown = lines(result().notJudged()).map(one -> Phrase.of(one.what())).toList();
    if (!unknown.isEmpty()) {
      all.add(say(Phrase.of(CustomerWords.NOT_KNOWN).with("what", unknown)));
    }
    return all;
  }
}
