package org.footwell.fitting.comparison;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Shown;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Texts;
import org.footwell.fitting.comparison.DriverComparisonResult.AdditionLine;
import org.footwell.fitting.comparison.DriverComparisonResult.GroupLine;
import org.footwell.fitting.comparison.DriverComparisonResult.PositionLine;
import org.footwell.fitting.comparison.DriverComparisonResult.VehicleTotals;
import org.footwell.fitting.comparison.sides.ComparedChange;
import org.footwell.fitting.comparison.sides.ComparedSide;
import org.footwell.fitting.comparison.sides.LevelLimit;
import org.footwell.parts.Safety;
import org.footwell.sheet.FigureTable;
import org.footwell.sheet.FigureWriter;
import org.footwell.sheet.SpokenPage;
import org.footwell.sheet.TemplatePage;
import org.footwell.sheet.WrittenFigure;

/** The comparison for the customer: rounded, nothing computed. */
public final class ComparisonSheet extends SpokenPage {

  /** Where no figure belongs. */
  private static final WrittenFigure NOTHING = new WrittenFigure(null, "");

  private final DriverComparisonResult result;
  private final Answer<DriverComparisonResult> answer;
  private final Currency currency;

  ComparisonSheet(Shown<DriverComparisonRequest, DriverComparisonResult> shown) {
    super(shown.reader());
    answer = shown.answer();
    result = answer.result();
    currency = result.priceCurrency() == null ? null : Currency.getInstance(result.priceCurrency());
  }

  /** The page of it, for a screen or for paper. */
  static TemplatePage page(Shown<DriverComparisonRequest, DriverComparisonResult> shown) {
    return new TemplatePage("fitting/comparison.jte", new ComparisonSheet(shown));
  }

  /** A table under its heading. */
  public record Part(String heading, FigureTable table) {}

  /** What comes of it for the vehicle, as far as it is known. */
  public List<FigureTable.Row> totals() {
    VehicleTotals totals = result.totals();
    return Stream.of(
            row(SheetWords.PRICE_OF_ALL, money(totals.price())),
            row(SheetWords.LOUDER_AT_LEAST, figures().change(Measure.DB, totals.levelChangeDb())),
            row(SheetWords.PRICE_PER_DB, money(totals.pricePerDb())),
            row(SheetWords.MASS_CHANGE, figures().massChange(totals.massChangeG())),
            row(SheetWords.DOOR_MASS_CHANGE, figures().massChange(totals.doorMassChangeG())),
            row(SheetWords.POWER_OF_ALL, figures().change(Measure.DB, totals.continuousPowerDb())),
            row(SheetWords.PEAK_POWER_OF_ALL, figures().change(Measure.DB, totals.peakPowerDb())))
        .filter(row -> row.figures().get(0).known())
        .toList();
  }

  /** Both parts of each place side by side. */
  public List<Part> positions() {
    return result.positions().stream().map(this::position).toList();
  }

  private Part position(PositionLine line) {
    ComparedSide after = line.after();
    ComparedChange change = line.change();
    String level = figures().of(Measure.DB_SPL, line.reachLevelDbSpl()).text();
    List<FigureTable.Row> rows = new ArrayList<>();
    rows.add(both(line, SheetWords.PART, side -> words(side.name()), NOTHING));
    rows.add(
        both(
            line,
            SheetWords.LARGEST_LEVEL,
            side -> figures().of(Measure.DB_SPL, side.largestLevelDbSpl()),
            atLeast(change, figures().change(Measure.DB, change.largestLevelDb()))));
    rows.add(both(line, SheetWords.HELD_BY, side -> heldBy(side, line), NOTHING));
    rows.add(
        both(
            line,
            SheetWords.LEVEL_AT_SAME_SETTING,
            side -> figures().of(Measure.DB_SPL, side.twoPointEightThreeVoltLevelDbSpl()),
            figures().change(Measure.DB, change.sensitivityAtEqualVoltageDb())));
    rows.add(
        both(
            line,
            SheetWords.LEVEL_AT_ONE_WATT,
            side -> figures().of(Measure.DB_SPL, side.oneWattLevelDbSpl()),
            figures().change(Measure.DB, change.sensitivityAtEqualPowerDb())));
    rows.add(
        both(
            line,
            say(Phrase.of(SheetWords.LOWEST).own("level", level)),
            side -> figures().of(Measure.HZ, side.lowestUsefulHz()),
            atLeast(change, lower(change.lowerReachOctaves()))));
    rows.add(
        both(
            line,
            SheetWords.CONTINUOUS_POWER,
            side -> figures().of(Measure.W, side.continuousPowerW()),
            figures().change(Measure.DB, change.continuousPowerDb())));
    rows.add(
        both(
            line,
            SheetWords.PEAK_POWER,
            side -> figures().of(Measure.W, side.peakPowerW()),
            figures().change(Measure.DB, change.peakPowerDb())));
    rows.add(
        both(
            line,
            SheetWords.CONE_AREA,
            side -> figures().of(Measure.CM2, side.coneAreaCm2()),
            figures().change(Measure.CM2, change.coneAreaCm2())));
    rows.add(
        both(
            line,
            SheetWords.AIR_MOVED,
            side -> figures().of(Measure.CM3, side.displacementCm3()),
            figures().change(Measure.CM3, change.displacementCm3())));
    rows.add(
        both(
            line,
            SheetWords.MASS,
            side -> figures().mass(side.massG()),
            figures().massChange(change.massG())));
    rows.add(row(SheetWords.PRICE, NOTHING, money(after.price()), NOTHING));
    rows.add(row(SheetWords.PRICE_PER_DB, NOTHING, money(change.pricePerDb()), NOTHING));
    rows.add(row(SheetWords.VERDICT, NOTHING, words(say(line.verdict())), NOTHING));
    return sideBySide(title(line), rows);
  }

  private String title(PositionLine line) {
    return line.driverCount() == 1
        ? line.name()
        : say(
            Phrase.of(SheetWords.SEVERAL)
                .own("name", line.name())
                .with("count", line.driverCount()));
  }

  private WrittenFigure heldBy(ComparedSide side, PositionLine line) {
    if (side.limitedBy() != LevelLimit.DISPLACEMENT) {
      return words(side.limitedBy() == null ? null : say(side.limitedBy()));
    }
    String frequency = figures().of(Measure.HZ, line.displacementHz()).text();
    return words(
        say(
            Phrase.of(SheetWords.HELD_AT)
                .with("limit", side.limitedBy())
                .own("frequency", frequency)));
  }

  private WrittenFigure atLeast(ComparedChange change, WrittenFigure shown) {
    return shown.known() && isBound(change) ? atLeast(shown) : shown;
  }

  private WrittenFigure atLeast(WrittenFigure shown) {
    return new WrittenFigure(
        shown.value(), say(Phrase.of(SheetWords.AT_LEAST).own("figure", shown.text())));
  }

  private static boolean isBound(ComparedChange change) {
    return Boolean.TRUE.equals(change.limitsOfFactoryUnknown());
  }

  /** What plays the same band in the same part of the vehicle, together. */
  public Part groups() {
    return sideBySide(
        say(SheetWords.TOGETHER), result.groups().stream().flatMap(this::group).toList());
  }

  private Stream<FigureTable.Row> group(GroupLine group) {
    WrittenFigure change = figures().change(Measure.DB, group.levelChangeDb());
    return Stream.of(
        new FigureTable.Row(
            named(SheetWords.GROUP_LEVEL, group),
            List.of(
                figures().of(Measure.DB_SPL, group.largestLevelBeforeDbSpl()),
                figures().of(Measure.DB_SPL, group.largestLevelAfterDbSpl()),
                change.known() && isBound(group) ? atLeast(change) : change)),
        new FigureTable.Row(
            named(SheetWords.GROUP_CONE_AREA, group),
            List.of(
                figures().of(Measure.CM2, group.coneAreaBeforeCm2()),
                figures().of(Measure.CM2, group.coneAreaAfterCm2()),
                NOTHING)));
  }

  private String named(SheetWords what, GroupLine group) {
    return say(Phrase.of(what).with("zone", group.zone()).with("band", group.band()));
  }

  private boolean isBound(GroupLine group) {
    return result.positions().stream()
        .filter(line -> line.zone() == group.zone() && line.band() == group.band())
        .anyMatch(line -> isBound(line.change()));
  }

  /** What comes in besides; null where nothing does. */
  public FigureTable additions() {
    return result.additions() == null
        ? null
        : new FigureTable(
            null,
            say(SheetWords.ITEM),
            List.of(say(SheetWords.WHERE), say(SheetWords.MASS), say(SheetWords.PRICE)),
            result.additions().stream().map(this::addition).toList());
  }

  private FigureTable.Row addition(AdditionLine line) {
    return new FigureTable.Row(
        line.needsRestraint()
            ? say(Phrase.of(SheetWords.TO_BOLT).own("name", line.name()))
            : line.name(),
        List.of(words(say(line.at())), figures().mass(line.massG()), money(line.price())));
  }

  public List<Finding> findings() {
    return answer.findings();
  }

  /** How bad a finding is, as a class of style. */
  public String level(Finding finding) {
    return Names.of(finding.level());
  }

  public String caution() {
    return Texts.of(Safety.RESTRAINT, reader().language());
  }

  /** A price may have no currency. */
  private WrittenFigure money(BigDecimal price) {
    return figures().money(price, currency);
  }

  private static WrittenFigure words(String text) {
    return new WrittenFigure(null, text == null ? FigureWriter.DASH : text);
  }

  private Part sideBySide(String heading, List<FigureTable.Row> rows) {
    List<String> columns =
        List.of(say(SheetWords.FACTORY), say(SheetWords.NEW), say(SheetWords.CHANGE));
    return new Part(heading, new FigureTable(null, say(SheetWords.COMPARED), columns, rows));
  }

  private FigureTable.Row both(
      PositionLine line,
      SheetWords name,
      Function<ComparedSide, WrittenFigure> cell,
      WrittenFigure change) {
    return both(line, say(name), cell, change);
  }

  private static FigureTable.Row both(
      PositionLine line,
      String name,
      Function<ComparedSide, WrittenFigure> cell,
      WrittenFigure change) {
    WrittenFigure before = line.before() == null ? words(null) : cell.apply(line.before());
    return new FigureTable.Row(name, List.of(before, cell.apply(line.after()), change));
  }

  private FigureTable.Row row(SheetWords name, WrittenFigure... cells) {
    return new FigureTable.Row(say(name), List.of(cells));
  }
}
