package org.footwell.factory.rolloff;

import java.util.Arrays;
import java.util.List;
import org.footwell.physics.Decibels;
import org.footwell.physics.ThirdOctaves;
import org.footwell.recording.Recording;
import org.footwell.signal.BandPower;
import org.footwell.signal.Spectrum;

/**
 * Levels of third octaves at every volume step, both rising.
 *
 * @param levels one row for each step, one level for each band, dB
 * @param places of the steps in the request
 * @param durationS length of the shortest capture, s; 0 for a table of levels
 */
record BandTable(
    List<Integer> steps,
    List<Double> bandsHz,
    List<List<Double>> levels,
    List<Integer> places,
    double durationS) {

  /** Quieter than any band of a recording. */
  private static final double NOTHING = 1e-20;

  /** Width of a third octave over its middle: 10^(1/20) − 10^(−1/20). */
  static final double RELATIVE_WIDTH = Math.pow(10, 0.05) - Math.pow(10, -0.05);

  /** Upper edge of a third octave, Hz. */
  static double upperEdgeHz(double middleHz) {
    return middleHz * Math.pow(10, 0.05);
  }

  /** Levels in dB over a full-scale sine, by the energy of the whole capture in each band. */
  static List<Double> levels(Recording recording, double[] bands) {
    double[] samples = recording.samples().toDoubles();
    double mean = Arrays.stream(samples).average().orElse(0);
    for (int n = 0; n < samples.length; n++) {
      samples[n] -= mean;
    }
    Spectrum spectrum = Spectrum.of(samples, Spectrum.sizeFor(samples.length));
    double[] energies = BandPower.octaveFractions(spectrum, recording.rateHz(), bands, 3);
    return Arrays.stream(energies)
        .mapToObj(e -> Decibels.ofPower(Math.max(NOTHING, 2 * e / samples.length)))
        .toList();
  }

  /** Length of a recording, s. */
  static double seconds(Recording recording) {
    return recording.samples().size() / recording.rateHz();
  }

  double level(int step, int band) {
    return levels.get(step).get(band);
  }

  /** Place of a step among {@link #steps}, or −1. */
  int indexOfStep(int step) {
    return steps.indexOf(step);
  }

  /** Place of a band among {@link #bandsHz}, or −1. */
  int indexOfBand(double frequencyHz) {
    return indexOfBand(frequencyHz, bandsHz);
  }

  /** Place of a band among some, or −1. */
  static int indexOfBand(double frequencyHz, List<Double> bandsHz) {
    double exact = ThirdOctaves.exactHz(frequencyHz);
    for (int b = 0; b < bandsHz.size(); b++) {
      if (Math.abs(bandsHz.get(b) / exact - 1) < 1e-6) {
        return b;
      }
    }
    return -1;
  }
}
