package org.footwell.vehicle.packages;

import java.util.List;
import java.util.Locale;
import org.footwell.Answers;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;

/** How low a package plays, against the half-power frequency of a closed box. */
class ReachOutsideChecks extends OutsideChecks {

  /** High, so that steps of half a hertz are small against it. */
  private static final double FS_HZ = 400;

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("package-options", "lowest_hz over fc by qtc", "closed-box-small.csv")
            // Above, the loudest is not the pass band, which a half-power frequency refers to.
            .rows(row -> row.number("qtc") <= 0.71)
            .printed("f3_over_fc")
            .computed(row -> ofQtc(row.number("qtc")))
            .within(0.002));
  }

  /** A driver with as much air behind it as its suspension is worth: fc and qtc are √2 times fs and qts. */
  private static double ofQtc(double qtc) {
    double qts = qtc / Math.sqrt(2);
    double qms = 5;
    String request =
        String.format(
            Locale.ROOT,
            """
            {"plan": {"vehicle": {"name": "bench", "cabin": {"length_m": 2}},
              "seats": [{"name": "driver", "position": {"x_m": 0, "y_m": 0, "z_m": 1}}],
              "new_parts": [{"id": "sub", "role": "subwoofer",
                "driver": {"rated_ohm": 4, "re_ohm": 3.4, "fs_hz": %s, "qms": %s, "qes": %s, "vas_l": 20,
                  "sensitivity": {"level_db_spl": 88, "basis": "two_point_eight_three_volt"},
                  "mass_g": 1, "price": 1}}],
              "drivers": [{"id": "bass", "part": "sub", "position": {"x_m": -1, "y_m": 0, "z_m": 1},
                "enclosure": {"closed": {"volume_l": 20}}}],
              "amplifiers": [{"id": "now", "mass_g": 1, "price": 1,
                "outputs": [{"id": "out", "rails": {"rail_v": 30, "supply_v": 14, "drop_v": 2}}]}],
              "channels": [{"id": "bass", "role": "subwoofer", "amplifier": "now", "outputs": ["out"],
                "network": "bass", "full_range": true}]},
             "slots": [{"name": "bass", "drivers": ["bass"]}], "offer": {}}
            """,
            FS_HZ,
            qms,
            1 / (1 / qts - 1 / qms));
    double reach =
        Answers.of(new PackageOptions(), SmallJob.of(request))
            .result()
            .packages()
            .get(0)
            .lowestHz();
    return reach / (FS_HZ * Math.sqrt(2));
  }
}
