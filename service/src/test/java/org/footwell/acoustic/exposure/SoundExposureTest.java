package org.footwell.acoustic.exposure;

import static org.footwell.acoustic.exposure.Days.answer;
import static org.footwell.acoustic.exposure.Days.at;
import static org.footwell.acoustic.exposure.Days.day;
import static org.footwell.acoustic.exposure.Days.lasting;
import static org.footwell.acoustic.exposure.Days.result;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.exposure.SoundExposureRequest.Band;
import org.footwell.acoustic.exposure.SoundExposureRequest.Period;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.junit.jupiter.api.Test;

class SoundExposureTest {

  @Test
  void theHandExampleOfTheMethodPage() {
    SoundExposureResult result = result(day(at(94, 0.5), at(100, 0.1)));
    assertEquals(90, result.niosh().dosePercent(), 1e-9);
    assertEquals(84.54, result.niosh().twaDba(), 5e-3);
    assertEquals(0.025, result.niosh().remainingH(), 1e-9);
    assertEquals(15.88, result.cfr().dosePercent(), 5e-3);
    assertEquals(76.73, result.cfr().twaDba(), 5e-3);
    assertEquals(1.682, result.cfr().remainingH(), 5e-4);
    assertEquals(15.88, result.permissibleDosePercent(), 5e-3);
    assertEquals(84.50, result.eightHourLevelDba(), 5e-3);
    assertEquals(0.6, result.durationH(), 1e-12);
  }

  @Test
  void whatLiesBelowEightyDbaCountsInNoDose() {
    Answer<SoundExposureResult> answer = answer(day(at(79.9, 10)));
    assertEquals(0, answer.result().niosh().dosePercent());
    assertNull(answer.result().niosh().twaDba());
    assertNull(answer.result().cfr().remainingH());
    assertEquals(List.of("period-not-counted"), Answers.codes(answer));
  }

  @Test
  void aLevelJustBelowTheOneThatCountsIsToldFromIt() {
    String said = answer(day(at(79.999, 10))).findings().get(0).inFull();
    assertTrue(said.contains("At 79.999 dBA") && said.contains("below 80 dBA"), said);
  }

  @Test
  void thePermissibleExposureCountsFromNinetyDbaUp() {
    SoundExposureResult result = result(day(at(89, 4), at(90, 4)));
    assertEquals(50, result.permissibleDosePercent(), 1e-9);
    assertEquals(93.53, result.cfr().dosePercent(), 5e-3);
  }

  @Test
  void aSpectrumIsWeightedAtExactThirdOctaves() {
    List<Band> bands = List.of(new Band("sub", 31.5, 110.0));
    SoundExposureResult.Line line = result(day(bands, Days.of("sub", null, 1))).periods().get(0);
    assertEquals(70.5, line.levelDba(), 0.1);
    assertEquals(107.0, line.levelDbc(), 0.1);
    assertEquals(36.4, line.cMinusADb(), 0.1);
    List<Band> exact = List.of(new Band("sub", Math.pow(10, 1.5), 110.0));
    assertEquals(
        line.levelDba(),
        result(day(exact, Days.of("sub", null, 1))).periods().get(0).levelDba(),
        1e-9);
  }

  @Test
  void anUnweightedLevelRaisesItsSpectrum() {
    List<Band> bands = List.of(new Band("flat", 1000.0, 60.0), new Band("flat", 500.0, 60.0));
    SoundExposureResult day =
        result(day(bands, Days.of("flat", null, 1), Days.of("flat", 93.0103, 1)));
    assertEquals(30, day.periods().get(1).levelDba() - day.periods().get(0).levelDba(), 1e-4);
  }

  @Test
  void muchBassUnderALowFigureIsRemarked() {
    List<Band> bands = List.of(new Band("sub", 40.0, 110.0));
    assertTrue(Answers.codes(answer(day(bands, Days.of("sub", null, 1)))).contains("bass-heavy"));
    Period measured = lasting(1.0).levelDba(82.0).levelDbc(97.5).build();
    assertTrue(Answers.codes(answer(day(measured))).contains("bass-heavy"));
    Period even = lasting(1.0).levelDba(82.0).levelDbc(96.5).build();
    assertFalse(Answers.codes(answer(day(even))).contains("bass-heavy"));
  }

  @Test
  void everyLimitPassedIsFound() {
    assertEquals(List.of("dose-above-recommendation"), Answers.codes(answer(day(at(94, 1.01)))));
    assertEquals(
        List.of("dose-above-rule", "dose-above-recommendation", "action-level-reached"),
        Answers.codes(answer(day(at(91, 8)))));
    assertEquals(
        List.of("dose-above-recommendation", "action-level-reached"),
        Answers.codes(answer(day(at(86, 8)))));
    assertTrue(Answers.codes(answer(day(at(116, 0.01)))).contains("level-above-table"));
    assertTrue(Answers.codes(answer(day(at(140, 0.001)))).contains("level-above-ceiling"));
    Period shot = lasting(0.1).levelDba(80.0).peakLevelDbc(141.0).build();
    assertEquals(List.of("peak-above-limit"), Answers.codes(answer(day(shot))));
  }

  @Test
  void noSoundIsLouderInAThanTheWeightingsAllow() {
    // 20·lg(√((1e6 + 107.7²)·(1e6 + 737.9²))/1e6) = 1.938 dB
    Period possible = lasting(1.0).levelDba(88.0).levelDbc(86.1).build();
    assertFalse(Answers.codes(answer(day(possible))).contains("c-below-a"));
    Period wrong = lasting(1.0).levelDba(88.0).levelDbc(86.0).build();
    Finding found = answer(day(wrong)).findings().get(0);
    assertEquals("c-below-a", found.code());
    assertEquals("/periods/0/level_dbc", found.pointer());
    assertEquals(2, found.value(), 1e-9);
    assertEquals(1.938, found.limit(), 5e-4);
  }

  @Test
  void aPeakBelowItsOwnLevelIsFound() {
    Period byC = lasting(1.0).levelDba(75.0).levelDbc(88.0).peakLevelDbc(87.9).build();
    assertEquals(List.of("peak-below-level"), contradictions(byC));
    Period byA = lasting(1.0).levelDba(88.0).peakLevelDbc(87.9).build();
    assertEquals(List.of("peak-below-level"), contradictions(byA));
    Period crested = lasting(1.0).levelDba(75.0).levelDbc(88.0).peakLevelDbc(100.0).build();
    assertEquals(List.of(), contradictions(crested));
    List<Band> bands = List.of(new Band("sub", 40.0, 110.0));
    Period ofSpectrum = lasting(1.0).spectrum("sub").peakLevelDbc(90.0).build();
    assertTrue(Answers.codes(answer(day(bands, ofSpectrum))).contains("peak-below-level"));
  }

  private static List<String> contradictions(Period period) {
    return Answers.codes(answer(day(period))).stream()
        .filter(code -> code.equals("peak-below-level") || code.equals("c-below-a"))
        .toList();
  }

  @Test
  void aDriverIsNotSentToTrafficWithHearingProtection() {
    String said = answer(day(at(91, 8))).findings().get(0).inFull();
    assertTrue(said.contains("Turn it down") && said.contains("traffic"), said);
    assertFalse(said.contains("without hearing protection"), said);
  }

  @Test
  void aBandWhereNoWeightingIsStandardizedIsRemarked() {
    List<Band> bands = List.of(new Band("sub", 8.0, 80.0), new Band("sub", 10.0, 80.0));
    Answer<SoundExposureResult> answer = answer(day(bands, Days.of("sub", null, 1)));
    assertEquals(
        List.of("/bands/0/frequency_hz"),
        answer.findings().stream()
            .filter(finding -> finding.code().equals("band-outside-weighting"))
            .map(finding -> finding.pointer())
            .toList());
  }

  @Test
  void anUnweightedLevelAloneIsRefused() {
    List<Fault> faults =
        Answers.faults(Days.CALCULATION, day(lasting(1.0).levelDbSpl(120.0).build()));
    assertEquals(
        List.of("exactly-one-of /periods/0", "needed-beside /periods/0/spectrum"),
        faults.stream().map(fault -> fault.code() + " " + fault.pointer()).toList());
  }

  @Test
  void everythingAmissIsRefusedAtOnce() {
    List<Band> bands = List.of(new Band("a", 63.0, 90.0));
    SoundExposureRequest day =
        day(
            bands,
            lasting(10.0).build(),
            lasting(10.0).levelDba(90.0).spectrum("a").build(),
            lasting(4.0).levelDba(90.0).levelDbSpl(100.0).build(),
            lasting(1.0).spectrum("b").levelDbc(99.0).build());
    assertEquals(
        List.of(
            "/periods/0",
            "/periods/1",
            "/periods/2/spectrum",
            "/periods/3/level_dbc",
            "/periods/3/spectrum",
            "/periods"),
        Answers.faults(Days.CALCULATION, day).stream().map(Fault::pointer).toList());
  }

  @Test
  void aDayHas24HoursAndABandOneLevel() {
    List<Band> bands = List.of(new Band("a", 63.0, 90.0), new Band("a", 63.0957, 80.0));
    SoundExposureRequest day = day(bands, at(90, 20), at(80, 5));
    assertEquals(
        List.of("duplicate /bands/1/frequency_hz", "day-too-long /periods"),
        Answers.faults(Days.CALCULATION, day).stream()
            .map(fault -> fault.code() + " " + fault.pointer())
            .toList());
  }
}
