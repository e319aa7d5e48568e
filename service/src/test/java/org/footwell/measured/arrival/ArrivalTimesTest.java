package org.footwell.measured.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.measured.arrival.ArrivalTimesRequest.Band;
import org.footwell.measured.arrival.ArrivalTimesRequest.Processor;
import org.footwell.measured.arrival.ArrivalTimesRequest.Take;
import org.footwell.measured.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.measured.arrival.ArrivalTimesResult.Method;
import org.footwell.measured.arrival.MadeUpRoom.Reflection;
import org.footwell.measured.arrival.MadeUpRoom.Speaker;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.parts.Filter;
import org.footwell.recording.Recording;
import org.footwell.signal.ExponentialSweep;
import org.junit.jupiter.api.Test;

class ArrivalTimesTest {

  private static MadeUpRoom room(Speaker speaker, double arrivalMs) {
    MadeUpRoom room = new MadeUpRoom(speaker, 7);
    room.arrivalS = arrivalMs / 1000;
    return room;
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    Session session = Session.plain().channel("b");
    session.microphones.set(0, new MicrophonePosition("left ear", null));
    session.microphone("right ear", 3.0);
    session.take("a", "left ear", room(Speaker.FULL_RANGE, 3).response());
    session.take("a", "right ear", room(Speaker.FULL_RANGE, 3.4).response());
    session.take("b", "left ear", room(Speaker.FULL_RANGE, 6).response());
    session.take("b", "right ear", room(Speaker.FULL_RANGE, 5.6).response());
    session.draft.processor(new Processor(48_000.0, null, 10.0));
    ArrivalTimesResult result = session.result();
    ArrivalTimesResult.ChannelArrival a = result.channels().get(0);
    ArrivalTimesResult.ChannelArrival b = result.channels().get(1);
    // (3 + 3·3.4)/4 = 3.3 and (6 + 3·5.6)/4 = 5.7; the offset of the loudspeaker is the same.
    assertEquals(2.4, a.delayMs(), 0.002);
    assertEquals(0, b.delayMs(), 0);
    assertEquals(2.4 * 343.2, a.delayMm(), 0.7);
    assertEquals(115, a.delaySamples());
    assertEquals(115 / 48.0, a.settingMs(), 1e-12);
    assertEquals(115 / 48.0 - a.delayMs(), a.roundingErrorMs(), 1e-12);
    assertEquals(0.4, a.spreadMs(), 0.002);
    assertEquals(2.4, result.spreadMs(), 0.002);
    assertEquals(Math.abs(a.roundingErrorMs()), result.remainingSpreadMs(), 1e-12);
  }

  @Test
  void fractionsOfASampleAreFound() {
    for (double arrival : new double[] {4, 4.005, 4.01, 4.0137}) {
      Session session =
          Session.plain().take("a", "m", room(Speaker.FULL_RANGE, arrival).response());
      ArrivalTimesResult.Take take = session.result().recordings().get(0);
      assertEquals(arrival + 0.012, take.arrivalMs(), 0.002);
      assertEquals(Method.EXCESS_PHASE, take.method());
      assertTrue(take.uncertaintyMs() >= 0.012, take::toString);
    }
  }

  @Test
  void anInvertedChannelIsToldAndItsArrivalIsTheSame() {
    MadeUpRoom room = room(Speaker.DOOR, 5);
    Session upright = Session.plain().take("a", "m", room.response());
    room = room(Speaker.DOOR, 5);
    room.polarity = -1;
    Session inverted = Session.plain().take("a", "m", room.response());
    ArrivalTimesResult.ChannelArrival one = upright.result().channels().get(0);
    Answer<ArrivalTimesResult> answer = inverted.answer();
    assertEquals(1, one.polarity());
    assertEquals(-1, answer.result().channels().get(0).polarity());
    assertTrue(one.polarityConfidence() > 0.8, one::toString);
    assertEquals(one.arrivalMs(), answer.result().channels().get(0).arrivalMs(), 0.01);
    assertEquals(List.of("polarity-inverted"), Answers.codes(answer));
  }

  @Test
  void aSubwooferIsFoundByItsPhaseSlopeWhereItsEnvelopeComesMuchLater() {
    Session session = Session.plain().take("a", "m", room(Speaker.SUBWOOFER, 6).response());
    Answer<ArrivalTimesResult> answer = session.answer();
    ArrivalTimesResult.Take take = answer.result().recordings().get(0);
    assertEquals(Method.EXCESS_PHASE, take.method());
    assertEquals(6, take.arrivalMs(), take.uncertaintyMs());
    assertTrue(take.envelopeMs() > 12, take::toString);
    assertEquals(1, take.polarity());
    assertNull(take.reflectionDb());
    assertEquals(List.of("no-sharp-onset"), Answers.codes(answer));
  }

  @Test
  void statedFiltersMakeASubwooferMoreExact() {
    Session session = Session.plain().take("a", "m", room(Speaker.SUBWOOFER, 6).response());
    double found = session.result().recordings().get(0).arrivalMs();
    Filter lowPass = new Filter(Filter.Kind.LINKWITZ_RILEY, 4, 80.0, null);
    session.channels.set(0, Session.named("a").lowPass(lowPass).build());
    double stated = session.result().recordings().get(0).arrivalMs();
    assertTrue(Math.abs(stated - 6) < Math.abs(found - 6), stated + " and " + found);
  }

  @Test
  void aStrongerReflectionIsToldAndTheFirstSoundTaken() {
    MadeUpRoom room = room(Speaker.TWEETER, 4);
    room.reflections.add(new Reflection(1.6, 0.002));
    Answer<ArrivalTimesResult> answer = Session.plain().take("a", "m", room.response()).answer();
    ArrivalTimesResult.Take take = answer.result().recordings().get(0);
    assertEquals(4, take.arrivalMs(), 0.03);
    assertEquals(20 * Math.log10(1.6), take.reflectionDb(), 0.3);
    assertEquals(2, take.reflectionMs(), 0.03);
    assertTrue(Answers.codes(answer).contains("reflection-stronger"));
  }

  @Test
  void aNoisyRecordingIsToldAndAVeryNoisyOneRefused() {
    MadeUpRoom room = room(Speaker.FULL_RANGE, 4);
    room.peakToNoiseDb = 25;
    Answer<ArrivalTimesResult> answer = Session.plain().take("a", "m", room.response()).answer();
    assertTrue(Answers.codes(answer).contains("signal-to-noise-low"));
    assertTrue(Answers.codes(answer).contains("arrival-by-envelope"));
    assertEquals(4, answer.result().recordings().get(0).arrivalMs(), 0.05);
    room.peakToNoiseDb = -20;
    assertEquals(
        List.of("/recordings/0/recording no-arrival-found"),
        Session.plain().take("a", "m", room.response()).faults());
  }

  @Test
  void aSweepGivesTheArrivalOfItsImpulseResponse() {
    Session session = Session.plain();
    session.playing(50.0, 20_000.0, 0.5, 0.1);
    ExponentialSweep sweep = new ExponentialSweep(50, 20_000, 0.5);
    // Played 0.1 s after the start; arrives 3.3 ms later, upside down and at half size.
    float[] recorded = new float[48_000];
    for (int n = 0; n < recorded.length; n++) {
      double since = n / 48_000.0 - 0.1033;
      recorded[n] = since < 0 || since > 0.5 ? 0 : (float) (-0.5 * sweep.at(since));
    }
    session.take("a", "m", recorded);
    ArrivalTimesResult.Take take = session.result().recordings().get(0);
    assertEquals(3.3, take.arrivalMs(), 0.01);
    assertEquals(-1, take.polarity());
  }

  @Test
  void aLoopbackTakesAwayWhatRecordingAddsOnce() {
    Session session = Session.plain().channel("b");
    session.draft.timeReference(TimeReference.LOOPBACK);
    double[] starts = {10, 17.3};
    double[] flights = {3, 4.5};
    for (int c = 0; c < 2; c++) {
      float[] loop = room(Speaker.FULL_RANGE, starts[c]).response();
      float[] sound = room(Speaker.FULL_RANGE, starts[c] + flights[c]).response();
      session.takes.add(
          new Take(
              c == 0 ? "a" : "b", "m", Recording.of(48_000, sound), Recording.of(48_000, loop)));
    }
    ArrivalTimesResult result = session.result();
    assertEquals(3, result.channels().get(0).arrivalMs(), 0.002);
    assertEquals(4.5, result.channels().get(1).arrivalMs(), 0.002);
    assertEquals(1.5, result.channels().get(0).delayMs(), 0.003);
  }

  @Test
  void withoutATimeReferenceThereAreNoDelays() {
    Session session = Session.plain().take("a", "m", room(Speaker.DOOR, 4).response());
    session.draft.timeReference(TimeReference.NONE).processor(new Processor(48_000.0, null, null));
    Answer<ArrivalTimesResult> answer = session.answer();
    assertNull(answer.result().channels().get(0).delayMs());
    assertNull(answer.result().spreadMs());
    assertEquals(List.of("time-reference-missing"), Answers.codes(answer));
  }

  @Test
  void aProcessorThatEndsTooEarlyIsAStopAndOneWithTheChainDelayInItAWarning() {
    Session session = Session.plain().channel("b");
    session.take("a", "m", room(Speaker.TWEETER, 2).response());
    session.take("b", "m", room(Speaker.TWEETER, 8).response());
    session.draft.processor(new Processor(null, 0.02, 5.0));
    Answer<ArrivalTimesResult> answer = session.answer();
    assertEquals("delay-beyond-maximum", answer.findings().get(0).code());
    assertEquals(6, answer.result().channels().get(0).settingMs(), 1e-9);
    assertNull(answer.result().channels().get(0).delaySamples());
    session.draft.processor(new Processor(null, 0.02, 8.0));
    session.channels.set(0, Session.named("a").chainDelayMs(3.0).build());
    answer = session.answer();
    assertEquals("setting-beyond-maximum", answer.findings().get(0).code());
    assertEquals(9, answer.result().channels().get(0).absoluteSettingMs(), 1e-9);
  }

  @Test
  void microphonesFarApartAreTold() {
    Session session = Session.plain();
    session.microphone("far", null);
    session.take("a", "m", room(Speaker.TWEETER, 3).response());
    session.take("a", "far", room(Speaker.TWEETER, 5).response());
    assertEquals(List.of("microphones-disagree"), session.codes());
  }

  @Test
  void aBandThatIsStatedIsUsed() {
    Session session = Session.plain().take("a", "m", room(Speaker.DOOR, 4).response());
    session.channels.set(0, Session.named("a").band(new Band(500.0, 2000.0)).build());
    ArrivalTimesResult.Take take = session.result().recordings().get(0);
    assertEquals(500, take.bandLowHz(), 1e-9);
    assertEquals(2000, take.bandHighHz(), 1e-9);
    assertEquals(4, take.arrivalMs(), take.uncertaintyMs());
  }
}
