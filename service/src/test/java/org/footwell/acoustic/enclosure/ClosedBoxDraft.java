package org.footwell.acoustic.enclosure;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.Box;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.DriverBuilder;

/** A request to be changed: 10 litre, closed, at 1 V. A baffle takes the place of the box. */
final class ClosedBoxDraft {
  final DriverBuilder driver;
  final BoxBuilder box = BoxBuilder.builder().volumeL(10.0);
  final ClosedBoxRequestBuilder played = ClosedBoxRequestBuilder.builder().voltageV(1.0);

  ClosedBoxDraft() {
    this(BoxDrafts.driver());
  }

  ClosedBoxDraft(DriverBuilder driver) {
    this.driver = driver;
  }

  ClosedBoxDraft qts(double qts) {
    BoxDrafts.qts(driver, qts);
    return this;
  }

  ClosedBoxDraft at(double... hz) {
    played.frequencies(BoxDrafts.only(hz));
    return this;
  }

  ClosedBoxDraft range(double from, double to) {
    played.frequencies(BoxDrafts.range(from, to));
    return this;
  }

  ClosedBoxRequest request() {
    Box volume = played.build().baffle() == null ? box.build() : null;
    return played.driver(driver.build()).box(volume).build();
  }

  Answer<ClosedBoxResult> answer() {
    return Answers.of(new ClosedBox(), request());
  }

  ClosedBoxResult result() {
    return answer().result();
  }

  String says(String code) {
    return BoxDrafts.said(answer(), code);
  }

  List<Fault> faults() {
    return Answers.faults(new ClosedBox(), request());
  }
}
