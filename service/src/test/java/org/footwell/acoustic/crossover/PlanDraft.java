package org.footwell.acoustic.crossover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.crossover.CrossoverPlanRequest.ProgrammeKind;
import org.footwell.acoustic.crossover.CrossoverPlanRequest.Protection;
import org.footwell.acoustic.crossover.CrossoverWay.WayRole;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;

/** A request to be changed: a midrange and a tweeter of round numbers at 100 dB SPL. */
final class PlanDraft {
  final List<WayDraft> ways = new ArrayList<>(List.of(midrange(), tweeter()));
  Double wantedLevelDbSpl = 100.0;
  Double distanceM;
  Double crestFactorDb;
  ProgrammeKind programme = ProgrammeKind.PINK;
  Double pinkFromHz;
  Double pinkToHz;
  Double totalPowerW;
  Double beamingKa;
  Double spacingWavelengths;
  Double subwooferHighestHz;
  Kind kind = Kind.BUTTERWORTH;
  List<Integer> orders = List.of(2, 4);
  Double processorLowestHz;
  Double processorHighestHz;
  Double temperatureC;
  Protection protection;

  static WayDraft midrange() {
    WayDraft way = new WayDraft("midrange", 50);
    way.fsHz = 120.0;
    way.qts = 0.5;
    way.xmaxMm = 3.0;
    return way;
  }

  static WayDraft tweeter() {
    WayDraft way = new WayDraft("tweeter", 6);
    way.fsHz = 900.0;
    way.qts = 0.7;
    way.xmaxMm = 0.3;
    return way;
  }

  static WayDraft subwoofer() {
    WayDraft way = new WayDraft("sub", 500);
    way.role = WayRole.SUBWOOFER;
    way.fsHz = 30.0;
    way.qts = 0.5;
    way.xmaxMm = 12.0;
    return way;
  }

  WayDraft low() {
    return ways.get(0);
  }

  WayDraft high() {
    return ways.get(ways.size() - 1);
  }

  PlanDraft orders(Integer... some) {
    orders = Arrays.asList(some);
    return this;
  }

  CrossoverPlanRequest request() {
    return CrossoverPlanRequestBuilder.builder()
        .ways(ways.stream().map(WayDraft::way).toList())
        .wantedLevelDbSpl(wantedLevelDbSpl)
        .distanceM(distanceM)
        .crestFactorDb(crestFactorDb)
        .programme(programme)
        .pinkFromHz(pinkFromHz)
        .pinkToHz(pinkToHz)
        .totalPowerW(totalPowerW)
        .beamingKa(beamingKa)
        .spacingWavelengths(spacingWavelengths)
        .subwooferHighestHz(subwooferHighestHz)
        .kind(kind)
        .orders(orders)
        .processorLowestHz(processorLowestHz)
        .processorHighestHz(processorHighestHz)
        .temperatureC(temperatureC)
        .protection(protection)
        .build();
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

  /** One way to be changed: 4 ohm, 90 dB per watt, 50 W. */
  static final class WayDraft {
    String id;
    WayRole role;
    Double sdCm2;
    Double fsHz;
    Double qts;
    Double fcHz;
    Double xmaxMm;
    Double ratedOhm = 4.0;
    Double reOhm;
    Sensitivity sensitivity = new Sensitivity(90.0, Basis.ONE_WATT);
    Double continuousPowerW = 50.0;
    Double lowerLimitHz;
    Double upperLimitHz;
    Double resonanceMultiple;
    Double spacingToNextMm;

    WayDraft(String id, double sdCm2) {
      this.id = id;
      this.sdCm2 = sdCm2;
    }

    CrossoverWay way() {
      return CrossoverWayBuilder.builder()
          .id(id)
          .role(role)
          .sdCm2(sdCm2)
          .fsHz(fsHz)
          .qts(qts)
          .fcHz(fcHz)
          .xmaxMm(xmaxMm)
          .ratedOhm(ratedOhm)
          .reOhm(reOhm)
          .sensitivity(sensitivity)
          .continuousPowerW(continuousPowerW)
          .lowerLimitHz(lowerLimitHz)
          .upperLimitHz(upperLimitHz)
          .resonanceMultiple(resonanceMultiple)
          .spacingToNextMm(spacingToNextMm)
          .build();
    }
  }
}
