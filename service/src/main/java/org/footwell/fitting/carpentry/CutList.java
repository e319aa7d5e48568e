package org.footwell.fitting.carpentry;

import java.util.List;
import org.footwell.fitting.carpentry.BoxPanelsResult.Name;
import org.footwell.fitting.carpentry.BoxPanelsResult.Panel;
import org.footwell.fitting.carpentry.BoxPanelsResult.Size;

/**
 * The panels of a box: the sides cover the ends of all others; top and bottom lie on front and back.
 * Where the back leans, its edges and the back edges of top and bottom are mitred by its angle.
 */
final class CutList {

  private static final double CUBIC_MM_PER_M3 = 1e9;

  private final Carcass box;
  private final double board;
  private final double front;
  private final double density;

  CutList(Carcass box, BoxPanelsRequest q) {
    this.box = box;
    board = q.boardMm();
    front = q.front();
    density = q.boardDensityKgPerM3();
  }

  List<Panel> panels() {
    Size in = box.inside();
    Size out = box.outside();
    double mitre = board * box.lean();
    double back = in.heightMm() * box.stretch();
    Double angle = box.lean() == 0 ? null : box.angleDeg();
    Double taper = box.lean() == 0 ? null : out.topDepthMm();
    double sideArea = out.heightMm() * (out.depthMm() + out.topDepthMm()) / 2;
    double across = in.widthMm();
    return List.of(
        new Panel(
            Name.SIDE, 2, out.heightMm(), out.depthMm(), taper, board, null, kg(sideArea * board)),
        // The top's lower face is the longer one, the bottom's upper face the shorter one.
        panel(Name.TOP, out.topDepthMm() + mitre, board, angle, out.topDepthMm() + mitre / 2),
        panel(Name.BOTTOM, out.depthMm(), board, angle, out.depthMm() - mitre / 2),
        new Panel(
            Name.FRONT,
            1,
            across,
            in.heightMm(),
            null,
            front,
            null,
            kg(across * in.heightMm() * front)),
        // Both faces are as long; one is pushed along the other by the mitre.
        panel(Name.BACK, back + mitre, board, angle, back));
  }

  /** Area of the blanks, m². */
  static double areaM2(List<Panel> panels) {
    return panels.stream().mapToDouble(p -> p.count() * p.lengthMm() * p.widthMm() / 1e6).sum();
  }

  private Panel panel(Name name, double width, double thickness, Double angle, double meanWidth) {
    double across = box.inside().widthMm();
    return new Panel(
        name, 1, across, width, null, thickness, angle, kg(across * meanWidth * thickness));
  }

  private double kg(double cubicMm) {
    return density * cubicMm / CUBIC_MM_PER_M3;
  }
}
