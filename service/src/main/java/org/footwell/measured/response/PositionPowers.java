package org.footwell.measured.response;

import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.physics.Decibels;
import org.footwell.signal.BandMeans;
import org.footwell.signal.GatedSpectrum;
import org.footwell.signal.NoiseFloor;
import org.footwell.signal.PlayingBand;
import org.footwell.signal.PositionMean;
import org.footwell.signal.Response;

/** What the microphone positions heard of one channel, as means over fractions of an octave. */
public final class PositionPowers {

  /** How far above chance, in standard deviations of a mean of noise, sound must stand. */
  private static final double STANDS_OUT = 6;

  /** Noise is known where so many periods fit into the time it was looked at; below by chance. */
  private static final double KNOWN_PERIODS = 10;

  /** What the ends of a sweep may cost where levels count, dB. */
  private static final double EDGE_DB = 0.1;

  private final PositionMean mean;
  private final double[] noise;
  private final double lengthS;
  private final double noiseS;
  private final double[] edgesDb;

  PositionPowers(
      PositionMean mean, double[] noise, double lengthS, double noiseS, double[] edgesDb) {
    this.mean = mean;
    this.noise = noise;
    this.lengthS = lengthS;
    this.noiseS = noiseS;
    this.edgesDb = edgesDb;
  }

  /**
   * Gates, transforms and averages.
   *
   * @param heard at each position
   * @param frequencies Hz
   * @param perOctave fraction of an octave each mean is over
   * @param calibrationDb what the microphone shows too much at each frequency, dB
   */
  public static PositionPowers of(
      List<HeardAt> heard,
      Gate gate,
      ImpulseResponses responses,
      double[] frequencies,
      double perOctave,
      double[] calibrationDb,
      Arithmetic arithmetic) {
    int positions = heard.size();
    double[][] powers = new double[positions][];
    double[][] noises = new double[positions][];
    double[] weights = new double[positions];
    double rate = responses.rateHz();
    double[] edges = new double[frequencies.length];
    double length = Double.POSITIVE_INFINITY;
    double noiseLength = Double.POSITIVE_INFINITY;
    for (int m = 0; m < positions; m++) {
      arithmetic.checkDeadline();
      double[] response = responses.forLevels(heard.get(m).recording());
      int strongest = GatedSpectrum.strongest(response);
      GatedSpectrum gated =
          GatedSpectrum.of(
              response, rate, strongest, gate.beforeMs() / 1000, gate.afterMs() / 1000);
      powers[m] = means(gated.spectrum().powers(), rate, frequencies, perOctave, calibrationDb);
      noises[m] = means(gated.noise(), rate, frequencies, perOctave, calibrationDb);
      weights[m] = heard.get(m).weight();
      cost(edges, responses, response.length, strongest, gate, frequencies, perOctave);
      length = Math.min(length, gated.lengthS());
      noiseLength = Math.min(noiseLength, NoiseFloor.lengthS(response, rate));
    }
    return new PositionPowers(
        PositionMean.of(powers, weights),
        PositionMean.of(noises, weights).powers(),
        length,
        noiseLength,
        edges);
  }

  /** Keeps the largest change that edges of a sweep and a gate together make to a flat response, dB. */
  private static void cost(
      double[] worst,
      ImpulseResponses responses,
      int samples,
      int at,
      Gate gate,
      double[] frequencies,
      double perOctave) {
    if (responses.range() == null) {
      return;
    }
    double rate = responses.rateHz();
    double[] flat = responses.flat(samples, at);
    GatedSpectrum gated =
        GatedSpectrum.of(flat, rate, at, gate.beforeMs() / 1000, gate.afterMs() / 1000);
    double[] left =
        means(gated.spectrum().powers(), rate, frequencies, perOctave, new double[worst.length]);
    for (int i = 0; i < worst.length; i++) {
      worst[i] = Math.max(worst[i], Math.abs(Response.levelDb(left[i])));
    }
  }

  /**
   * What is left of a band where the ends of the sweep change the level by no more than 0.1 dB: all
   * without a sweep, null if nothing is.
   */
  public PlayingBand told(PlayingBand band) {
    return band.within(edgesDb, EDGE_DB);
  }

  private static double[] means(
      double[] values, double rate, double[] frequencies, double perOctave, double[] less) {
    double[] means = new BandMeans(values, rate).octaveFractions(frequencies, perOctave);
    for (int i = 0; i < means.length; i++) {
      means[i] *= Decibels.toPower(-less[i]);
    }
    return means;
  }

  /** Where the channel plays, of frequencies in equal steps; null if nothing tops the noise. */
  public PlayingBand band(double[] frequencies, int stepsPerOctave) {
    double[] sound = new double[noise.length];
    int sure = 0;
    while (sure < frequencies.length - 1 && frequencies[sure] < KNOWN_PERIODS / noiseS) {
      sure++;
    }
    for (int i = 0; i < sound.length; i++) {
      // A mean over few independent values strays far by chance.
      double values = Math.max(1, 0.7 * frequencies[i] / stepsPerOctave * lengthS);
      double chance = Math.max(2, 1 + STANDS_OUT / Math.sqrt(values));
      double power = mean.powers()[i];
      double least = Math.max(noise[i], frequencies[i] < frequencies[sure] ? noise[sure] : 0);
      sound[i] = power > chance * least ? power - noise[i] : 0;
    }
    return PlayingBand.of(sound, stepsPerOctave);
  }

  /** How far the level stands above that of noise, dB, at most 120. */
  public double aboveNoiseDb(int i) {
    double least = Math.max(noise[i], mean.powers()[i] * 1e-12);
    return least <= 0 ? 0 : Decibels.ofPower(mean.powers()[i] / least);
  }

  /** Of all positions, with their spread. */
  public PositionMean mean() {
    return mean;
  }

  /** |H|² that noise alone has, weighted mean of all positions. */
  public double[] noise() {
    return noise;
  }

  /** Shortest time any gate looks at, s. */
  public double lengthS() {
    return lengthS;
  }
}
