package org.footwell.vehicle;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.footwell.RequestUnderTest;
import org.footwell.web.request.Json;

/** The demo plan, to be changed and asked about. */
final class VehicleDraft extends RequestUnderTest<VehiclePlan, PlanReviewResult> {

  private final ObjectNode plan = example();

  VehicleDraft() {
    super(new PlanReview());
  }

  /** The demo plan as a tree. */
  static ObjectNode example() {
    try {
      return (ObjectNode) Json.MAPPER.readTree(new PlanReview().card().example());
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

  @Override
  public VehiclePlan request() {
    return read(plan);
  }
}
