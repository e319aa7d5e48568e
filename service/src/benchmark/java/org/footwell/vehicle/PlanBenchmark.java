package org.footwell.vehicle;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.footwell.calculation.Engine;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.web.request.Trees;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The review of a plan over its size: the demo van's centre channel several times, each with its own
 * driver, heard from several seats. With {@code -prof gc} it tells the garbage too.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PlanBenchmark {

  private static final Engine ENGINE = new Engine();
  private static final PlanReview REVIEW = new PlanReview();
  private static final Duration LONG = Duration.ofSeconds(30);

  /** Channels; 0 is the demo van as it is, with one seat. */
  @Param({"0", "2", "4", "8", "16"})
  private int channels;

  @Param({"1", "4"})
  private int seats;

  private VehiclePlan plan;

  @Setup
  public void read() throws IOException {
    try (InputStream in = PlanReview.class.getResourceAsStream("/examples/camper-van.json")) {
      ObjectNode json = (ObjectNode) Trees.MAPPER.readTree(in);
      ArrayNode places = (ArrayNode) json.get("seats");
      while (places.size() > 1) {
        places.remove(1);
      }
      for (int s = 1; s < seats; s++) {
        ObjectNode seat = places.get(0).deepCopy();
        seat.put("name", "seat " + s).put("weight", 1);
        ((ObjectNode) seat.get("position")).put("x_m", -0.3 * s);
        places.add(seat);
      }
      if (channels > 0) {
        spread(json);
      }
      plan =
          ENGINE.bind(VehiclePlan.class, Trees.MAPPER.convertValue(json, Object.class), false);
    }
  }

  private void spread(ObjectNode json) {
    ObjectNode channel = json.get("channels").get(2).deepCopy();
    ObjectNode driver = json.get("drivers").get(4).deepCopy();
    ((ObjectNode) json.get("amplifiers").get(0).get("outputs").get(0)).put("output_count", 16);
    ArrayNode all = json.putArray("channels");
    ArrayNode drivers = json.putArray("drivers");
    json.remove("crossovers");
    for (int c = 0; c < channels; c++) {
      ObjectNode own = driver.deepCopy().put("id", "driver" + c);
      ((ObjectNode) own.get("position")).put("y_m", 0.05 * c);
      drivers.add(own);
      ObjectNode placed = channel.deepCopy().put("id", "channel" + c).put("network", "driver" + c);
      placed.putArray("outputs").add("out_" + (c + 1));
      all.add(placed);
    }
  }

  @Benchmark
  public Object review() {
    return ENGINE.answer(REVIEW, plan, false, LONG);
  }
}
