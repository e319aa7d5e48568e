package org.footwell.fitting.carpentry;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class CarpentryOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        check("depth_mm", r -> r.inside().depthMm()),
        check("outside_l", BoxPanelsResult::outsideVolumeL),
        check("outside_depth_mm", r -> r.outside().depthMm()),
        check("outside_top_depth_mm", r -> r.outside().topDepthMm()));
  }

  private static OutsideCheck check(String column, ToDoubleFunction<BoxPanelsResult> value) {
    return OutsideCheck.of("box-panels", column, "scipy-box-panels.csv")
        .printed(column)
        .computed(row -> value.applyAsDouble(box(row)))
        .withinRelative(1e-8);
  }

  private static BoxPanelsResult box(Row row) {
    PanelsDraft draft = new PanelsDraft();
    draft
        .box
        .volumeL(row.number("inside_l"))
        .boardMm(row.number("board_mm"))
        .frontBoardMm(row.number("front_board_mm"))
        .widthMm(row.number("width_mm"))
        .heightMm(row.number("height_mm"));
    double top = row.number("top_depth_mm");
    draft.box.topDepthMm(top == row.number("depth_mm") ? null : Double.valueOf(top));
    return draft.result();
  }
}
