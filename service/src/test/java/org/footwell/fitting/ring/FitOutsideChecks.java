package org.footwell.fitting.ring;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.footwell.fitting.ring.drawing.DrawnRing;
import org.footwell.fitting.ring.drawing.Oval;
import org.footwell.fitting.ring.drawing.RingSolid;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable;
import org.footwell.reference.ReferenceTable.Row;

class FitOutsideChecks extends OutsideChecks {

  private static final String READERS = "ring-readers.csv";

  /** Where holes break an edge the drawing shows them whole, so that only the solid compares. */
  private static final String BROKEN = "holes-break-edge";

  private final Map<String, AdapterRingResult> rings = RingCases.results();
  private final Map<String, DrawnRing> drawn = RingCases.all();

  static List<Row> readers() {
    return ReferenceTable.load(READERS).rows();
  }

  private AdapterRingResult ring(Row row) {
    return rings.get(row.text("ring"));
  }

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("adapter-ring", "volume of the solid, mm3", READERS)
            .printed("volume_mm3")
            .computed(row -> RingSolid.of(drawn.get(row.text("ring"))).volume())
            .withinRelative(1e-5),
        OutsideCheck.of("adapter-ring", "volume_cm3, curves drawn to 0.02 mm", READERS)
            .rows(row -> !row.text("ring").equals("coarse"))
            .printed(row -> row.number("volume_mm3") / 1000)
            .computed(row -> ring(row).volumeCm3())
            .withinRelative(0.002),
        OutsideCheck.of("adapter-ring", "face_area_cm2 of the drawing", READERS)
            .rows(row -> !row.text("ring").equals(BROKEN))
            .printed(row -> row.number("dxf_face_mm2") / 100)
            .computed(row -> ring(row).faceAreaCm2())
            .withinRelative(0.002),
        OutsideCheck.of("adapter-ring", "perimeter of an ellipse, mm", "ellipse-perimeters.csv")
            .printed("perimeter_mm")
            .computed(row -> Oval.PERIMETER.at(row.number("width_mm"), row.number("height_mm")))
            .withinRelative(5e-5),
        OutsideCheck.of("adapter-ring", "pilot over screw diameter", "screw-bosses.csv")
            .printed("hole_over_screw")
            .computed(row -> RingMaterial.Kind.PLASTIC.pilotShare)
            .within(0.021),
        OutsideCheck.of("adapter-ring", "pilot wall over screw diameter", "screw-bosses.csv")
            .printed(row -> (row.number("boss_over_screw") - row.number("hole_over_screw")) / 2)
            .computed(row -> RingRules.PILOT_WALL.at(1, row.number("hole_over_screw")))
            .within(1e-9),
        OutsideCheck.of("adapter-ring", "screw engagement, screw diameters", "screw-bosses.csv")
            .printed("engagement_over_screw")
            .computed(row -> RingThickness.FOR_SCREWS.at(1))
            .within(0.005),
        OutsideCheck.of("adapter-ring", "softening, degrees Celsius", "glass-transitions.csv")
            .printed("glass_transition_c")
            .computed(row -> material(row).softeningC)
            .within(2.5),
        OutsideCheck.of("adapter-ring", "density, kg/m³", "plastic-densities.csv")
            .printed(row -> (row.number("from_g_per_cm3") + row.number("to_g_per_cm3")) * 500)
            .computed(row -> material(row).densityKgPerM3)
            .within(30));
  }

  private static RingMaterial material(Row row) {
    return RingMaterial.valueOf(row.text("material").toUpperCase(Locale.ROOT));
  }
}
