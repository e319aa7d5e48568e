package org.footwell.vehicle;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.swagger.v3.oas.annotations.media.Schema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import org.footwell.Answers;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Engine;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.reading.Modelled;

/** Plans of the tests, and plans read into the model without what is said of them. */
public final class ModelledPlans {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path PLANS = Path.of("src/test/resources/plans");
  private static final Path DEMO = Path.of("../docs/examples/camper-van.json");

  /** Feed cables of the demo, which leaves them to be found, mm²: as its outside table has them. */
  private static final Map<String, Integer> DEMO_MM2 = Map.of("main", 16, "bass", 25);

  private ModelledPlans() {}

  /** Nothing is answered but that it could be read. */
  public record Read(@Schema(description = "Whether it could be read") Boolean read) {}

  private record Reading(AtomicReference<Modelled> into) implements Calculation<VehiclePlan, Read> {

    @Override
    public Card<VehiclePlan, Read> card() {
      return Card.of("read-plan", VehiclePlan.class, Read.class)
          .title("A plan read into the model")
          .purpose("For tests")
          .example("{}")
          .sources(Source.DEFINITION)
          .limits("For tests")
          .findings(PlanFinding.values())
          .refusals(PlanCard.CARD.refusals().toArray(FaultCode[]::new))
          .build();
    }

    @Override
    public Read compute(VehiclePlan plan, Run run) {
      into.set(Modelled.of(PlanIndex.of(plan, run), run));
      return new Read(true);
    }
  }

  /** One of the plans of the outside table, as JSON. */
  public static ObjectNode json(String name) {
    if (name.equals("one-coil-driven")) {
      ObjectNode plan = json("long-supply-cable");
      ((ObjectNode) plan.at("/channels/2")).put("network", "sub_a.1 || sub_b.1");
      return plan;
    }
    boolean demo = name.equals("camper-van");
    Path file = demo ? DEMO : PLANS.resolve(name + ".json");
    try {
      ObjectNode plan = (ObjectNode) JSON.readTree(Files.readString(file));
      for (JsonNode amplifier : plan.get("amplifiers")) {
        if (demo) {
          ((ObjectNode) amplifier.at("/feed/cable"))
              .put("area_mm2", DEMO_MM2.get(amplifier.get("id").asText()));
        }
      }
      return plan;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static VehiclePlan plan(JsonNode json) {
    return new Engine().bind(VehiclePlan.class, JSON.convertValue(json, Object.class), false);
  }

  public static Modelled modelled(JsonNode json) {
    return modelled(plan(json));
  }

  public static Modelled modelled(VehiclePlan plan) {
    AtomicReference<Modelled> modelled = new AtomicReference<>();
    Answers.of(new Reading(modelled), plan);
    return modelled.get();
  }
}
