package org.footwell.acoustic.crossover;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.crossover.CrossoverPlanRequest.ProgrammeKind;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;
import org.footwell.parts.WayRole;

/** A request to be changed: a midrange and a tweeter of round numbers at 100 dB SPL. */
final class TwoWays {
  final List<DraftWay> ways = new ArrayList<>(List.of(midrange(), tweeter()));
  final CrossoverPlanRequestBuilder plan =
      CrossoverPlanRequestBuilder.builder()
          .wantedLevelDbSpl(100.0)
          .programme(ProgrammeKind.PINK)
          .kind(Kind.BUTTERWORTH)
          .orders(List.of(2, 4));

  /** 4 ohm, 90 dB per watt, 50 W. */
  static DraftWay way(String id, double sdCm2) {
    return new DraftWay()
        .id(id)
        .sdCm2(sdCm2)
        .ratedOhm(4.0)
        .sensitivity(new Sensitivity(90.0, Basis.ONE_WATT))
        .continuousPowerW(50.0);
  }

  private static DraftWay midrange() {
    return way("midrange", 50).fsHz(120.0).qts(0.5).xmaxMm(3.0);
  }

  private static DraftWay tweeter() {
    return way("tweeter", 6).fsHz(900.0).qts(0.7).xmaxMm(0.3);
  }

  static DraftWay subwoofer() {
    return way("sub", 500).role(WayRole.SUBWOOFER).fsHz(30.0).qts(0.5).xmaxMm(12.0);
  }

  DraftWay low() {
    return ways.get(0);
  }

  DraftWay high() {
    return ways.get(ways.size() - 1);
  }

  private CrossoverPlanRequest request() {
    return plan.ways(ways.stream().map(DraftWay::build).toList()).build();
  }

  Answer<CrossoverPlanResult> answer() {
    return Answers.of(new CrossoverPlan(), request());
  }

  CrossoverPlanResult result() {
    return answer().result();
  }

  List<String> codes() {
    return Answers.codes(answer());
  }

  List<String> faults() {
    return Answers.faults(new CrossoverPlan(), request()).stream().map(Fault::pointer).toList();
  }
}
