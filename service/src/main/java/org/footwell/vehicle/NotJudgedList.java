package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.Driver;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.PlanReviewResult.NotJudged;

/** What cannot be judged for want of data, said once for the whole plan. */
final class NotJudgedList {

  private final Map<Unjudged, Set<String>> missing = new EnumMap<>(Unjudged.class);
  private final PlanIndex index;
  private final VehiclePlan plan;
  private final Replacements replacements;

  NotJudgedList(PlanIndex index, Replacements replacements) {
    this.index = index;
    this.plan = index.plan();
    this.replacements = replacements;
  }

  /** The list, with one finding where there is anything on it; null where there is nothing. */
  List<NotJudged> list(Run run) {
    for (int p = 0; p < plan.newParts().size(); p++) {
      part(p);
    }
    for (int d = 0; d < plan.drivers().size(); d++) {
      boolean boxed = plan.drivers().get(d).enclosure() != null;
      if (boxed && index.part(d).driver().vasL() == null) {
        add(Unjudged.ENCLOSURE, index.partAt(d) + "/driver/vas_l");
      }
    }
    for (int a = 0; a < plan.amplifiers().size(); a++) {
      amplifier(a, plan.amplifiers().get(a));
    }
    if (plan.supply() == null) {
      add(Unjudged.SUPPLY_VOLTAGE, "/supply");
    }
    if (plan.signal() == null) {
      add(Unjudged.GAIN_TARGET, "/signal");
    }
    replacements.missing().forEach(field -> add(Unjudged.REPLACEMENT, field));
    if (missing.isEmpty()) {
      return null;
    }
    List<NotJudged> list = new ArrayList<>();
    missing.forEach((what, fields) -> list.add(new NotJudged(what, List.copyOf(fields))));
    run.find(PlanFinding.NOT_JUDGED)
        .with("what", missing.keySet().stream().map(Phrase::of).toList());
    return list;
  }

  private void part(int p) {
    Driver driver = plan.newParts().get(p).driver();
    String at = "/new_parts/" + p + "/driver/";
    need(Unjudged.LEVEL, driver.sensitivity(), at + "sensitivity");
    need(Unjudged.HEAT, driver.continuousPowerW(), at + "continuous_power_w");
    need(Unjudged.MOVEMENT, driver.sdCm2(), at + "sd_cm2");
    need(Unjudged.MOVEMENT, driver.xmaxMm(), at + "xmax_mm");
    need(Unjudged.LOWEST_LOAD, driver.reOhm(), at + "re_ohm");
    need(Unjudged.LOWEST_LOAD, driver.fsHz(), at + "fs_hz");
    need(Unjudged.LOWEST_LOAD, driver.qms(), at + "qms");
    need(Unjudged.LOWEST_LOAD, driver.qes(), at + "qes");
    if (!plan.crossovers().isEmpty()) {
      need(Unjudged.CROSSOVER_WINDOW, driver.sdCm2(), at + "sd_cm2");
      need(Unjudged.CROSSOVER_WINDOW, driver.fsHz(), at + "fs_hz");
    }
  }

  private void amplifier(int a, PlannedAmplifier amplifier) {
    String at = "/amplifiers/" + a;
    need(Unjudged.CURRENT, amplifier.draw(), at + "/draw");
    need(Unjudged.CABLE_AND_FUSE, amplifier.feed(), at + "/feed");
    for (int o = 0; o < amplifier.outputs().size(); o++) {
      PlannedAmplifier.Outputs outputs = amplifier.outputs().get(o);
      if (outputs.minimumOhm() == null && outputs.minimumBridgedOhm() == null) {
        add(Unjudged.SMALLEST_LOAD, at + "/outputs/" + o + "/minimum_ohm");
      }
    }
  }

  private void need(Unjudged what, Object given, String field) {
    if (given == null) {
      add(what, field);
    }
  }

  private void add(Unjudged what, String field) {
    missing.computeIfAbsent(what, any -> new LinkedHashSet<>()).add(field);
  }
}
