package org.footwell.measurement;

import org.footwell.calculation.Run;
import org.footwell.physics.Decibels;
import org.footwell.signal.BandMeans;
import org.footwell.signal.GatedSpectrum;
import org.footwell.signal.NoiseFloor;
import org.footwell.signal.PlayingBand;
import org.footwell.signal.PositionMean;

/** What the microphone positions heard of one channel, as means over fractions of an octave. */
public final class PositionPowers {

  /** How far above chance, in standard deviations of a mean of noise, sound must stand. */
  private static final double STANDS_OUT = 6;

  /** Noise is known where so many periods fit into the time it was looked at; below by chance. */
  private static final double KNOWN_PERIODS = 10;

  private final PositionMean mean;
  private final double[] noise;
  private final double lengthS;
  private final double noiseS;

  PositionPowers(PositionMean mean, double[] noise, double lengthS, double noiseS) {
    this.mean = mean;
    this.noise = noise;
    this.lengthS = lengthS;
    this.noiseS = noiseS;
  }

  /**
   * Gates, transforms and averages.
   *
   * @param frequencies Hz
   * @param perOctave fraction of an octave each mean is over
   * @param calibrationDb what the microphone shows too much at each frequency, dB
   */
  public static PositionPowers of(
      String channel,
      Measurement q,
      ImpulseResponses responses,
      double[] frequencies,
      double perOctave,
      double[] calibrationDb,
      Run run) {
    int positions = q.microphones().size();
    double[][] powers = new double[positions][];
    double[][] noises = new double[positions][];
    double[] weights = new double[positions];
    double rate = responses.rateHz();
    double length = Double.POSITIVE_INFINITY;
    double noiseLength = Double.POSITIVE_INFINITY;
    for (int m = 0; m < positions; m++) {
      run.checkDeadline();
      MicrophonePosition position = q.microphones().get(m);
      double[] response = responses.of(q.take(channel, position.id()).recording());
      int strongest = GatedSpectrum.strongest(response);
      GatedSpectrum gated =
          GatedSpectrum.of(
              response, rate, strongest, q.gate().beforeMs() / 1000, q.gate().afterMs() / 1000);
      powers[m] = means(gated.spectrum().powers(), rate, frequencies, perOctave, calibrationDb);
      noises[m] = means(gated.noise(), rate, frequencies, perOctave, calibrationDb);
      weights[m] = position.weight();
      length = Math.min(length, gated.lengthS());
      noiseLength = Math.min(noiseLength, NoiseFloor.lengthS(response, rate));
    }
    return new PositionPowers(
        PositionMean.of(powers, weights),
        PositionMean.of(noises, weights).powers(),
        length,
        noiseLength);
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
