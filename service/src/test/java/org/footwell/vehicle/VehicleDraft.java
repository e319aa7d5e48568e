package org.footwell.vehicle;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.web.request.Json;

/** The demo plan, to be changed and asked about. */
final class VehicleDraft {

  private static final PlanReview CALCULATION = new PlanReview();

  private final ObjectNode plan = example();

  /** The demo plan as a tree. */
  static ObjectNode example() {
    try {
      return (ObjectNode) Json.MAPPER.readTree(CALCULATION.card().example());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A tree as a plan. */
  static VehiclePlan read(JsonNode plan) {
    try {
      return Json.MAPPER.treeToValue(plan, VehiclePlan.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The object at a JSON Pointer of the plan. */
  ObjectNode at(String pointer) {
    return (ObjectNode) plan.at(pointer);
  }

  /** Puts JSON at a field of the object at a pointer. */
  VehicleDraft put(String pointer, String field, String json) {
    try {
      at(pointer).set(field, Json.MAPPER.readTree(json));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  VehicleDraft remove(String pointer, String field) {
    JsonNode gone = at(pointer).remove(field);
    if (gone == null) {
      throw new IllegalArgumentException(pointer + " has no " + field);
    }
    return this;
  }

  Answer<PlanReviewResult> answer() {
    return Answers.of(CALCULATION, read(plan));
  }

  /** The findings of a code. */
  List<Finding> findings(String code) {
    return answer().findings().stream().filter(f -> f.code().equals(code)).toList();
  }

  List<Fault> faults() {
    return Answers.faults(CALCULATION, read(plan));
  }
}
