package org.footwell.vehicle.packages;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.footwell.calculation.Engine;
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
 * Packages for the demo van: eight positions in four slots, ten amplifiers, and drivers drawn around those of
 * the demo offer, as many in all as the parameter says.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(value = 1, jvmArgs = "-Xmx256m")
public class PackageBenchmark {

  private static final Engine ENGINE = new Engine();
  private static final PackageOptions OPTIONS = new PackageOptions();
  private static final Duration LONG = Duration.ofSeconds(60);

  /** Drivers in all. */
  @Param({"10", "20", "40", "80"})
  private int drivers;

  private PackageOptionsRequest request;

  @Setup
  public void read() throws IOException {
    ObjectNode json = (ObjectNode) Trees.MAPPER.readTree(DemoOffer.request());
    Random random = new Random(1);
    spread((ArrayNode) json.at("/offer/drivers"), "/part/id", drivers, random);
    spread((ArrayNode) json.at("/offer/amplifiers"), "/amplifier/id", 10, random);
    json.remove("wishes");
    json.put("list_count", 50);
    request =
        ENGINE.bind(
            PackageOptionsRequest.class, Trees.MAPPER.convertValue(json, Map.class), false);
  }

  /** More of the same, each a little different in every number. */
  private static void spread(ArrayNode list, String id, int count, Random random) {
    int own = list.size();
    for (int i = own; i < count; i++) {
      ObjectNode more = list.get(i % own).deepCopy();
      vary(more, random);
      String name = id.substring(id.lastIndexOf('/') + 1);
      ((ObjectNode) more.at(id.substring(0, id.lastIndexOf('/')))).put(name, "more_" + i);
      list.add(more);
    }
    while (list.size() > count) {
      list.remove(list.size() - 1);
    }
  }

  private static void vary(ObjectNode part, Random random) {
    for (Map.Entry<String, JsonNode> field : List.copyOf(part.properties())) {
      if (field.getValue() instanceof ObjectNode inner) {
        vary(inner, random);
      } else if (field.getKey().matches("price|mass_g|fs_hz|qes|xmax_mm|continuous_power_w")) {
        double factor = 0.8 + 0.4 * random.nextDouble();
        double varied = field.getValue().asDouble() * factor;
        part.put(field.getKey(), Math.round(varied * 100) / 100.0);
      }
    }
  }

  @Benchmark
  public Object packages() {
    return ENGINE.answer(OPTIONS, request, false, LONG);
  }
}
