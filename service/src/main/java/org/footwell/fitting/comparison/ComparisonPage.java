package org.footwell.fitting.comparison;

import static org.footwell.fitting.comparison.PageFigures.DASH;
import static org.footwell.fitting.comparison.PageFigures.escaped;
import static org.footwell.fitting.comparison.PageFigures.kilograms;
import static org.footwell.fitting.comparison.PageFigures.level;
import static org.footwell.fitting.comparison.PageFigures.octaves;
import static org.footwell.fitting.comparison.PageFigures.plain;
import static org.footwell.fitting.comparison.PageFigures.signed;
import static org.footwell.fitting.comparison.PageFigures.signedKilograms;
import static org.footwell.fitting.comparison.PageFigures.words;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Texts;
import org.footwell.fitting.comparison.DriverComparisonResult.AdditionLine;
import org.footwell.fitting.comparison.DriverComparisonResult.GroupLine;
import org.footwell.fitting.comparison.DriverComparisonResult.PositionLine;
import org.footwell.fitting.comparison.DriverComparisonResult.VehicleTotals;
import org.footwell.fitting.comparison.sides.ComparedChange;
import org.footwell.fitting.comparison.sides.ComparedSide;
import org.footwell.fitting.comparison.sides.LevelLimit;
import org.footwell.parts.Safety;

/** The comparison as a page for the customer: rounded, nothing computed. */
final class ComparisonPage {

  private static final String HEAD =
      """
      <!DOCTYPE html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
      <meta name="viewport" content="width=device-width, initial-scale=1">
      <title>Factory part and replacement, side by side</title>
      <style>
      body { font: 1rem/1.4 sans-serif; margin: 2rem auto; max-width: 50rem; padding: 0 1rem; }
      table { border-collapse: collapse; margin: 1rem 0; width: 100%; }
      caption { font-weight: bold; padding: .5rem 0; text-align: left; }
      th, td { border-bottom: 1px solid #999; padding: .25rem .5rem; text-align: right; }
      th:first-child { text-align: left; }
      tbody th { font-weight: normal; }
      @media print { table { break-inside: avoid; } body { margin: 0; } }
      </style>
      </head>
      <body>
      <h1>Factory part and replacement, side by side</h1>
      """;

  private static final String FOOT =
      """
      <p>A dash means that it is not known, or that nothing was there. Levels of a position are of one driver at 1 m in half
      space; they say how the parts compare, not how loud it gets at a seat. Mass, price, power, cone
      area and air moved are of all its drivers. Price is what the new parts cost; what goes out is
      not counted.</p>
      """;

  private final StringBuilder out = new StringBuilder(HEAD);
  private final DriverComparisonResult result;

  private ComparisonPage(DriverComparisonResult result) {
    this.result = result;
  }

  static byte[] draw(Answer<DriverComparisonResult> answer) {
    DriverComparisonResult result = answer.result();
    ComparisonPage page = new ComparisonPage(result);
    result.positions().forEach(page::position);
    page.groups();
    if (result.additions() != null) {
      page.additions();
    }
    page.totals(result.totals());
    page.findings(answer.findings());
    page.out
        .append(FOOT)
        .append("<p>")
        .append(escaped(Texts.of(Safety.RESTRAINT)))
        .append("</p>\n</body>\n</html>\n");
    return page.out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void findings(List<Finding> findings) {
    if (findings.isEmpty()) {
      return;
    }
    out.append("<h2>What to know</h2>\n<ul>\n");
    for (Finding finding : findings) {
      String level = Names.of(finding.level());
      out.append("<li><strong>").append(level).append(":</strong> ");
      out.append(escaped(finding.inFull())).append("</li>\n");
    }
    out.append("</ul>\n");
  }

  private void position(PositionLine line) {
    ComparedSide after = line.after();
    ComparedChange change = line.change();
    String several = line.driverCount() == 1 ? "" : ", " + line.driverCount() + " drivers";
    Function<ComparedSide, String> named = side -> side.name() == null ? DASH : side.name();
    table(line.name() + several, "", "Factory", "New", "Change");
    both(line, "Part", named, "");
    both(
        line,
        "Largest clean level",
        side -> level(side.largestLevelDbSpl()),
        atLeast(change, signed(change.largestLevelDb(), 1, "dB")));
    both(line, "held by", side -> heldBy(side, line.displacementHz()), "");
    both(
        line,
        "Level at the same volume setting (2.83 V)",
        side -> level(side.twoPointEightThreeVoltLevelDbSpl()),
        signed(change.sensitivityAtEqualVoltageDb(), 1, "dB"));
    both(
        line,
        "Level at 1 W",
        side -> level(side.oneWattLevelDbSpl()),
        signed(change.sensitivityAtEqualPowerDb(), 1, "dB"));
    both(
        line,
        "Lowest useful frequency at " + level(line.reachLevelDbSpl()),
        side -> plain(side.lowestUsefulHz(), 0, "Hz"),
        atLeast(change, octaves(change.lowerReachOctaves())));
    both(
        line,
        "Continuous power",
        side -> plain(side.continuousPowerW(), 0, "W"),
        signed(change.continuousPowerDb(), 1, "dB"));
    both(
        line,
        "Peak power",
        side -> plain(side.peakPowerW(), 0, "W"),
        signed(change.peakPowerDb(), 1, "dB"));
    both(
        line,
        "Cone area",
        side -> plain(side.coneAreaCm2(), 0, "cm²"),
        signed(change.coneAreaCm2(), 0, "cm²"));
    both(
        line,
        "Air moved, one way",
        side -> plain(side.displacementCm3(), 0, "cm³"),
        signed(change.displacementCm3(), 0, "cm³"));
    both(line, "Mass", side -> kilograms(side.massG()), signedKilograms(change.massG()));
    row("Price", "", money(after.price()), "");
    row("Price for each dB of largest clean level", "", money(change.pricePerDb()), "");
    row("Verdict of the check", "", words(line.verdict()), "");
    end();
  }

  private void both(
      PositionLine line, String name, Function<ComparedSide, String> cell, String change) {
    String before = line.before() == null ? DASH : cell.apply(line.before());
    row(name, before, cell.apply(line.after()), change);
  }

  private static String heldBy(ComparedSide side, double displacementHz) {
    if (side.limitedBy() == null) {
      return DASH;
    }
    String limit = Texts.of(side.limitedBy());
    return side.limitedBy() == LevelLimit.DISPLACEMENT
        ? limit + " at " + plain(displacementHz, 0, "Hz")
        : limit;
  }

  private static String atLeast(ComparedChange change, String shown) {
    return isBound(change) && !shown.equals(DASH) ? "at least " + shown : shown;
  }

  private static boolean isBound(ComparedChange change) {
    return Boolean.TRUE.equals(change.limitsOfFactoryUnknown());
  }

  private void groups() {
    table("All drivers that play together", "", "Factory", "New", "Change");
    for (GroupLine group : result.groups()) {
      String name = words(group.zone()) + ", " + words(group.band());
      row(
          name + ": largest clean level",
          level(group.largestLevelBeforeDbSpl()),
          level(group.largestLevelAfterDbSpl()),
          (group.levelChangeDb() != null && isBound(group) ? "at least " : "")
              + signed(group.levelChangeDb(), 1, "dB"));
      row(
          name + ": cone area",
          plain(group.coneAreaBeforeCm2(), 0, "cm²"),
          plain(group.coneAreaAfterCm2(), 0, "cm²"),
          "");
    }
    end();
  }

  private boolean isBound(GroupLine group) {
    return result.positions().stream()
        .filter(line -> line.zone() == group.zone() && line.band() == group.band())
        .anyMatch(line -> isBound(line.change()));
  }

  private void additions() {
    table("Besides", "", "Where", "Mass", "Price");
    for (AdditionLine line : result.additions()) {
      row(
          line.name() + (line.needsRestraint() ? " (bolt to the structure)" : ""),
          words(line.at()),
          kilograms(line.massG()),
          money(line.price()));
    }
    end();
  }

  private void totals(VehicleTotals totals) {
    table("The whole vehicle", "", "", "", "");
    single("Price of all that comes in", money(totals.price()));
    single(
        "Largest clean level, whatever is played: at least",
        signed(totals.levelChangeDb(), 1, "dB"));
    single("Price for each dB of that", money(totals.pricePerDb()));
    single("Change of mass", signedKilograms(totals.massChangeG()));
    single("of which on the doors", signedKilograms(totals.doorMassChangeG()));
    single("Continuous power of all drivers", signed(totals.continuousPowerDb(), 1, "dB"));
    single("Peak power of all drivers", signed(totals.peakPowerDb(), 1, "dB"));
    end();
  }

  private String money(BigDecimal price) {
    return PageFigures.money(price, result.priceCurrency());
  }

  private void single(String name, String value) {
    row(name, "", "", value);
  }

  private void table(String caption, String... headings) {
    out.append("<table>\n<caption>").append(escaped(caption)).append("</caption>\n");
    if (!String.join("", headings).isEmpty()) {
      out.append("<thead><tr>");
      for (String heading : headings) {
        out.append(heading.isEmpty() ? "<td>" : "<th scope=\"col\">").append(escaped(heading));
        out.append(heading.isEmpty() ? "</td>" : "</th>");
      }
      out.append("</tr></thead>\n");
    }
    out.append("<tbody>\n");
  }

  private void row(String heading, String... cells) {
    out.append("<tr><th scope=\"row\">").append(escaped(heading)).append("</th>");
    for (String cell : cells) {
      out.append("<td>").append(escaped(cell)).append("</td>");
    }
    out.append("</tr>\n");
  }

  private void end() {
    out.append("</tbody>\n</table>\n");
  }
}
