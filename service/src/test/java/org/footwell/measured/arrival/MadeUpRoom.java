package org.footwell.measured.arrival;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Impulse responses with known answers, made in the frequency domain and independent of what is
 * tested: a loudspeaker of second-order sections, a delay between samples, reflections, a decaying
 * tail and noise, all seeded.
 */
final class MadeUpRoom {

  static final double RATE_HZ = 48_000;

  private static final int SIZE = 1 << 15;
  private static final int LENGTH = 24_000;

  /** Decay of the tail to −60 dB, s. */
  private static final double DECAY_S = 0.08;

  /** A second-order filter. */
  record Section(boolean highPass, double hz, double q) {}

  /** A loudspeaker with its crossover. */
  enum Speaker {
    TWEETER,
    DOOR,
    FULL_RANGE,
    WOOFER,
    SUBWOOFER;

    private List<Section> sections() {
      return switch (this) {
        case TWEETER ->
            List.of(high(1800, 0.7), high(2500, 0.7071), high(2500, 0.7071), low(19_000, 0.7));
        case DOOR ->
            List.of(
                high(60, 0.7),
                high(80, 0.7071),
                high(80, 0.7071),
                low(2500, 0.7071),
                low(2500, 0.7071),
                low(6000, 0.7));
        case FULL_RANGE -> List.of(high(60, 0.7), low(18_000, 0.7));
        case WOOFER ->
            List.of(
                high(45, 0.7),
                high(60, 0.7071),
                high(60, 0.7071),
                low(300, 0.7071),
                low(300, 0.7071));
        case SUBWOOFER -> List.of(high(28, 0.7), low(80, 0.7071), low(80, 0.7071), low(300, 0.7));
      };
    }

    static Section high(double hz, double q) {
      return new Section(true, hz, q);
    }

    static Section low(double hz, double q) {
      return new Section(false, hz, q);
    }
  }

  /** Real and imaginary part of the loudspeaker at a frequency. */
  private double[] loudspeakerAt(double f) {
    double re = 1;
    double im = 0;
    for (Section section : sections) {
      double x = f / section.hz();
      double below = 1 - x * x;
      double damp = x / section.q();
      double size = below * below + damp * damp;
      double gain = section.highPass() ? -x * x : 1;
      double r = gain * below / size;
      double i = -gain * damp / size;
      double old = re;
      re = old * r - im * i;
      im = old * i + im * r;
    }
    return new double[] {re, im};
  }

  /** A copy of the direct sound: its size against it, signed, and how much later it comes. */
  record Reflection(double size, double laterS) {}

  final Random random;

  /** What the loudspeaker and its crossover are made of. */
  List<Section> sections;

  double arrivalS;
  int polarity = 1;
  List<Reflection> reflections = new ArrayList<>();

  /** The cabin the sound is in instead of reflections and tail, or null. */
  ModalCabin cabin;

  /** Energy of the tail over that of what comes before, dB, or null for none. */
  Double tailDb;

  /** Above this processing cuts everything off, without moving it in time, Hz. */
  double cutOffHz = Double.MAX_VALUE;

  /** Peak of the response over the RMS of white noise, dB. */
  double peakToNoiseDb = 80;

  MadeUpRoom(Speaker speaker, long seed) {
    this.sections = speaker.sections();
    this.random = new Random(seed);
    this.arrivalS = 0.004 + 0.004 * random.nextDouble();
  }

  /** When the direct sound arrives, s. */
  double directS() {
    return arrivalS + (cabin == null ? 0 : cabin.distanceM() / ModalCabin.SPEED);
  }

  /** With any woofer that plays some 60 to 300 Hz: driver, crossover of the second or fourth order. */
  MadeUpRoom ofAnyWoofer() {
    double q = 0.6 + 0.5 * random.nextDouble();
    Section high = Speaker.high(40 + 60 * random.nextDouble(), 0.7071);
    Section low = Speaker.low(150 + 250 * random.nextDouble(), 0.7071);
    sections = new ArrayList<>(List.of(Speaker.low(3000, 0.7), high, low));
    sections.add(Speaker.high(40 + 50 * random.nextDouble(), q));
    if (random.nextBoolean()) {
      sections.add(high);
    }
    if (random.nextBoolean()) {
      sections.add(low);
    }
    return this;
  }

  /** Eight early reflections of up to this size, within 8 ms, and a tail: a small cabin. */
  MadeUpRoom inCabin(double size, double tail) {
    for (int i = 0; i < 8; i++) {
      double later = 0.0004 + 0.008 * random.nextDouble();
      double sign = random.nextBoolean() ? 1 : -1;
      double share = 0.3 + 0.7 * random.nextDouble();
      reflections.add(new Reflection(sign * size * share * Math.exp(-later / 0.004), later));
    }
    tailDb = tail;
    return this;
  }

  /** Half a second of the response. */
  float[] response() {
    return responses(List.of(peakToNoiseDb)).get(0);
  }

  /** The same with the same noise at several levels, peak of the response over its RMS, dB. */
  List<float[]> responses(List<Double> peakToNoiseDb) {
    double[] direct = filtered(null);
    if (tailDb != null) {
      double[] noise = new double[SIZE];
      for (int n = 0; n < LENGTH; n++) {
        double t = n / RATE_HZ;
        noise[n] = random.nextGaussian() * Math.exp(-6.9 * t / DECAY_S) * -Math.expm1(-t / 0.003);
      }
      double[] tail = filtered(noise);
      double factor = Math.sqrt(energy(direct) / energy(tail)) * Math.pow(10, tailDb / 20);
      for (int n = 0; n < direct.length; n++) {
        direct[n] += factor * tail[n];
      }
    }
    double peak = 0;
    for (double value : direct) {
      peak = Math.max(peak, Math.abs(value));
    }
    double[] white = new double[LENGTH];
    Arrays.setAll(white, n -> random.nextGaussian());
    List<float[]> responses = new ArrayList<>();
    for (double level : peakToNoiseDb) {
      double noise = peak * Math.pow(10, -level / 20);
      float[] response = new float[LENGTH];
      for (int n = 0; n < LENGTH; n++) {
        response[n] = (float) ((direct[n] + noise * white[n]) / peak * 0.7);
      }
      responses.add(response);
    }
    return responses;
  }

  private static double energy(double[] signal) {
    double sum = 0;
    for (double value : signal) {
      sum += value * value;
    }
    return sum;
  }

  /** Direct sound and reflections of an impulse, or of what is given. */
  private double[] filtered(double[] excitation) {
    double[][] bins = new double[2][SIZE];
    if (excitation == null) {
      bins[0][0] = 1;
    } else {
      System.arraycopy(excitation, 0, bins[0], 0, SIZE);
    }
    FastFourierTransformer.transformInPlace(bins, DftNormalization.STANDARD, TransformType.FORWARD);
    for (int k = 0; k <= SIZE / 2; k++) {
      double f = k * RATE_HZ / SIZE;
      double[] h = loudspeakerAt(f);
      double[] path = turned(arrivalS, f, polarity);
      double re = path[0];
      double im = path[1];
      if (cabin != null) {
        double[] there = cabin.at(f);
        re = path[0] * there[0] - path[1] * there[1];
        im = path[0] * there[1] + path[1] * there[0];
      }
      for (Reflection reflection : excitation == null ? reflections : List.<Reflection>of()) {
        double[] more = turned(arrivalS + reflection.laterS(), f, polarity * reflection.size());
        re += more[0];
        im += more[1];
      }
      if (f > cutOffHz) {
        re = 0;
        im = 0;
      }
      double hr = h[0] * re - h[1] * im;
      double hi = h[0] * im + h[1] * re;
      double xr = bins[0][k];
      double xi = bins[1][k];
      bins[0][k] = xr * hr - xi * hi;
      bins[1][k] = k == SIZE / 2 ? 0 : xr * hi + xi * hr;
      if (k > 0 && k < SIZE / 2) {
        bins[0][SIZE - k] = bins[0][k];
        bins[1][SIZE - k] = -bins[1][k];
      }
    }
    FastFourierTransformer.transformInPlace(bins, DftNormalization.STANDARD, TransformType.INVERSE);
    return bins[0];
  }

  private static double[] turned(double seconds, double f, double size) {
    double angle = -2 * Math.PI * f * seconds;
    return new double[] {size * Math.cos(angle), size * Math.sin(angle)};
  }
}
