package org.footwell.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.web.Json;

/** The demo plan, to be changed and asked about. */
final class PlanDraft {

  private static final PlanReview CALCULATION = new PlanReview();

  private final ObjectNode plan;

  PlanDraft() {
    try {
      plan = (ObjectNode) Json.MAPPER.readTree(CALCULATION.card().example());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The object at a JSON Pointer of the plan. */
  ObjectNode at(String pointer) {
    return (ObjectNode) plan.at(pointer);
  }

  /** Puts JSON at a field of the object at a pointer. */
  PlanDraft put(String pointer, String field, String json) {
    try {
      at(pointer).set(field, Json.MAPPER.readTree(json));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  PlanDraft remove(String pointer, String field) {
    JsonNode gone = at(pointer).remove(field);
    if (gone == null) {
      throw new IllegalArgumentException(pointer + " has no " + field);
    }
    return this;
  }

  VehiclePlan read() {
    try {
      return Json.MAPPER.treeToValue(plan, VehiclePlan.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Answer<PlanReviewResult> answer() {
    return Answers.of(CALCULATION, read());
  }

  /** The findings of a code. */
  List<Finding> findings(String code) {
    return answer().findings().stream().filter(f -> f.code().equals(code)).toList();
  }

  List<Fault> faults() {
    return Answers.faults(CALCULATION, read());
  }
}
