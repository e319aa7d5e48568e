package org.footwell.vehicle;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Finding;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.PlanReviewResult.ChannelLine;
import org.footwell.vehicle.PlanReviewResult.CrossoverLine;
import org.footwell.vehicle.PlanReviewResult.DriverLine;
import org.footwell.vehicle.PlanReviewResult.SetupLine;
import org.footwell.web.request.Trees;

/** A plan in the making: the demo plan, or one of its own, to be changed and reviewed. */
final class PlanDraft {

  static final PlanReview REVIEW = new PlanReview();

  private final ObjectNode plan;

  private PlanDraft(ObjectNode plan) {
    this.plan = plan;
  }

  /** The demo van. */
  static PlanDraft van() {
    return ofFile("../docs/examples/camper-van.json");
  }

  static PlanDraft ofFile(String path) {
    try {
      return of(Files.readString(Path.of(path)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static PlanDraft of(String json) {
    try {
      return new PlanDraft((ObjectNode) Trees.MAPPER.readTree(json));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  ObjectNode json() {
    return plan;
  }

  /** Puts a value, in JSON, where a pointer leads; the last step may be new. */
  PlanDraft with(String pointer, String json) {
    int last = pointer.lastIndexOf('/');
    JsonNode holder = plan.at(pointer.substring(0, last));
    String name = pointer.substring(last + 1);
    try {
      JsonNode value = Trees.MAPPER.readTree(json);
      if (holder instanceof ArrayNode list) {
        if (name.equals("-")) {
          list.add(value);
        } else {
          list.set(Integer.parseInt(name), value);
        }
      } else {
        ((ObjectNode) holder).set(name, value);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  PlanDraft without(String pointer) {
    int last = pointer.lastIndexOf('/');
    JsonNode holder = plan.at(pointer.substring(0, last));
    String name = pointer.substring(last + 1);
    if (holder instanceof ArrayNode list) {
      list.remove(Integer.parseInt(name));
    } else {
      ((ObjectNode) holder).remove(name);
    }
    return this;
  }

  VehiclePlan read() {
    return new Engine()
        .bind(VehiclePlan.class, Trees.MAPPER.convertValue(plan, Object.class), false);
  }

  Answer<PlanReviewResult> review() {
    return Answers.of(REVIEW, read());
  }

  List<String> faults() {
    return Answers.faults(REVIEW, read()).stream()
        .map(fault -> fault.code() + " " + fault.pointer())
        .toList();
  }

  /** Codes of the findings with their levels, worst first. */
  static List<String> said(Answer<?> answer) {
    return answer.findings().stream()
        .map(finding -> finding.level().name().toLowerCase(Locale.ROOT) + " " + finding.code())
        .toList();
  }

  static Finding finding(Answer<?> answer, String code) {
    return answer.findings().stream()
        .filter(one -> one.code().equals(code))
        .findFirst()
        .orElseThrow(() -> new AssertionError(code + " not among " + said(answer)));
  }

  static ChannelLine channel(PlanReviewResult result, String id) {
    return result.channels().stream()
        .filter(line -> line.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  static DriverLine driver(PlanReviewResult result, String id) {
    return result.drivers().stream().filter(line -> line.id().equals(id)).findFirst().orElseThrow();
  }

  static SetupLine sheet(PlanReviewResult result, String id) {
    return result.setupSheet().stream()
        .filter(line -> line.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  static CrossoverLine crossover(PlanReviewResult result, String upper) {
    return result.crossovers().stream()
        .filter(line -> line.upper().equals(upper))
        .findFirst()
        .orElseThrow();
  }
}
