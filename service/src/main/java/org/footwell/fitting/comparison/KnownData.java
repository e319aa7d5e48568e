package org.footwell.fitting.comparison;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.comparison.DriverComparisonResult.PositionLine;
import org.footwell.fitting.comparison.sides.ChangeFigures;
import org.footwell.fitting.comparison.sides.ComparedPart;
import org.footwell.fitting.comparison.sides.ComparedPosition;
import org.footwell.fitting.comparison.sides.LevelLimit;
import org.footwell.parts.Driver;

/** Says once for each position what was not given, and what is only a bound for it. */
final class KnownData {

  private final ComparedPosition position;
  private final PositionLine line;
  private final String pointer;
  private final Run run;

  KnownData(ComparedPosition position, PositionLine line, String pointer, Run run) {
    this.position = position;
    this.line = line;
    this.pointer = pointer;
    this.run = run;
  }

  void remark() {
    List<String> missing = new ArrayList<>();
    if (position.factory() != null) {
      missing(missing, position.before(), "factory.");
    }
    missing(missing, position.after(), "replacement.");
    if (position.replacement().price() == null) {
      missing.add("replacement.price");
    }
    if (position.amplifierBefore() == null && position.factory() != null) {
      missing.add("amplifier_before");
    }
    if (position.amplifierBefore() == null && position.amplifierAfter() == null) {
      missing.add("amplifier_after");
    }
    if (!missing.isEmpty()) {
      run.find(ComparisonFinding.DATA_NOT_GIVEN)
          .at(pointer)
          .own("name", position.name())
          .fields("what", missing);
    }
    if (Boolean.TRUE.equals(line.change().limitsOfFactoryUnknown())) {
      run.find(ComparisonFinding.CHANGE_AT_LEAST)
          .at(pointer + "/factory")
          .own("name", position.name())
          .with("what", unknownOfFactory());
    }
  }

  private static void missing(List<String> into, ComparedPart part, String at) {
    Driver driver = part.driver();
    add(into, at + "sensitivity", driver.sensitivity());
    add(into, at + "continuous_power_w", driver.continuousPowerW());
    add(into, at + "peak_power_w", driver.peakPowerW());
    add(into, at + "sd_cm2", driver.sdCm2());
    add(into, at + "xmax_mm", driver.xmaxMm());
    if (part.f3Hz() == null) {
      add(into, at + "fs_hz", driver.fsHz());
    }
    add(into, at + "mass_g", driver.massG());
  }

  private static void add(List<String> into, String field, Object value) {
    if (value == null) {
      into.add(field);
    }
  }

  /** Limits that are known of the replacement only. */
  private List<Phrase> unknownOfFactory() {
    Set<LevelLimit> more = EnumSet.copyOf(ChangeFigures.known(line.after()));
    more.removeAll(ChangeFigures.known(line.before()));
    return more.stream().map(Phrase::of).toList();
  }
}
