package org.footwell.acoustic.seats;

import java.util.ArrayList;
import java.util.List;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;

/** All sources in one band: what each can, what they may together, what arrives at each seat. */
final class SourcesInBand {

  /** A sum is never called quieter than this below the sum of powers, dB. */
  private static final double DEEPEST_DB = 60;

  private final double frequency;
  private final List<SourceInBand> sources;
  private final Paths paths;
  private final boolean coherent;
  private final int holding;
  private final SourceInBand.Held held;

  /**
   * One band.
   *
   * @param coherent whether phases can be predicted at its frequency
   */
  SourcesInBand(double frequency, List<SourceInBand> sources, Paths paths, boolean coherent) {
    this.frequency = frequency;
    this.sources = sources;
    this.paths = paths;
    this.coherent = coherent;
    int lowest = -1;
    SourceInBand.Held least = new SourceInBand.Held(0, null);
    for (int i = 0; i < sources.size(); i++) {
      SourceInBand.Held one = sources.get(i).held();
      if (one.driveDb() < least.driveDb()) {
        least = one;
        lowest = i;
      }
    }
    this.holding = lowest;
    this.held = least;
  }

  /**
   * The sum at a seat.
   *
   * @param parts each source's level, dB SPL
   */
  record Sum(List<Double> parts, double coherentDb, double incoherentDb, double countedDb) {}

  double frequency() {
    return frequency;
  }

  List<SourceInBand> sources() {
    return sources;
  }

  boolean coherent() {
    return coherent;
  }

  /** Common drive in dB, 0 or less, at which no source passes a limit. */
  double driveDb() {
    return held.driveDb();
  }

  /** Index of the source that holds it there, or −1 at full drive. */
  int holding() {
    return holding;
  }

  /** What holds it, or null at full drive. */
  SourceLimit heldBy() {
    return held.by();
  }

  /** What arrives at a seat at a drive in dB. */
  Sum at(int seat, double driveDb, double[] delayMs) {
    Double cabin = paths.cabinGainDb(frequency);
    double gain = driveDb + (cabin == null ? 0 : cabin);
    List<Double> parts = new ArrayList<>();
    double power = 0;
    Phasor pressure = new Phasor(0, 0);
    for (int i = 0; i < sources.size(); i++) {
      double level = sources.get(i).levelDbSpl() + paths.gainDb(i, seat) + gain;
      double late = paths.travelMs(i, seat) + delayMs[i];
      double phase = Math.toRadians(sources.get(i).phaseDeg() - 0.36 * frequency * late);
      double size = Decibels.toAmplitude(level);
      parts.add(level);
      power += size * size;
      pressure = pressure.plus(new Phasor(size * Math.cos(phase), size * Math.sin(phase)));
    }
    double incoherent = Decibels.ofPower(power);
    double floor = incoherent - DEEPEST_DB;
    double inPhase = Math.max(floor, Decibels.ofAmplitude(pressure.modulus()));
    return new Sum(parts, inPhase, incoherent, coherent ? inPhase : incoherent);
  }
}
