package org.footwell.fitting.comparison;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.footwell.RequestUnderTest;
import org.footwell.calculation.Finding;
import org.footwell.fitting.comparison.DriverComparisonRequest.AddedItem;
import org.footwell.fitting.comparison.DriverComparisonResult.PositionLine;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;

/** A comparison to be changed. */
final class ComparisonDraft
    extends RequestUnderTest<DriverComparisonRequest, DriverComparisonResult> {

  private final List<PositionDraft> positions;
  private final List<AddedItem> additions = new ArrayList<>();
  final DriverComparisonRequestBuilder comparison =
      DriverComparisonRequestBuilder.builder().additions(additions);

  private ComparisonDraft(PositionDraft... positions) {
    super(new DriverComparison());
    this.positions = List.of(positions);
  }

  static ComparisonDraft of(PositionDraft... positions) {
    return new ComparisonDraft(positions);
  }

  ComparisonDraft with(String name, MountedAt at, Double massG, String price) {
    additions.add(new AddedItem(name, at, massG, price == null ? null : new BigDecimal(price)));
    return this;
  }

  @Override
  public DriverComparisonRequest request() {
    return comparison.positions(positions.stream().map(PositionDraft::position).toList()).build();
  }

  /** The sentence of the one finding with a code. */
  String said(String code) {
    List<Finding> said = findings(code);
    if (said.size() != 1) {
      throw new AssertionError(said.size() + " findings are " + code);
    }
    return said.get(0).inFull();
  }

  PositionLine line(int index) {
    return result().positions().get(index);
  }
}
