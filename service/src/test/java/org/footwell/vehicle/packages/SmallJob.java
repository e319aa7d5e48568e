package org.footwell.vehicle.packages;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Engine;
import org.footwell.parts.CableBuilder;
import org.footwell.parts.ConductorMaterial;
import org.footwell.parts.WayRole;
import org.footwell.parts.offer.Offer;
import org.footwell.parts.offer.OfferedAmplifier;
import org.footwell.parts.offer.OfferedCable;
import org.footwell.parts.offer.OfferedDriver;
import org.footwell.web.request.Trees;

/** A hatchback with a front and a bass on the outputs of what is in it, and small offers for it. */
final class SmallJob {

  static final String REQUEST =
      """
      {"plan": {
        "vehicle": {"name": "Ostrel three-door", "cabin": {"length_m": 2.3}},
        "seats": [{"name": "driver", "position": {"x_m": 0, "y_m": 0.36, "z_m": 1.1}}],
        "new_parts": [
          {"id": "woofer_now", "role": "woofer",
           "driver": {"rated_ohm": 4, "re_ohm": 3.4, "fs_hz": 82, "qms": 3.9, "qes": 0.9, "vas_l": 9,
            "sd_cm2": 120, "xmax_mm": 2.2,
            "sensitivity": {"level_db_spl": 90, "basis": "two_point_eight_three_volt"},
            "continuous_power_w": 25, "mass_g": 0, "price": 0}},
          {"id": "sub_now", "role": "subwoofer",
           "driver": {"rated_ohm": 4, "re_ohm": 3.3, "fs_hz": 40, "qms": 4.5, "qes": 0.7, "vas_l": 25,
            "sd_cm2": 210, "xmax_mm": 5,
            "sensitivity": {"level_db_spl": 87, "basis": "two_point_eight_three_volt"},
            "continuous_power_w": 80, "mass_g": 0, "price": 0}}],
        "drivers": [
          {"id": "left", "part": "woofer_now", "position": {"x_m": 0.6, "y_m": 0.7, "z_m": 0.6}},
          {"id": "right", "part": "woofer_now", "position": {"x_m": 0.6, "y_m": -0.7, "z_m": 0.6}},
          {"id": "bass", "part": "sub_now", "position": {"x_m": -1.2, "y_m": 0, "z_m": 0.5},
           "enclosure": {"closed": {"volume_l": 20}}}],
        "amplifiers": [
          {"id": "now",
           "outputs": [{"id": "out", "output_count": 4, "minimum_ohm": 4,
             "ratings": {"supply_v": 14.4, "basis": "clean",
                         "points": [{"load_ohm": 4, "power_w": 18}, {"load_ohm": 8, "power_w": 10}]}}],
           "draw": {"idle_a": 0.4, "full_efficiency": 0.6, "average_efficiency": 0.3},
           "mass_g": 0, "price": 0}],
        "channels": [
          {"id": "left", "role": "front", "amplifier": "now", "outputs": ["out_1"], "network": "left",
           "cable": {"one_way_m": 3, "area_mm2": 2.5},
           "high_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 80}},
          {"id": "right", "role": "front", "amplifier": "now", "outputs": ["out_2"],
           "network": "right", "cable": {"one_way_m": 4, "area_mm2": 2.5},
           "high_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 80}},
          {"id": "bass", "role": "subwoofer", "amplifier": "now", "outputs": ["out_3"],
           "network": "bass", "cable": {"one_way_m": 2, "area_mm2": 4},
           "low_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 80}}],
        "supply": {"battery_v": 14.2}},
       "slots": [{"name": "front", "drivers": ["left", "right"]},
                 {"name": "bass", "drivers": ["bass"]}],
       "offer": {},
       "list_count": 50}
      """;

  private SmallJob() {}

  /** Without any offer. */
  static PackageOptionsRequest bare() {
    return of(REQUEST);
  }

  static PackageOptionsRequest of(String json) {
    try {
      return new Engine()
          .bind(PackageOptionsRequest.class, Trees.MAPPER.readValue(json, Map.class), false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** With an offer drawn at random. */
  static PackageOptionsRequest drawn(long seed, int drivers, int amplifiers) {
    RandomOffers random = new RandomOffers(seed);
    List<OfferedDriver> all = new ArrayList<>();
    for (int i = 0; i < drivers; i++) {
      all.add(random.driver("woofer_" + i, WayRole.WOOFER, 62, 132, 4.5, 1));
      all.add(random.driver("sub_" + i, WayRole.SUBWOOFER, 33, 320, 10, 1 + i % 2));
    }
    List<OfferedAmplifier> more = random.offer(0, amplifiers).amplifiers();
    return with(
        new Offer(
            all,
            more,
            null,
            List.of(cable("thin", 4, "2.35", 48), cable("thick", 16, "7.9", 170)),
            null));
  }

  static PackageOptionsRequest with(Offer offer) {
    return PackageOptionsRequestBuilder.builder(bare())
        .offer(offer)
        .amplifierPlace(RandomOffers.place())
        .build();
  }

  private static OfferedCable cable(String id, double area, String price, double mass) {
    return new OfferedCable(
        id,
        CableBuilder.builder()
            .areaMm2(area)
            .material(ConductorMaterial.COPPER)
            .insulationTemperatureC(105.0)
            .build(),
        new BigDecimal(price),
        mass);
  }
}
