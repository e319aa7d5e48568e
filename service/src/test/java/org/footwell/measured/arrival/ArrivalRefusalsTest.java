package org.footwell.measured.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.footwell.measured.arrival.ArrivalTimesRequest.Band;
import org.footwell.measured.arrival.ArrivalTimesRequest.Processor;
import org.footwell.measured.arrival.ArrivalTimesRequest.Take;
import org.footwell.measured.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.parts.Filter;
import org.footwell.recording.Recording;
import org.junit.jupiter.api.Test;

class ArrivalRefusalsTest {

  private static final String AT = "/recordings/0/recording";

  private static float[] click(int size) {
    float[] click = new float[size];
    click[size / 2] = 0.5f;
    return click;
  }

  private static List<String> faultsOf(Recording recording) {
    Session session = Session.plain();
    session.takes.add(new Take("a", "m", recording, null));
    return session.faults();
  }

  private static List<String> faultsOf(float... samples) {
    return faultsOf(Recording.of(48_000, samples));
  }

  @Test
  void recordingsThatAreSilentClippedOrOutOfRangeAreRefused() {
    assertEquals(List.of(AT + " recording-silent"), faultsOf(new float[1000]));
    float[] clipped = click(1000);
    Arrays.fill(clipped, 500, 504, 1);
    assertEquals(List.of(AT + " recording-clipped"), faultsOf(clipped));
    float[] endless = click(1000);
    endless[7] = Float.POSITIVE_INFINITY;
    assertEquals(List.of(AT + " sample-out-of-range"), faultsOf(endless));
    endless[7] = Float.NaN;
    assertEquals(List.of(AT + " sample-out-of-range"), faultsOf(endless));
    endless[7] = -1001;
    assertEquals(List.of(AT + " sample-out-of-range"), faultsOf(endless));
  }

  @Test
  void aPeakScaledToFullScaleIsNotClipped() {
    float[] scaled = click(1000);
    scaled[500] = 1;
    Session session = Session.plain().take("a", "m", scaled);
    assertEquals(1, session.result().recordings().size());
  }

  @Test
  void recordingsTooShortOrTooLongAreRefused() {
    assertEquals(List.of(AT + " recording-too-short"), faultsOf(click(63)));
    assertEquals(List.of(AT + " recording-too-long"), faultsOf(click((1 << 21) + 1)));
  }

  @Test
  void allRecordingsTogetherMayBeTooLong() {
    Session session = new Session();
    session.microphone("m", null);
    float[] click = click(1 << 21);
    for (int i = 0; i < 7; i++) {
      session.channel("c" + i).take("c" + i, "m", click);
    }
    assertEquals(List.of("/recordings/5/recording recordings-too-long"), session.faults());
  }

  @Test
  void samplesAndRateBelongTogether() {
    assertEquals(List.of(AT + " exactly-one-of"), faultsOf(new Recording(null, null, null, null)));
    assertEquals(
        List.of(AT + "/rate_hz needed-beside"),
        faultsOf(new Recording(null, Recording.of(1, click(100)).samples(), null, null)));
    assertEquals(
        List.of(AT + "/wav wav-not-uploaded"), faultsOf(new Recording(null, null, "a.wav", null)));
    assertEquals(
        List.of(AT + " exactly-one-of", AT + "/wav wav-not-uploaded"),
        faultsOf(new Recording(48_000.0, Recording.of(1, click(100)).samples(), "a.wav", null)));
    assertEquals(
        List.of(AT + "/wav needed-beside"),
        faultsOf(new Recording(48_000.0, Recording.of(1, click(100)).samples(), null, 0)));
  }

  @Test
  void sampleRatesMayNotBeMixed() {
    Session session = Session.plain().channel("b").take("a", "m", click(1000));
    session.takes.add(new Take("b", "m", Recording.of(44_100, click(1000)), null));
    assertEquals(List.of("/recordings/1/recording sample-rates-mixed"), session.faults());
  }

  @Test
  void everyChannelNeedsOneRecordingAtEveryMicrophone() {
    Session session = Session.plain().channel("b").take("a", "m", click(100));
    session.take("a", "m", click(100)).take("c", "n", click(100));
    assertEquals(
        List.of(
            "/recordings/1/channel duplicate",
            "/recordings/2/channel dangling-reference",
            "/recordings/2/microphone dangling-reference",
            "/recordings take-missing"),
        session.faults());
    session.takes.subList(1, 3).clear();
    assertEquals(List.of("/recordings take-missing"), session.faults());
  }

  @Test
  void idsMayNotBeUsedTwice() {
    Session session = Session.plain().channel("a").take("a", "m", click(100));
    session.microphone("m", null);
    assertEquals(
        List.of("/channels/1/id duplicate", "/microphones/1/id duplicate"), session.faults());
  }

  @Test
  void aSweepMustFitItsKindTheRateAndTheRecording() {
    Session session = Session.plain().take("a", "m", click(4800));
    session.draft.sweep(new PlayedSweep(20.0, 20_000.0, 1.0, null));
    assertEquals(List.of("/sweep sweep-not-expected"), session.faults());
    session.draft.kind(RecordedKind.SWEEP);
    assertEquals(List.of(AT + " sweep-cut-off"), session.faults());
    session.draft.sweep(new PlayedSweep(200.0, 100.0, 0.05, null));
    assertEquals(List.of("/sweep/to_hz not-ascending"), session.faults());
    session.draft.sweep(new PlayedSweep(200.0, 30_000.0, 0.05, null));
    assertEquals(List.of("/sweep/to_hz sweep-above-half-rate"), session.faults());
    session.draft.sweep(null);
    assertEquals(List.of("/sweep required"), session.faults());
  }

  @Test
  void loopbacksGoWithTheirTimeReference() {
    Session session = Session.plain();
    Recording click = Recording.of(48_000, click(1000));
    session.takes.add(new Take("a", "m", click, click));
    assertEquals(List.of("/recordings/0/loopback loopback-not-expected"), session.faults());
    session.takes.set(0, new Take("a", "m", click, null));
    session.draft.timeReference(TimeReference.LOOPBACK);
    assertEquals(List.of("/recordings/0/loopback required"), session.faults());
  }

  @Test
  void bandsFiltersAndProcessorMustBePossible() {
    Session session = Session.plain().take("a", "m", click(1000));
    Filter odd = new Filter(Filter.Kind.LINKWITZ_RILEY, 3, 80.0, null);
    session.channels.set(0, Session.named("a").band(new Band(100.0, 110.0)).highPass(odd).build());
    assertEquals(
        List.of(
            "/channels/0/high_pass/order linkwitz-riley-odd",
            "/channels/0/band/high_hz band-too-narrow"),
        session.faults());
    session.draft.processor(new Processor(48_000.0, 0.1, null));
    assertEquals(
        List.of(
            "/processor exactly-one-of",
            "/channels/0/high_pass/order linkwitz-riley-odd",
            "/channels/0/band/high_hz band-too-narrow"),
        session.faults());
    session.draft.processor(null);
    session.channels.set(0, Session.named("a").band(new Band(100.0, 22_000.0)).build());
    assertEquals(List.of("/channels/0/band/high_hz band-above-half-rate"), session.faults());
  }
}
