package org.footwell.vehicle.sheets;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.footwell.calculation.Shown;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;
import org.footwell.parts.Filter;
import org.footwell.parts.plan.ParametricFilter;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.sheet.WrittenFigure;
import org.footwell.vehicle.CsvSheet;
import org.footwell.vehicle.PlanReviewResult;
import org.footwell.vehicle.PlanReviewResult.SetupLine;
import org.footwell.vehicle.RestoreLine;

/** The settings of every channel as a sheet to work from: as CSV, or as text to print. */
final class SetupSheet {

  private static final int TITLE_COLUMNS = 28;

  private SetupSheet() {}

  /** One row a channel, numbers unrounded. */
  static byte[] csv(Shown<VehiclePlan, PlanReviewResult> shown) {
    CsvSheet sheet = new CsvSheet();
    List<String> names = new ArrayList<>(List.of("channel"));
    for (SetupEntry entry : SetupEntry.values()) {
      names.add(entry.column());
    }
    sheet.row(names);
    for (SetupLine line : shown.answer().result().setupSheet()) {
      List<String> cells = new ArrayList<>(List.of(line.id()));
      for (SetupEntry entry : SetupEntry.values()) {
        cells.add(cell(entry.of(line)));
      }
      sheet.row(cells);
    }
    return sheet.bytes();
  }

  private static String cell(Object value) {
    if (value instanceof List<?> list) {
      return list.stream()
          .map(SetupSheet::cell)
          .collect(Collectors.joining(list.get(0) instanceof String ? " + " : "; "));
    }
    if (value instanceof Filter filter) {
      return cell(filter.kind()) + " " + filter.frequencyHz() + " Hz order " + filter.order();
    }
    if (value instanceof ParametricFilter filter) {
      return cell(filter.kind())
          + " "
          + filter.frequencyHz()
          + " Hz"
          + (filter.q() == null ? "" : " Q " + filter.q())
          + (filter.gainDb() == null ? "" : " " + filter.gainDb() + " dB");
    }
    if (value instanceof Enum<?> constant) {
      return Names.of(constant);
    }
    return value == null ? "" : value.toString();
  }

  /** One block a channel, rounded for people; what is not known is left out. */
  static byte[] text(Shown<VehiclePlan, PlanReviewResult> shown) {
    Reader reader = shown.reader();
    VehiclePlan plan = shown.request();
    PlanReviewResult result = shown.answer().result();
    SetupText text = new SetupText(reader);
    StringBuilder out = new StringBuilder(word(SetupWords.TITLE, reader)).append('\n');
    out.append(Texts.oneLine(plan.vehicle().name()));
    if (plan.date() != null) {
      out.append(", ").append(plan.date());
    }
    out.append('\n')
        .append(word(SetupWords.MAIN_SEAT, reader) + ": " + Texts.oneLine(result.mainSeat()))
        .append('\n');
    for (SetupLine line : result.setupSheet()) {
      out.append('\n').append(Texts.oneLine(line.id())).append('\n');
      for (SetupEntry entry : SetupEntry.values()) {
        WrittenFigure figure = text.figure(entry, line);
        if (figure != null) {
          out.append(
              String.format(
                  Locale.ROOT,
                  "  %-" + TITLE_COLUMNS + "s %s\n",
                  text.title(entry),
                  Texts.oneLine(figure.text())));
        }
      }
    }
    if (result.restore() != null) {
      out.append('\n').append(word(SetupWords.BACK_TO_FACTORY, reader)).append('\n');
      for (RestoreLine line : result.restore()) {
        out.append("  - ").append(Texts.oneLine(line.phrase().said(reader))).append('\n');
      }
    }
    out.append('\n')
        .append(
            word(SetupWords.VERDICT, reader)
                + ": "
                + Texts.of(shown.answer().verdict(), reader.language()))
        .append('\n');
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String word(SetupWords word, Reader reader) {
    return Texts.of(word, reader.language());
  }
}
