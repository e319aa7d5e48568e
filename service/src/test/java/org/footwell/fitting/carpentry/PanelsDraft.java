package org.footwell.fitting.carpentry;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.fitting.carpentry.BoxPanelsRequest.Measured;
import org.footwell.fitting.carpentry.BoxPanelsResult.Name;
import org.footwell.fitting.carpentry.BoxPanelsResult.Panel;

/** A request to be changed: 37.5 litre, 18 mm board, inside 500 mm wide and 300 mm high. */
final class PanelsDraft {
  double net = 37.5;
  Double driver;
  Double bracing;
  Double port;
  double board = 18;
  Double front;
  Measured measured = Measured.INSIDE;
  Double width = 500.0;
  Double height = 300.0;
  Double depth;
  Double heightPerWidth;
  Double depthPerWidth;
  Double topDepth;
  Double angle;
  Double cutout;
  Double driverDepth;
  Double density;

  BoxPanelsRequest request() {
    return BoxPanelsRequestBuilder.builder()
        .netVolumeL(net)
        .driverDisplacementL(driver)
        .bracingL(bracing)
        .portDisplacementL(port)
        .boardMm(board)
        .frontBoardMm(front)
        .measured(measured)
        .widthMm(width)
        .heightMm(height)
        .depthMm(depth)
        .heightPerWidth(heightPerWidth)
        .depthPerWidth(depthPerWidth)
        .topDepthMm(topDepth)
        .backAngleDeg(angle)
        .driverCutoutMm(cutout)
        .driverDepthMm(driverDepth)
        .boardDensityKgPerM3(density)
        .build();
  }

  Answer<BoxPanelsResult> answer() {
    return Answers.of(new BoxPanels(), request());
  }

  BoxPanelsResult result() {
    return answer().result();
  }

  Fault fault() {
    List<Fault> faults = Answers.faults(new BoxPanels(), request());
    if (faults.size() != 1) {
      throw new AssertionError(faults);
    }
    return faults.get(0);
  }

  static Panel panel(BoxPanelsResult result, Name name) {
    return result.panels().stream().filter(p -> p.name() == name).findFirst().orElseThrow();
  }
}
