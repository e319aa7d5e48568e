package org.footwell.factory.sum;

import java.util.ArrayList;
import java.util.List;
import org.footwell.RequestUnderTest;
import org.footwell.factory.sum.SignalSumRequest.Output;
import org.footwell.factory.sum.SignalSumRequest.ResponsePoint;
import org.footwell.parts.Filter;
import org.footwell.signal.EqualiserSection;
import org.footwell.signal.SectionKind;

/** Outputs whose signals are added up. */
final class SumBench extends RequestUnderTest<SignalSumRequest, SignalSumResult> {

  final List<Output> outputs = new ArrayList<>();
  private final List<EqualiserSection> sections = new ArrayList<>();
  private final List<ResponsePoint> points = new ArrayList<>();
  final SignalSumRequestBuilder draft =
      SignalSumRequestBuilder.builder().outputs(outputs).sections(sections).points(points);

  SumBench() {
    super(new SignalSum());
  }

  /** An output that carries no sounds of the vehicle, to be described further. */
  static SignalSumRequestOutputBuilder output(String id) {
    return SignalSumRequestOutputBuilder.builder().id(id).carries(List.of());
  }

  static Filter filter(Filter.Kind kind, int order, double hz) {
    return new Filter(kind, order, hz, null);
  }

  /** A woofer and a tweeter output of the fourth order at a frequency. */
  static SumBench pair(double hz) {
    Filter filter = filter(Filter.Kind.LINKWITZ_RILEY, 4, hz);
    return new SumBench()
        .with(output("woofer").lowPass(filter))
        .with(output("tweeter").highPass(filter));
  }

  SumBench with(SignalSumRequestOutputBuilder output) {
    outputs.add(output.build());
    return this;
  }

  SumBench section(String output, SectionKind kind, double hz, Double q, Double gain) {
    sections.add(new EqualiserSection(output, kind, hz, q, gain));
    return this;
  }

  SumBench point(String output, double hz, double db, double degrees) {
    points.add(new ResponsePoint(output, hz, db, degrees));
    return this;
  }

  @Override
  public SignalSumRequest request() {
    return draft.build();
  }
}
