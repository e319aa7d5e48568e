package org.footwell.fitting.carpentry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.fitting.carpentry.BoxPanelsRequest.Measured;

class BoxPanelsProperties {

  private static PanelsDraft wedge(double net, double board, double front, double angle) {
    PanelsDraft draft = new PanelsDraft();
    draft.box.volumeL(net).boardMm(board).frontBoardMm(front).backAngleDeg(angle);
    return draft;
  }

  @Property(tries = 200)
  void thePanelsTogetherAreWhatIsBetweenOutsideAndInside(
      @ForAll @DoubleRange(min = 25, max = 100) double net,
      @ForAll @DoubleRange(min = 6, max = 30) double board,
      @ForAll @DoubleRange(min = 6, max = 50) double front,
      @ForAll @DoubleRange(min = 0.5, max = 25) double angle) {
    BoxPanelsResult r = wedge(net, board, front, angle).result();
    double panels = r.panels().stream().mapToDouble(p -> p.count() * p.massKg()).sum();
    assertEquals(r.massKg(), panels, 1e-9 * panels);
  }

  @Property(tries = 200)
  void insideAndOutsideDimensionsMakeTheSameBox(
      @ForAll @DoubleRange(min = 25, max = 100) double net,
      @ForAll @DoubleRange(min = 6, max = 30) double board,
      @ForAll @DoubleRange(min = 6, max = 50) double front,
      @ForAll @DoubleRange(min = 0.5, max = 25) double angle) {
    PanelsDraft draft = wedge(net, board, front, angle);
    BoxPanelsResult inside = draft.result();
    draft
        .box
        .measured(Measured.OUTSIDE)
        .widthMm(inside.outside().widthMm())
        .heightMm(inside.outside().heightMm());
    BoxPanelsResult outside = draft.result();
    assertEquals(inside.inside().depthMm(), outside.inside().depthMm(), 1e-6);
    assertEquals(inside.outside().topDepthMm(), outside.outside().topDepthMm(), 1e-6);
  }

  @Property(tries = 200)
  void theBoxHoldsWhatWasAskedWhicheverDimensionIsOpen(
      @ForAll @DoubleRange(min = 25, max = 60) double net,
      @ForAll @DoubleRange(min = 1, max = 20) double angle) {
    PanelsDraft draft = wedge(net, 18, 18, angle);
    BoxPanelsResult first = draft.result();
    assertEquals(net, first.grossVolumeL(), 1e-7 * net);
    draft.box.depthMm(first.inside().depthMm()).widthMm(null);
    assertEquals(500, draft.result().inside().widthMm(), 1e-5);
    draft.box.widthMm(500.0).heightMm(null);
    assertEquals(300, draft.result().inside().heightMm(), 1e-4);
  }
}
