package org.footwell.measured.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.footwell.measured.arrival.MadeUpRoom.Speaker;

class ArrivalTimesProperties {

  private static float[] response(Speaker speaker, double arrivalMs) {
    MadeUpRoom room = new MadeUpRoom(speaker, 3);
    room.arrivalS = arrivalMs / 1000;
    return room.response();
  }

  private static double arrivalMs(float[] samples) {
    return Session.plain().take("a", "m", samples).result().channels().get(0).arrivalMs();
  }

  @Property(tries = 15)
  void soundThatComesLaterArrivesThatMuchLater(
      @ForAll Speaker speaker, @ForAll @DoubleRange(min = 0.01, max = 10) double laterMs) {
    double more = arrivalMs(response(speaker, 5 + laterMs)) - arrivalMs(response(speaker, 5));
    // A thousandth of the shortest period in the band, but for noise 80 dB down.
    assertEquals(laterMs, more, speaker == Speaker.SUBWOOFER ? 0.2 : 0.01);
  }

  @Property(tries = 15)
  void levelAndPolarityDoNotMoveTheArrival(
      @ForAll Speaker speaker, @ForAll @DoubleRange(min = 0.01, max = 1.2) double factor) {
    float[] samples = response(speaker, 5);
    float[] changed = new float[samples.length];
    for (int n = 0; n < changed.length; n++) {
      changed[n] = (float) (-factor * samples[n]);
    }
    assertEquals(arrivalMs(samples), arrivalMs(changed), 1e-3);
  }

  @Property(tries = 10)
  void whateverTheArrivalsTheFarthestWaitsNotAtAllAndAllEndTogether(
      @ForAll @DoubleRange(min = 1, max = 12) double one,
      @ForAll @DoubleRange(min = 1, max = 12) double other,
      @ForAll @IntRange(min = 1, max = 9) int weight) {
    Session session = Session.plain().channel("b");
    session.microphone("n", (double) weight);
    session.take("a", "m", response(Speaker.FULL_RANGE, one));
    session.take("a", "n", response(Speaker.FULL_RANGE, one + 0.3));
    session.take("b", "m", response(Speaker.FULL_RANGE, other));
    session.take("b", "n", response(Speaker.FULL_RANGE, other - 0.3));
    var channels = session.result().channels();
    double least = Math.min(channels.get(0).delayMs(), channels.get(1).delayMs());
    assertEquals(0, least, 0);
    assertTrue(channels.stream().allMatch(channel -> channel.delayMs() >= 0));
    assertEquals(
        channels.get(0).arrivalMs() + channels.get(0).delayMs(),
        channels.get(1).arrivalMs() + channels.get(1).delayMs(),
        1e-9);
  }
}
