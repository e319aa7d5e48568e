package org.footwell.fitting.carpentry;

import java.util.List;
import org.footwell.RequestUnderTest;
import org.footwell.calculation.Fault;
import org.footwell.fitting.carpentry.BoxPanelsRequest.Measured;
import org.footwell.fitting.carpentry.BoxPanelsResult.Name;
import org.footwell.fitting.carpentry.BoxPanelsResult.Panel;

/** A box of 37.5 litre in 18 mm board, 500 mm wide and 300 mm high inside, to be changed. */
final class PanelsDraft extends RequestUnderTest<BoxPanelsRequest, BoxPanelsResult> {

  final BoxPanelsRequestBuilder box =
      BoxPanelsRequestBuilder.builder()
          .volumeL(37.5)
          .boardMm(18.0)
          .measured(Measured.INSIDE)
          .widthMm(500.0)
          .heightMm(300.0);

  PanelsDraft() {
    super(new BoxPanels());
  }

  @Override
  public BoxPanelsRequest request() {
    return box.build();
  }

  /** The one fault of a request that must be refused. */
  Fault fault() {
    List<Fault> faults = refusals();
    if (faults.size() != 1) {
      throw new AssertionError(faults);
    }
    return faults.get(0);
  }

  static Panel panel(BoxPanelsResult result, Name name) {
    return result.panels().stream().filter(p -> p.name() == name).findFirst().orElseThrow();
  }
}
