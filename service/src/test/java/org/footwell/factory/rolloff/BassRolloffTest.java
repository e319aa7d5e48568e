package org.footwell.factory.rolloff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.factory.rolloff.BassRolloffRequest.BandAtStep;
import org.footwell.factory.rolloff.BassRolloffRequest.DriverLevel;
import org.footwell.factory.rolloff.BassRolloffRequest.Headroom;
import org.footwell.factory.rolloff.BassRolloffResult.BandGain;
import org.footwell.factory.rolloff.BassRolloffResult.HeldBy;
import org.footwell.factory.rolloff.BassRolloffResult.StepLoss;
import org.footwell.parts.DriverBuilder;
import org.footwell.recording.Recording;
import org.junit.jupiter.api.Test;

class BassRolloffTest {

  private static NoiseTable cuts() {
    return new NoiseTable().cut(10, 0).cut(20, 0).cut(30, 4).cut(40, 8);
  }

  @Test
  void theStepTheLossAndTheFrequencyAreFound() {
    BassRolloffResult result = cuts().result();
    assertEquals(10, result.referenceStep());
    assertEquals(30, result.onsetStep());
    assertEquals(8, result.largestLossDb(), 1e-9);
    // Between 100 Hz (8 dB) and 125.9 Hz (0 dB), 1 dB is 7/8 of the way: 100·1.2589^0.875.
    assertEquals(100 * Math.pow(10, 0.0875), result.largestLossBelowHz(), 1e-9);
    assertEquals(4, result.steps().get(2).lossDb(), 1e-9);
    assertEquals(-10, result.steps().get(3).referenceLevelDb(), 1e-9);
    assertFalse(result.steps().get(1).behind());
    assertNull(result.steps().get(1).belowHz());
    assertEquals(40, result.fullUpToStep());
    assertNull(result.endsAtStep());
  }

  @Test
  void aShelfIsFoundAgainByItsGainAndFrequency() {
    NoiseTable table = new NoiseTable().shelf(10, 0, 80).shelf(20, -6, 80).shelf(30, -12, 100);
    StepLoss second = table.step(1);
    assertEquals(6, second.shelfGainDb(), 0.15);
    assertEquals(80, second.shelfFrequencyHz(), 2);
    assertEquals(0, second.shelfErrorDb(), 0.1);
    StepLoss third = table.step(2);
    assertEquals(12, third.shelfGainDb(), 0.3);
    assertEquals(100, third.shelfFrequencyHz(), 3);
    assertEquals(second.shelfGainDb(), second.allowedGainDb());
  }

  @Test
  void aShelfHasHalfItsGainAtItsFrequencyAndAllOfItFarBelow() {
    assertEquals(3, LowShelf.levelDb(6, 1), 1e-12);
    assertEquals(6, LowShelf.levelDb(6, 1e-4), 1e-6);
    assertEquals(0, LowShelf.levelDb(6, 1e4), 1e-6);
    assertEquals(-LowShelf.levelDb(9, 0.7), LowShelf.levelDb(-9, 0.7), 1e-12);
  }

  @Test
  void theHeadroomOfAStepShrinksAsTheBassGetsLouder() {
    NoiseTable table = cuts();
    // At 20 bass stands at -30; with 16 dB of room the ceiling is -14. At 30 it is at -24, gain 4
    // goes; at 40 it is at -18: 4 of 8 dB.
    table.draft.headroom(new Headroom(20, 16.0));
    BassRolloffResult result = table.result();
    assertEquals(HeldBy.NOTHING, result.steps().get(2).heldBy());
    assertEquals(HeldBy.HEADROOM, result.steps().get(3).heldBy());
    BandGain deepest =
        result.bands().stream().filter(band -> band.volumeStep() == 40).findFirst().orElseThrow();
    assertEquals(8, deepest.lossDb(), 1e-9);
    assertEquals(4, deepest.allowedGainDb(), 1e-9);
    assertEquals(
        result.steps().get(3).shelfGainDb() / 2, result.steps().get(3).allowedGainDb(), 1e-9);
    assertEquals(30, result.fullUpToStep());
    assertNull(result.endsAtStep());
    assertEquals(
        List.of("compensation-ends", "bass-falls-behind", "shelf-fits-badly", "limits-unknown"),
        table.codes());
  }

  @Test
  void withoutRoomCompensatingMustHaveEnded() {
    NoiseTable table = cuts();
    // Bands above 100 Hz reach -10 at step 40 too: with 20 dB they just fit, with bass at -18.
    table.draft.headroom(new Headroom(40, 0.0));
    BassRolloffResult result = table.result();
    assertEquals(40, result.endsAtStep());
    assertEquals(0, result.steps().get(3).allowedGainDb(), 1e-9);
    assertEquals(30, result.fullUpToStep());
    table.draft.headroom(new Headroom(30, 0.0));
    assertTrue(table.codes().contains("limit-already-passed"));
    assertEquals(30, table.result().endsAtStep());
    assertEquals(20, table.result().fullUpToStep());
  }

  @Test
  void displacementOfAllBandsTogetherHoldsTheGain() {
    NoiseTable table = new NoiseTable();
    for (int step : new int[] {10, 20}) {
      for (double band : NoiseTable.BANDS) {
        boolean bass = band >= 31 && band <= 51;
        table.level(step, band, step - 50 - (bass && step == 20 ? 6 : 0));
      }
    }
    table
        .draft
        .driver(DriverBuilder.builder().sdCm2(500.0).xmaxMm(8.0).build())
        .driverLevel(new DriverLevel(20, 50.0, 80.0, 12.0));
    StepLoss held = table.step(1);
    assertEquals(HeldBy.DISPLACEMENT, held.heldBy());
    assertEquals(8, held.displacementMm(), 1e-9);
    // At 50.12 Hz 80 dB SPL take 0.2 Pa·2π·√2/(1.2041·(2π·50.12)²·0.05) m one way.
    double w = 2 * Math.PI * 1000 * Math.pow(10, -1.3);
    double one = 0.2 * 2 * Math.PI * Math.sqrt(2) / (1.2041 * w * w * 0.05) * 1000;
    // Without a gain all bands stand at 76 dB; displacement goes with 1/f².
    double squares = 0;
    for (int third = -16; third <= -4; third++) {
      double x = one * Math.pow(10, -0.2) * Math.pow(10, -2 * (third + 13) / 10.0);
      squares += x * x / 2;
    }
    assertEquals(Math.sqrt(squares) * Math.pow(10, 0.6), table.step(0).displacementMm(), 1e-4);
    table
        .draft
        .driver(DriverBuilder.builder().sdCm2(500.0).xmaxMm(50.0).build())
        .driverLevel(new DriverLevel(20, 50.0, 80.0, null));
    assertEquals(HeldBy.NOTHING, table.step(1).heldBy());
    table
        .draft
        .driver(DriverBuilder.builder().sdCm2(500.0).xmaxMm(0.01).build())
        .driverLevel(new DriverLevel(20, 50.0, 80.0, null));
    assertTrue(table.codes().contains("limit-already-passed"));
  }

  @Test
  void theMostGainOfAnEqualiserHolds() {
    NoiseTable table = cuts();
    table.draft.mostGainDb(6.0);
    StepLoss held = table.step(3);
    assertEquals(HeldBy.MOST_GAIN, held.heldBy());
    assertEquals(0.75 * held.shelfGainDb(), held.allowedGainDb(), 1e-9);
  }

  @Test
  void aLoudnessFunctionIsToldFromARollOff() {
    NoiseTable table = new NoiseTable().cut(10, -6).cut(20, -3).cut(30, 0).cut(40, 0);
    assertTrue(table.codes().contains("bass-falls-from-the-start"));
    table.draft.referenceStep(30);
    BassRolloffResult result = table.result();
    assertNull(result.onsetStep());
    assertTrue(table.codes().containsAll(List.of("bass-ahead", "bass-keeps-up")));
    assertTrue(result.steps().get(0).shelfGainDb() < -5);
    assertEquals(result.steps().get(0).shelfGainDb(), result.steps().get(0).allowedGainDb());
  }

  @Test
  void stepsThatDoNotRiseAreSaid() {
    NoiseTable table = new NoiseTable().cut(10, 0);
    for (double band : NoiseTable.BANDS) {
      table.level(20, band, -40);
    }
    assertEquals(List.of("midrange-does-not-rise", "bass-keeps-up"), table.codes());
  }

  @Test
  void aLargeConeIsSaid() {
    NoiseTable table = cuts();
    table
        .draft
        .driver(DriverBuilder.builder().sdCm2(1500.0).xmaxMm(10.0).build())
        .driverLevel(new DriverLevel(20, 50.0, 80.0, null));
    assertTrue(table.codes().contains("cone-too-large-for-model"));
  }

  @Test
  void capturesOfNoiseAreTheOtherWayIn() {
    NoiseTable table = new NoiseTable();
    table.capture(10, 60, 0, 1, 1).capture(20, 60, 6, 1, 2).capture(30, 60, 12, 0.25, 3);
    table.draft.thresholdDb(1.5);
    BassRolloffResult result = table.result();
    assertEquals(30, result.onsetStep());
    assertEquals(
        12,
        result.steps().get(2).referenceLevelDb() - result.steps().get(0).referenceLevelDb(),
        0.3);
    // H = 1 - 0.75/(1 + jf/60): at 25 Hz 20·lg of √((0.25² + x²)/(1 + x²)), x = 25.1/60.
    double x = 25.12 / 60;
    double exact = 10 * Math.log10((1 + x * x) / (0.0625 + x * x));
    BandGain lowest =
        result.bands().stream().filter(b -> b.volumeStep() == 30).findFirst().orElseThrow();
    assertEquals(exact, lowest.lossDb(), result.steps().get(2).uncertaintyDb());
    // 5.8 Hz for a minute: 2·√2·4.343/√348.
    assertEquals(0.66, result.steps().get(2).uncertaintyDb(), 0.005);
  }

  @Test
  void shortCapturesSayHowLongTheyShouldBe() {
    NoiseTable table = new NoiseTable().capture(10, 3, 0, 1, 1).capture(20, 3, 6, 1, 2);
    assertEquals(List.of("capture-too-short-for-bass", "bass-keeps-up"), table.codes());
  }

  @Test
  void capturesThatTellNothingAreRefused() {
    NoiseTable twice = new NoiseTable().capture(10, 2, 0, 1, 1).capture(10, 2, 0, 1, 1);
    twice.capture(20, 2, 0, 1, 1);
    assertEquals(List.of("/captures/1/volume_step duplicate"), twice.faults());
    NoiseTable brief = new NoiseTable().capture(10, 0.3, 0, 1, 1).capture(20, 0.3, 0, 1, 1);
    assertEquals(
        List.of(
            "/captures/0/recording capture-shorter-than-band",
            "/captures/1/recording capture-shorter-than-band"),
        brief.faults());
    NoiseTable silent = new NoiseTable().capture(10, 2, -300, 1, 1).capture(20, 2, 0, 1, 1);
    assertEquals(List.of("/captures/0/recording recording-silent"), silent.faults());
    NoiseTable high = new NoiseTable().capture(10, 2, 0, 1, 1);
    high.draft.referenceToHz(10_000.0);
    assertEquals(
        List.of("/captures/0/recording bands-above-half-rate", "/captures too-few-steps"),
        high.faults());
    NoiseTable mixed = new NoiseTable().capture(10, 2, 0, 1, 1);
    float[] samples = new float[40_000];
    samples[5] = 0.5f;
    mixed.capture(20, Recording.of(44_100, samples));
    assertEquals(List.of("/captures/1/recording sample-rates-mixed"), mixed.faults());
  }

  @Test
  void aDriverNeedsItsFiguresAndItsLevel() {
    NoiseTable table = cuts();
    table.draft.driver(DriverBuilder.builder().sdCm2(500.0).build());
    assertEquals(
        List.of("/driver/xmax_mm required", "/driver_level needed-beside"), table.faults());
  }

  @Test
  void tablesThatTellNothingAreRefused() {
    assertEquals(List.of(" exactly-one-of"), new NoiseTable().faults());
    assertEquals(List.of("/levels too-few-steps"), new NoiseTable().cut(10, 0).faults());
    NoiseTable gap = cuts();
    gap.levels.remove(3);
    assertEquals(List.of("/levels band-level-missing"), gap.faults());
    NoiseTable twice = cuts();
    twice.levels.add(new BandAtStep(10, 50.12, -40.0));
    assertEquals(List.of("/levels/80 duplicate"), twice.faults());
    NoiseTable reversed = cuts();
    reversed.draft.referenceFromHz(2000.0).referenceToHz(500.0);
    assertEquals(List.of("/reference_to_hz not-ascending"), reversed.faults());
    NoiseTable elsewhere = cuts();
    elsewhere
        .draft
        .referenceStep(11)
        .headroom(new Headroom(12, 3.0))
        .driver(DriverBuilder.builder().sdCm2(500.0).xmaxMm(10.0).build())
        .driverLevel(new DriverLevel(13, 51.9, 80.0, null));
    assertEquals(
        List.of(
            "/reference_step step-not-measured",
            "/headroom/volume_step step-not-measured",
            "/driver_level/volume_step step-not-measured",
            "/driver_level/frequency_hz band-not-measured"),
        elsewhere.faults());
    NoiseTable narrow = new NoiseTable();
    for (int step : new int[] {1, 2}) {
      narrow.level(step, 50, -40).level(step, 100, -40);
    }
    assertEquals(
        List.of("/levels too-few-bass-bands", "/levels no-reference-band"), narrow.faults());
  }

  @Test
  void workingsShowTheLargestLoss() {
    var steps = Answers.withWorkings(new BassRolloff(), cuts().request()).workings();
    assertEquals("loss_db", steps.get(0).quantity());
    assertEquals(8, steps.get(0).value(), 1e-9);
  }
}
