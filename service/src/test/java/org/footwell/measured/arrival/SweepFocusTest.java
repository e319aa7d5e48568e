package org.footwell.measured.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Verdict;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.signal.ExponentialSweep;
import org.footwell.signal.Spectrum;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A sweep of another length than stated stops; the right one does not. */
@Tag("long")
class SweepFocusTest {

  private static final double RATE = 48_000;

  private static double[] lp(double[] x, double fc, boolean high) {
    double w = 2 * Math.PI * fc / RATE, c = Math.cos(w), al = Math.sin(w) / 1.4142;
    double a0 = 1 + al, b1 = high ? -(1 + c) : 1 - c, b0 = (high ? 1 + c : 1 - c) / 2;
    double[] y = new double[x.length];
    for (int n = 0; n < x.length; n++) {
      y[n] =
          (b0 * x[n]
                  + (n > 0 ? b1 * x[n - 1] : 0)
                  + (n > 1 ? b0 * x[n - 2] : 0)
                  + (n > 0 ? 2 * c * y[n - 1] : 0)
                  - (n > 1 ? (1 - al) * y[n - 2] : 0))
              / a0;
    }
    return y;
  }

  private static double[] response(double low, double high, Random random, double size) {
    double[] x = new double[8192];
    int at = 200 + random.nextInt(200);
    x[at] = 1;
    for (int i = 0; i < 8; i++)
      x[at + 20 + random.nextInt(380)] +=
          size * (random.nextBoolean() ? 1 : -1) * (.3 + .7 * random.nextDouble());
    x = lp(lp(x, low, true), low, true);
    return high > 0 ? lp(lp(x, high, false), high, false) : x;
  }

  private static double[] signal(String kind, double seconds) {
    if (kind.equals("exp")) return new ExponentialSweep(20, 20_000, seconds).signal(RATE);
    double[] s = new double[(int) (seconds * RATE)];
    for (int n = 0; n < s.length; n++) {
      double t = n / RATE;
      s[n] = Math.sin(2 * Math.PI * (20 * t + 19_980 * t * t / 2 / seconds));
    }
    return s;
  }

  private static double[] recorded(double[] response, double[] signal, Random random) {
    int size = Spectrum.sizeFor(signal.length + response.length + 24_000);
    double[] y = Spectrum.of(response, size).times(Spectrum.of(signal, size)).signal();
    double[] cut = new double[signal.length + 24_000];
    double peak = 0;
    for (double v : y) peak = Math.max(peak, Math.abs(v));
    for (int n = 0; n < cut.length; n++) cut[n] = y[n] + peak * 0.003 * random.nextGaussian();
    return cut;
  }

  /** Tweeter and door, or what is given as its range, in a room with reflections of a size. */
  private static Answer<ArrivalTimesResult> heard(
      String kind, double seconds, int seed, double size, double... ranges) {
    Random random = new Random(seed);
    Session session = new Session();
    session.playing(20.0, 20_000.0, 1.0, null);
    session.microphone("m", null);
    for (int c = 0; c < ranges.length; c += 2) {
      double[] response = response(ranges[c], ranges[c + 1], random, size);
      double[] recording = recorded(response, signal(kind, seconds), random);
      float[] samples = new float[recording.length];
      double peak = Arrays.stream(recording).map(Math::abs).max().orElseThrow();
      for (int n = 0; n < samples.length; n++) {
        samples[n] = (float) (0.5 * recording[n] / peak);
      }
      session.channel("c" + c).take("c" + c, "m", samples);
    }
    return session.answer();
  }

  /** A millisecond is found where nothing reflects strongly, two everywhere. */
  @Test
  void anotherLengthIsFoundAndPolarityNotTold() {
    anotherLengthIsFound(1);
  }

  static void anotherLengthIsFound(int seeds) {
    for (double size : new double[] {0, 0.5, 0.9}) {
      for (double longer : new double[] {0.001, -0.002, 0.004, 0.008}) {
        for (int seed = 0; seed < seeds; seed++) {
          Answer<ArrivalTimesResult> answer =
              heard("exp", 1 + longer, seed, size, 2500, 0, 80, 2500);
          String trial = longer + " s longer, reflections " + size + ", seed " + seed;
          double off = Math.abs(1000 * longer - answer.result().sweepLongerMs());
          assertTrue(off <= answer.result().sweepLongerUncertaintyMs(), trial + ", off " + off);
          assertTrue(off < (size > 0.5 ? 0.3 : 0.1), trial + ", off " + off);
          assertTrue(Answers.codes(answer).contains("sweep-length-wrong"), trial);
          assertFalse(Answers.codes(answer).contains("polarity-inverted"), trial);
        }
      }
    }
  }

  /** 400 ppm over 1 s move a full-range channel by 0.4 ms. */
  @Test
  void aClockThatIsOffIsToldByAFullRangeChannel() {
    Answer<ArrivalTimesResult> answer = heard("exp", 1.0004, 1, 0, 60, 0);
    assertEquals(0.4, answer.result().sweepLongerMs(), 0.03);
    assertTrue(Answers.codes(answer).contains("sweep-length-wrong"));
    String text =
        answer.findings().stream()
            .filter(one -> one.code().equals("sweep-length-wrong"))
            .findFirst()
            .orElseThrow()
            .text();
    assertTrue(text.contains(" ppm"), text);
  }

  @Test
  void aWooferAloneCannotTell() {
    for (double longer : new double[] {0, 0.004}) {
      Answer<ArrivalTimesResult> answer = heard("exp", 1 + longer, 1, 0.5, 60, 300, 30, 80);
      assertNull(answer.result().sweepLongerMs());
      assertTrue(Answers.codes(answer).contains("sweep-length-not-told"));
      assertFalse(Answers.codes(answer).contains("sweep-length-wrong"));
    }
  }

  @Test
  void theRightLengthIsNotRemarkedOn() {
    theRightLengthIsNotRemarkedOn(1);
  }

  static void theRightLengthIsNotRemarkedOn(int seeds) {
    for (double size : new double[] {0, 0.5, 0.9}) {
      for (int seed = 0; seed < seeds; seed++) {
        for (double[] ranges :
            new double[][] {{2500, 0, 80, 2500}, {60, 0}, {60, 300}, {80, 2500}}) {
          var codes = Answers.codes(heard("exp", 1, seed, size, ranges));
          assertFalse(codes.contains("sweep-length-wrong"), codes::toString);
          assertFalse(codes.contains("arrivals-implausible"), codes::toString);
          assertFalse(codes.contains("sound-before-sweep"), codes::toString);
        }
      }
    }
  }

  @Test
  void aLinearSweepStops() {
    linearSweepsStop(12);
  }

  static void linearSweepsStop(int trials) {
    for (int seed = 0; seed < trials; seed++) {
      double[] ranges = seed % 2 == 0 ? new double[] {2500, 0} : new double[] {80, 2500};
      Answer<ArrivalTimesResult> answer = heard("lin", 1, seed, 0.3 * (seed % 4), ranges);
      assertTrue(Answers.codes(answer).contains("sound-before-sweep"), "seed " + seed);
      assertEquals(Verdict.STOP, answer.verdict());
      assertFalse(Answers.codes(answer).contains("polarity-inverted"), "seed " + seed);
    }
  }

  @Test
  void arrivalsFurtherApartThanAnyCabinStopUnlessTheDelayIsStated() {
    double[] played = signal("exp", 0.2);
    Session session = new Session();
    session.playing(20.0, 20_000.0, 0.2, null);
    session.microphone("m", null);
    session.channel("near").channel("far");
    session.take("near", "m", MadeUpResponse.click(9600, 240, 0.4).playing(played).samples());
    session.take(
        "far", "m", MadeUpResponse.click(9600, 240 + 1440, -0.4).playing(played).samples());
    var codes = session.codes();
    assertTrue(codes.contains("arrivals-implausible"), codes::toString);
    assertFalse(codes.contains("polarity-inverted"), codes::toString);
    session.channels.set(1, Session.named("far").chainDelayMs(30.0).build());
    codes = session.codes();
    assertFalse(codes.contains("arrivals-implausible"), codes::toString);
    assertTrue(codes.contains("polarity-inverted"), codes::toString);
  }
}
