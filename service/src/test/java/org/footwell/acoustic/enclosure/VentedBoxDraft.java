package org.footwell.acoustic.enclosure;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.BoxPortBuilder;
import org.footwell.parts.DriverBuilder;

/** A request to be changed: a box to be found at 1 V, with a port of 100 mm. */
final class VentedBoxDraft {
  final DriverBuilder driver;
  final BoxBuilder box = BoxBuilder.builder();
  final BoxPortBuilder port = BoxPortBuilder.builder().diameterMm(100.0);
  final VentedBoxRequestBuilder played = VentedBoxRequestBuilder.builder().voltageV(1.0);

  VentedBoxDraft() {
    this(BoxDrafts.driver());
  }

  VentedBoxDraft(DriverBuilder driver) {
    this.driver = driver;
  }

  VentedBoxDraft tuned(double volumeL, double tuningHz) {
    box.volumeL(volumeL).fbHz(tuningHz);
    return this;
  }

  VentedBoxDraft qts(double qts) {
    BoxDrafts.qts(driver, qts);
    return this;
  }

  VentedBoxDraft at(double... hz) {
    played.frequencies(BoxDrafts.only(hz));
    return this;
  }

  VentedBoxDraft range(double from, double to) {
    played.frequencies(BoxDrafts.range(from, to));
    return this;
  }

  VentedBoxRequest request() {
    return played.driver(driver.build()).box(box.build()).port(port.build()).build();
  }

  Answer<VentedBoxResult> answer() {
    return Answers.of(new VentedBox(), request());
  }

  VentedBoxResult result() {
    return answer().result();
  }

  String says(String code) {
    return BoxDrafts.said(answer(), code);
  }

  List<Fault> faults() {
    return Answers.faults(new VentedBox(), request());
  }
}
