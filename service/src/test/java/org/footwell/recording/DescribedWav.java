package org.footwell.recording;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;
import org.footwell.recording.WavBytes.Kind;
import org.footwell.signal.Biquad;
import org.footwell.signal.ExponentialSweep;
import org.footwell.signal.SectionDesign;

/**
 * A WAV file put together from a few words, so that a request with recordings stays readable: {@code
 * "0.5 s, tone 97.3 0.5, noise 0.001, held -0.4 0.5"}. The words are taken in their order, times
 * are in seconds, the size of a sample is 1 at full scale.
 */
public final class DescribedWav {

  private static final int FORMAT_TAG_AT = 20;

  private int rateHz = 48_000;
  private double[] samples = new double[0];
  private Kind kind = Kind.FLOAT32;
  private int channels = 1;

  private DescribedWav() {}

  /** The bytes of the file that is described. */
  public static byte[] of(String description) {
    DescribedWav wav = new DescribedWav();
    byte[] whole = null;
    for (String step : description.split(", ", -1)) {
      List<String> words = List.of(step.split(" ", -1));
      switch (words.get(0)) {
        case "text" -> whole = "The microphone was off.".getBytes(StandardCharsets.US_ASCII);
        case "tag" -> {
          whole = wav.bytes();
          whole[FORMAT_TAG_AT] = Byte.parseByte(words.get(1));
        }
        case "cut" -> whole = Arrays.copyOf(wav.bytes(), Integer.parseInt(words.get(1)));
        default -> wav.take(words);
      }
    }
    return whole == null ? wav.bytes() : whole;
  }

  private void take(List<String> words) {
    double[] numbers =
        words.stream()
            .filter(word -> word.matches("-?[0-9.]+(e-?[0-9]+)?"))
            .mapToDouble(Double::parseDouble)
            .toArray();
    switch (words.get(0)) {
      case "rate" -> rateHz = (int) numbers[0];
      case "bits" -> kind = Kind.valueOf("INT" + (int) numbers[0]);
      case "channels" -> channels = (int) numbers[0];
      case "click" -> samples[at(numbers[1])] += numbers[0];
      case "level" -> add(0, n -> numbers[0]);
      case "tone" -> tone(numbers);
      case "noise" -> noise(numbers);
      case "echo" -> echo(numbers[0], at(numbers[1]));
      case "held" -> each(x -> Math.max(numbers[0], Math.min(numbers[1], x)));
      case "times" -> each(x -> numbers[0] * x);
      case "bell" -> through(SectionDesign.peak(numbers[0], numbers[1], numbers[2], rateHz));
      case "high-pass", "low-pass" -> filter(words, (int) numbers[0], numbers[1]);
      case "played" ->
          played(new ExponentialSweep(numbers[0], numbers[1], numbers[2]).signal(rateHz));
      case "played-linear" -> played(linear(numbers[0], numbers[1], numbers[2]));
      default -> length(words, numbers);
    }
  }

  private void length(List<String> words, double... numbers) {
    if (words.size() != 2 || numbers.length != 1) {
      throw new IllegalArgumentException("unknown words " + words);
    }
    int length = words.get(1).equals("samples") ? (int) numbers[0] : at(numbers[0]);
    samples = Arrays.copyOf(samples, length);
  }

  private int at(double seconds) {
    return (int) Math.round(seconds * rateHz);
  }

  private void each(DoubleUnaryOperator change) {
    samples = Arrays.stream(samples).map(change).toArray();
  }

  private void add(int from, IntToDoubleFunction more) {
    for (int n = from; n < samples.length; n++) {
      samples[n] += more.applyAsDouble(n);
    }
  }

  /** Frequency, peak, and where it sets in. */
  private void tone(double... numbers) {
    double turn = 2 * Math.PI * numbers[0] / rateHz;
    add(numbers.length > 2 ? at(numbers[2]) : 0, n -> numbers[1] * Math.sin(turn * n));
  }

  /** White: RMS and seed. */
  private void noise(double... numbers) {
    Random random = new Random(numbers.length > 1 ? (long) numbers[1] : 1);
    add(0, n -> numbers[0] * random.nextGaussian());
  }

  private void echo(double size, int later) {
    double[] direct = samples.clone();
    add(later, n -> size * direct[n - later]);
  }

  private void filter(List<String> words, int order, double frequencyHz) {
    Filter.Kind family = Filter.Kind.valueOf(words.get(1).toUpperCase(Locale.ROOT));
    Filter filter = new Filter(family, order, frequencyHz, null);
    AnalogFilter analog = words.get(0).equals("high-pass") ? filter.highPass() : filter.lowPass();
    SectionDesign.of(analog, rateHz).forEach(this::through);
  }

  private void through(Biquad b) {
    double[] x = samples;
    double[] y = new double[x.length];
    for (int n = 0; n < y.length; n++) {
      double one = n > 0 ? b.b1() * x[n - 1] - b.a1() * y[n - 1] : 0;
      double two = n > 1 ? b.b2() * x[n - 2] - b.a2() * y[n - 2] : 0;
      y[n] = b.b0() * x[n] + one + two;
    }
    samples = y;
  }

  /** A sweep of the wrong kind. */
  private double[] linear(double fromHz, double toHz, double seconds) {
    double[] signal = new double[at(seconds)];
    for (int n = 0; n < signal.length; n++) {
      double t = (double) n / rateHz;
      signal[n] = Math.sin(2 * Math.PI * (fromHz + (toHz - fromHz) * t / 2 / seconds) * t);
    }
    return signal;
  }

  /** What is heard of a signal where so far every sample was the start of a sound. */
  private void played(double... signal) {
    double[] heard = new double[samples.length + signal.length];
    for (int n = 0; n < samples.length; n++) {
      for (int k = 0; samples[n] != 0 && k < signal.length; k++) {
        heard[n + k] += samples[n] * signal[k];
      }
    }
    samples = heard;
  }

  private byte[] bytes() {
    float[] row = new float[samples.length];
    for (int n = 0; n < row.length; n++) {
      row[n] = (float) samples[n];
    }
    return WavBytes.of(kind, rateHz, Collections.nCopies(channels, row).toArray(float[][]::new));
  }
}
