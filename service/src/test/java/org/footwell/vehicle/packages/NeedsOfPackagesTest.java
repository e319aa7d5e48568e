package org.footwell.vehicle.packages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Refused;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.Test;

/** What a plan and an offer can lack elsewhere, and packages cannot do without, is told at once. */
class NeedsOfPackagesTest {

  /** Offers without sizes or figures for a box, by their roles. */
  private static final String OFFER =
      """
      {"drivers": [
         {"part": {"id": "w", "role": "woofer", "driver": %1$s}},
         {"part": {"id": "s", "role": "subwoofer", "driver": %1$s}}],
       "amplifiers": [{"amplifier": {"id": "new", "mass_g": 900, "price": 90,
         "draw": {"idle_a": 0.4, "full_efficiency": 0.6, "average_efficiency": 0.3},
         "outputs": [{"id": "out", "output_count": 2, "minimum_ohm": 2,
           "ratings": {"supply_v": 14.4, "basis": "clean",
             "points": [{"load_ohm": 4, "power_w": 50}, {"load_ohm": 2, "power_w": 80}]}}]}}]}
      """
          .formatted(
              """
              {"rated_ohm": 4, "fs_hz": 40, "sd_cm2": 210, "xmax_mm": 5, "mass_g": 1500, "price": 50,
               "sensitivity": {"level_db_spl": 87, "basis": "two_point_eight_three_volt"},
               "continuous_power_w": 80}
              """);

  /** The small job with an unknown field, so that it is refused before anything is worked out. */
  private static ObjectNode job() throws Exception {
    ObjectNode job = (ObjectNode) Trees.MAPPER.readTree(SmallJob.REQUEST);
    job.put("colour", "red").set("offer", Trees.MAPPER.readTree(OFFER));
    return job;
  }

  private static Set<String> required(ObjectNode job) {
    Map<?, ?> untyped = Trees.MAPPER.convertValue(job, Map.class);
    Set<String> places = new TreeSet<>();
    assertThrows(Refused.class, () -> new Engine().bind(new PackageOptions(), untyped, false))
        .faults()
        .stream()
        .filter(fault -> fault.code().equals("required"))
        .forEach(fault -> places.add(fault.pointer()));
    return places;
  }

  @Test
  void nothingMoreIsNeededWhereNothingIsHeldAgainstIt() throws Exception {
    assertEquals(Set.of(), required(job()));
  }

  @Test
  void whatStaysIsPriced() throws Exception {
    ObjectNode job = job();
    ((ObjectNode) job.at("/plan/amplifiers/0")).remove("price");
    ((ObjectNode) job.at("/plan/amplifiers/0")).remove("mass_g");
    job.withArray("/plan/extras").addObject().put("name", "labour");
    assertEquals(
        Set.of("/plan/amplifiers/0/price", "/plan/amplifiers/0/mass_g", "/plan/extras/0/price"),
        required(job));
  }

  @Test
  void partsThatStayOrMayAreKnown() throws Exception {
    ObjectNode job = job();
    for (JsonNode part : job.at("/plan/new_parts")) {
      ((ObjectNode) part.get("driver")).remove("price");
    }
    ((ObjectNode) job.at("/slots/1")).put("may_stay", false);
    assertEquals(Set.of("/plan/new_parts/0/driver/price"), required(job));
    job.withArray("/wishes/keep").add("bass");
    assertEquals(
        Set.of("/plan/new_parts/0/driver/price", "/plan/new_parts/1/driver/price"), required(job));
    job.withArray("/slots").remove(1);
    job.remove("wishes");
    assertEquals(
        Set.of("/plan/new_parts/0/driver/price", "/plan/new_parts/1/driver/price"), required(job));
  }

  @Test
  void whatHasToFitHasASize() throws Exception {
    ObjectNode job = job();
    ((ObjectNode) job.at("/slots/0"))
        .putObject("opening")
        .put("cut_out_mm", 150)
        .put("depth_mm", 60);
    job.putObject("amplifier_place")
        .putObject("room")
        .put("width_mm", 300)
        .put("height_mm", 60)
        .put("depth_mm", 200);
    assertEquals(
        Set.of(
            "/offer/drivers/0/part/cut_out_mm",
            "/offer/drivers/0/part/mounting_depth_mm",
            "/offer/amplifiers/0/size"),
        required(job));
  }

  @Test
  void whatComesInABoxIsKnownByItsCircuit() throws Exception {
    ObjectNode job = job();
    ((ObjectNode) job.at("/slots/1"))
        .putObject("room")
        .put("width_mm", 600)
        .put("height_mm", 400)
        .put("depth_mm", 400);
    String at = "/offer/drivers/1/part/driver/";
    assertEquals(Set.of(at + "re_ohm", at + "qms", at + "qes", at + "vas_l"), required(job));
  }
}
