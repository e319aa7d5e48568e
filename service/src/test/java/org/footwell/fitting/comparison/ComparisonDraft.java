package org.footwell.fitting.comparison;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.fitting.comparison.DriverComparisonRequest.AddedItem;
import org.footwell.fitting.comparison.DriverComparisonResult.PositionLine;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;

/** A comparison to be changed. */
final class ComparisonDraft {
  final List<PositionDraft> positions;
  final List<AddedItem> additions = new ArrayList<>();
  String currency;
  Double heavyG;
  Double heavyDoorsG;
  Double payloadLeftG;

  private ComparisonDraft(PositionDraft... positions) {
    this.positions = new ArrayList<>(Arrays.asList(positions));
  }

  static ComparisonDraft of(PositionDraft... positions) {
    return new ComparisonDraft(positions);
  }

  ComparisonDraft with(String name, MountedAt at, Double massG, String price) {
    additions.add(new AddedItem(name, at, massG, price == null ? null : new BigDecimal(price)));
    return this;
  }

  DriverComparisonRequest request() {
    return new DriverComparisonRequest(
        positions.stream().map(PositionDraft::position).toList(),
        additions,
        currency,
        heavyG,
        heavyDoorsG,
        payloadLeftG,
        null);
  }

  Answer<DriverComparisonResult> answer() {
    return Answers.of(new DriverComparison(), request());
  }

  DriverComparisonResult result() {
    return answer().result();
  }

  List<String> codes() {
    return Answers.codes(answer());
  }

  /** The sentence of the one finding with a code. */
  String said(String code) {
    List<String> texts =
        answer().findings().stream()
            .filter(finding -> finding.code().equals(code))
            .map(finding -> finding.text())
            .toList();
    if (texts.size() != 1) {
      throw new AssertionError(texts.size() + " findings are " + code);
    }
    return texts.get(0);
  }

  PositionLine line(int index) {
    return result().positions().get(index);
  }
}
