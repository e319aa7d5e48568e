package org.footwell.vehicle;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.footwell.calculation.Answer;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Texts;
import org.footwell.parts.Filter;
import org.footwell.parts.plan.ParametricFilter;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.PlanReviewResult.MeasuredLine;
import org.footwell.vehicle.PlanReviewResult.SetLine;
import org.footwell.vehicle.PlanReviewResult.SetupLine;

/** The settings of every channel as a sheet to work from: as CSV, or as text to print. */
final class SetupSheet {

  /** A row of the sheet: what it is called in text, in CSV, and its value for a channel. */
  private record Entry(String title, String column, Function<SetupLine, Object> of) {}

  private static final List<Entry> ENTRIES =
      List.of(
          new Entry("amplifier", "amplifier", SetupLine::amplifier),
          new Entry("outputs", "outputs", line -> String.join(" + ", line.outputs())),
          new Entry("high-pass", "high_pass", line -> filter(line.highPass())),
          new Entry("low-pass", "low_pass", line -> filter(line.lowPass())),
          new Entry("equaliser", "equaliser", line -> filters(line.equaliser())),
          new Entry("test tone, Hz", "tone_hz", SetupLine::toneHz),
          new Entry("test tone, dBFS", "tone_dbfs", SetupLine::toneDbfs),
          new Entry("volume step", "volume_step", SetupLine::volumeStep),
          new Entry("terminals", "terminals", line -> words(line.terminals())),
          new Entry("gain target, V RMS", "gain_target_v", SetupLine::gainTargetV),
          new Entry("gain set, V RMS", "gain_v", line -> set(line, SetLine::gainV)),
          new Entry("trim, dB", "trim_db", SetupLine::trimDb),
          new Entry("trim set, dB", "trim_set_db", line -> set(line, SetLine::trimDb)),
          new Entry("delay, ms", "delay_ms", SetupLine::delayMs),
          new Entry("delay set, ms", "delay_set_ms", line -> set(line, SetLine::delayMs)),
          new Entry("delay, samples", "delay_samples", SetupLine::delaySamples),
          new Entry("delay, mm", "delay_mm", SetupLine::delayMm),
          new Entry("polarity", "polarity", line -> line.polarity() == 1 ? "normal" : "inverted"),
          new Entry("limiter, V RMS", "limiter_rms_v", SetupLine::limiterRmsV),
          new Entry("limiter, V peak", "limiter_peak_v", SetupLine::limiterPeakV),
          new Entry("predicted level, dB SPL", "level_db_spl", SetupLine::levelDbSpl),
          new Entry(
              "measured level, dB SPL",
              "measured_level_db_spl",
              line -> measured(line, MeasuredLine::levelDbSpl)),
          new Entry("meter, ohm", "meter_ohm", line -> measured(line, MeasuredLine::meterOhm)),
          new Entry(
              "arrives later by, ms",
              "measured_late_ms",
              line -> measured(line, MeasuredLine::lateMs)),
          new Entry(
              "measured polarity",
              "measured_polarity",
              line -> measured(line, MeasuredLine::polarity)));

  private SetupSheet() {}

  /** One row a channel, numbers unrounded. */
  static byte[] csv(Answer<PlanReviewResult> answer) {
    CsvSheet sheet = new CsvSheet();
    List<String> names = new ArrayList<>(List.of("channel"));
    ENTRIES.forEach(entry -> names.add(entry.column()));
    sheet.row(names);
    for (SetupLine line : answer.result().setupSheet()) {
      List<Object> cells = new ArrayList<>(List.of(line.id()));
      ENTRIES.forEach(entry -> cells.add(entry.of().apply(line)));
      sheet.row(cells);
    }
    return sheet.bytes();
  }

  private static String cell(Object value) {
    return value == null ? "" : value.toString();
  }

  /** One block a channel, rounded for people; what is not known is left out. */
  static byte[] text(Answer<PlanReviewResult> answer, VehiclePlan plan) {
    StringBuilder out = new StringBuilder("Setup sheet\n");
    out.append(Texts.oneLine(plan.vehicle().name()));
    if (plan.date() != null) {
      out.append(", ").append(plan.date());
    }
    out.append("\nMain seat: ").append(Texts.oneLine(answer.result().mainSeat())).append('\n');
    for (SetupLine line : answer.result().setupSheet()) {
      out.append('\n').append(Texts.oneLine(line.id())).append('\n');
      for (Entry entry : ENTRIES) {
        String value = Texts.oneLine(cell(Texts.forPeople(entry.of().apply(line))));
        if (!value.isEmpty()) {
          out.append(String.format(Locale.ROOT, "  %-24s %s%n", entry.title(), value));
        }
      }
    }
    restore(answer.result(), out);
    out.append("\nVerdict: ").append(Names.of(answer.verdict())).append('\n');
    return out.toString().replace(System.lineSeparator(), "\n").getBytes(StandardCharsets.UTF_8);
  }

  private static void restore(PlanReviewResult result, StringBuilder out) {
    if (result.restore() != null) {
      out.append("\nBack to the factory state\n");
      for (RestoreLine line : result.restore()) {
        out.append("  - ").append(Texts.oneLine(line.phrase().toString())).append('\n');
      }
    }
  }

  private static Object measured(SetupLine line, Function<MeasuredLine, Object> of) {
    return line.measured() == null ? null : of.apply(line.measured());
  }

  private static Object set(SetupLine line, Function<SetLine, Object> of) {
    return line.set() == null ? null : of.apply(line.set());
  }

  private static String filter(Filter filter) {
    return filter == null
        ? null
        : words(filter.kind())
            + ", "
            + Texts.forPeople(filter.frequencyHz())
            + " Hz, "
            + 6 * filter.order()
            + " dB per octave";
  }

  private static String filters(List<ParametricFilter> filters) {
    return filters == null
        ? null
        : filters.stream()
            .map(
                f ->
                    words(f.kind())
                        + " "
                        + Texts.forPeople(f.frequencyHz())
                        + " Hz"
                        + (f.q() == null ? "" : " Q " + Texts.forPeople(f.q()))
                        + (f.gainDb() == null ? "" : " " + Texts.forPeople(f.gainDb()) + " dB"))
            .collect(Collectors.joining("; "));
  }

  private static String words(Enum<?> constant) {
    return constant == null ? null : Names.of(constant).replace('_', ' ');
  }
}
