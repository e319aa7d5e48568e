package org.footwell.measured.arrival;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The sound of a small source in a hard box, as the sum of its modes: p = 4π·c²/V·Σ φ(s)·φ(r)/(ωn² −
 * ω² + 2jδω), φ products of cosines with √2 for every axis along which they vary, δ = 6.9/T. What is
 * left out of the sum is above {@link #HIGHEST_HZ}. Far away from walls, and early enough, this is
 * e^(−jkr)/r. After H. Kuttruff, Room Acoustics; from memory, not checked against a copy.
 */
final class ModalCabin {

  static final double SPEED = 343.2;

  /** Modes above this are left out, Hz. */
  private static final double HIGHEST_HZ = 1600;

  /** Leaks let the pressure of the whole cabin go below this, Hz. */
  private static final double LEAK_HZ = 6;

  /** One mode: ωn², and its size at source times that at the receiver. */
  private record Mode(double square, double size) {}

  private final double[] box;
  private final double[] source;
  private final double[] ear;
  private final double decayS;
  private final List<Mode> modes = new ArrayList<>();
  private final double factor;
  private final double distanceM;

  /**
   * A cabin.
   *
   * @param box length, width and height, m
   * @param decayS time of decay to −60 dB, s
   * @param source where the loudspeaker is, m from a corner
   * @param ear where the microphone is
   */
  ModalCabin(double[] box, double decayS, double[] source, double[] ear) {
    this.box = box;
    this.source = source;
    this.ear = ear;
    this.decayS = decayS;
    double square = 0;
    double volume = 1;
    for (int axis = 0; axis < 3; axis++) {
      square += Math.pow(source[axis] - ear[axis], 2);
      volume *= box[axis];
    }
    distanceM = Math.sqrt(square);
    factor = 4 * Math.PI * SPEED * SPEED / volume;
    int[] n = new int[3];
    for (n[0] = 0; hz(box[0], n[0]) < HIGHEST_HZ; n[0]++) {
      for (n[1] = 0; hz(box[1], n[1]) < HIGHEST_HZ; n[1]++) {
        for (n[2] = 0; hz(box[2], n[2]) < HIGHEST_HZ; n[2]++) {
          double across = Math.hypot(hz(box[0], n[0]), hz(box[1], n[1]));
          double hz = Math.hypot(across, hz(box[2], n[2]));
          if (hz < HIGHEST_HZ) {
            double size = 1;
            for (int axis = 0; axis < 3; axis++) {
              double k = Math.PI * n[axis] / box[axis];
              size *= (n[axis] == 0 ? 1 : 2) * Math.cos(k * source[axis]) * Math.cos(k * ear[axis]);
            }
            modes.add(new Mode(Math.pow(2 * Math.PI * hz, 2), size));
          }
        }
      }
    }
  }

  private static double hz(double sideM, int order) {
    return order * SPEED / 2 / sideM;
  }

  /**
   * A loudspeaker low on a side or at an end, a head somewhere in the middle of a cabin 1.6 to 3.4 m
   * long, in which sound takes 0.08 to 0.4 s to die away.
   */
  static ModalCabin any(Random random) {
    double[] box = {within(1.6, 3.4, random), within(1.2, 1.6, random), within(0.9, 1.4, random)};
    double decay = within(0.08, 0.4, random);
    double[] source = {
      box[0] * within(0.03, 0.97, random),
      box[1] * (random.nextBoolean() ? 0.04 : 0.96),
      box[2] * within(0.05, 0.5, random)
    };
    double[] ear = {
      box[0] * within(0.35, 0.7, random),
      box[1] * within(0.2, 0.8, random),
      box[2] * within(0.6, 0.9, random)
    };
    return new ModalCabin(box, decay, source, ear);
  }

  /** The same with the loudspeaker on the other side, to 5 cm and what it is moved along, m. */
  ModalCabin otherSide(Random random, double asideM) {
    double along = (source[0] < box[0] / 2 ? asideM : -asideM) + within(-0.05, 0.05, random);
    double[] there = {
      Math.max(0, Math.min(box[0], source[0] + along)),
      box[1] - source[1],
      Math.max(0, source[2] + within(-0.05, 0.05, random))
    };
    return new ModalCabin(box, decayS, there, ear);
  }

  double lengthM() {
    return box[0];
  }

  private static double within(double from, double to, Random random) {
    return from + (to - from) * random.nextDouble();
  }

  /** The direct way from loudspeaker to microphone, m. */
  double distanceM() {
    return distanceM;
  }

  /** Pressure at a frequency in Hz, that of the direct sound at 1 m being 1. */
  double[] at(double hz) {
    if (hz <= 0 || hz > HIGHEST_HZ) {
      return new double[2];
    }
    double w = 2 * Math.PI * hz;
    double re = 0;
    double im = 0;
    for (Mode mode : modes) {
      double damp = mode.square() == 0 ? 2 * Math.PI * LEAK_HZ * w : 2 * 6.9 / decayS * w;
      double stiff = mode.square() - w * w;
      double size = mode.size() / (stiff * stiff + damp * damp);
      re += size * stiff;
      im -= size * damp;
    }
    return new double[] {factor * re, factor * im};
  }
}
