package org.footwell.factory.sum;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;
import org.footwell.signal.Cascade;
import org.footwell.signal.CirclePoint;
import org.footwell.signal.Response;

/** What comes out of an output for what goes into the source, at one frequency after the other. */
interface OutputResponse {

  /** Beyond the ends of a measured response that has fallen so far, nothing more is expected. */
  double FALLEN_DB = -20;

  /** The response at a frequency in Hz; nothing outside what was measured. */
  Phasor at(double frequencyHz);

  /** Start of the range in which it can be relied on, Hz. */
  double fromHz();

  /** End of that range, Hz. */
  double toHz();

  /** A phasor delayed by so many ms, earlier when negative. */
  static Phasor delayed(Phasor phasor, double frequencyHz, double delayMs) {
    double turn = -2 * Math.PI * frequencyHz * delayMs / 1000;
    return phasor.times(new Phasor(Math.cos(turn), Math.sin(turn)));
  }

  /** Filters and sections at a sample rate. */
  record Filtered(Cascade cascade, double rateHz) implements OutputResponse {
    @Override
    public Phasor at(double frequencyHz) {
      return cascade.at(CirclePoint.of(frequencyHz, rateHz)).gain();
    }

    @Override
    public double fromHz() {
      return 0;
    }

    @Override
    public double toHz() {
      return rateHz / 2;
    }
  }

  /** Points with unwrapped phase: level linear over the logarithm of frequency, phase over frequency. */
  record Points(List<Double> hz, List<Double> db, List<Double> degrees) implements OutputResponse {
    @Override
    public Phasor at(double frequencyHz) {
      int last = hz.size() - 1;
      if (frequencyHz < hz.get(0) || frequencyHz > hz.get(last)) {
        return new Phasor(0, 0);
      }
      int found = Collections.binarySearch(hz, frequencyHz);
      int i = Math.max(1, found < 0 ? -found - 1 : found);
      double low = hz.get(i - 1);
      double high = hz.get(i);
      double part = Math.log(frequencyHz / low) / Math.log(high / low);
      double level = db.get(i - 1) + part * (db.get(i) - db.get(i - 1));
      double phase =
          degrees.get(i - 1)
              + (frequencyHz - low) / (high - low) * (degrees.get(i) - degrees.get(i - 1));
      double size = Decibels.toAmplitude(level);
      double angle = Math.toRadians(phase);
      return new Phasor(size * Math.cos(angle), size * Math.sin(angle));
    }

    private double highest() {
      return db.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    @Override
    public double fromHz() {
      return db.get(0) < highest() + FALLEN_DB ? 0 : hz.get(0);
    }

    @Override
    public double toHz() {
      int last = hz.size() - 1;
      return db.get(last) < highest() + FALLEN_DB ? Double.MAX_VALUE : hz.get(last);
    }
  }

  /** The Fourier transform of an impulse response, where it is asked for. */
  record Impulse(List<Double> samples, double rateHz) implements OutputResponse {

    /** No electrical response goes on for longer. */
    static final int MOST_SAMPLES = 1 << 14;

    /** Recordings reach so much of their rate with an honest phase. */
    private static final double USABLE = 0.45;

    @Override
    public Phasor at(double frequencyHz) {
      double turn = 2 * Math.PI * frequencyHz / rateHz;
      double stepRe = Math.cos(turn);
      double stepIm = -Math.sin(turn);
      double re = 0;
      double im = 0;
      // Horner's rule from the last sample on: one multiplication each.
      for (int n = samples.size() - 1; n >= 0; n--) {
        double next = re * stepRe - im * stepIm + samples.get(n);
        im = re * stepIm + im * stepRe;
        re = next;
      }
      return new Phasor(re, im);
    }

    /** Time of the largest sample, ms. */
    double peakMs() {
      int peak = 0;
      for (int n = 1; n < samples.size(); n++) {
        peak = Math.abs(samples.get(n)) > Math.abs(samples.get(peak)) ? n : peak;
      }
      return 1000 * peak / rateHz;
    }

    /** The response as points, as if its largest sample came at once. */
    Points withoutDelay(double lowHz, double highHz) {
      List<Double> hz = new ArrayList<>();
      List<Double> db = new ArrayList<>();
      List<Double> degrees = new ArrayList<>();
      double peak = peakMs();
      double before = 0;
      for (double f = lowHz; f <= highHz; f += Math.min(f * 0.0293, 20)) {
        Phasor here = delayed(at(f), f, -peak);
        before = hz.isEmpty() ? here.phaseDeg() : before + turn(here.phaseDeg() - before);
        hz.add(f);
        db.add(Response.levelDb(here.re() * here.re() + here.im() * here.im()));
        degrees.add(before);
      }
      return new Points(hz, db, degrees);
    }

    private static double turn(double degrees) {
      return Math.IEEEremainder(degrees, 360);
    }

    @Override
    public double fromHz() {
      return rateHz / samples.size();
    }

    @Override
    public double toHz() {
      return USABLE * rateHz;
    }
  }
}
