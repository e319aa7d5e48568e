package org.footwell.signal;

import org.footwell.calculation.text.Words;

/** Kinds of sections an equaliser is made of. */
public enum SectionKind implements Words {
  /** A bell that lifts or lowers around its frequency. */
  PEAK,
  /** Lifts or lowers what lies below its frequency, second order. */
  LOW_SHELF,
  /** Lifts or lowers what lies above its frequency, second order. */
  HIGH_SHELF,
  /** Lifts or lowers what lies below its frequency, first order. */
  LOW_SHELF_1,
  /** Lifts or lowers what lies above its frequency, first order. */
  HIGH_SHELF_1,
  /** Turns the phase by −90 degrees at its frequency, −180 far above. */
  ALL_PASS_1,
  /** Turns the phase by −180 degrees at its frequency, −360 far above. */
  ALL_PASS_2,
  /** Takes its frequency out. */
  NOTCH;

  /** Whether it has a quality factor. */
  public boolean takesQ() {
    return this != LOW_SHELF_1 && this != HIGH_SHELF_1 && this != ALL_PASS_1;
  }

  /** Whether it has a gain. */
  public boolean takesGain() {
    return this != ALL_PASS_1 && this != ALL_PASS_2 && this != NOTCH;
  }

  /**
   * The section.
   *
   * @param frequencyHz above 0 and below half the sample rate
   * @param q above 0; of no effect on kinds without
   * @param gainDb of no effect on kinds without
   */
  public Biquad design(double frequencyHz, double q, double gainDb, double rateHz) {
    return switch (this) {
      case PEAK -> SectionDesign.peak(frequencyHz, q, gainDb, rateHz);
      case LOW_SHELF -> SectionDesign.lowShelf(frequencyHz, q, gainDb, rateHz);
      case HIGH_SHELF -> SectionDesign.highShelf(frequencyHz, q, gainDb, rateHz);
      case LOW_SHELF_1 -> SectionDesign.lowShelfFirst(frequencyHz, gainDb, rateHz);
      case HIGH_SHELF_1 -> SectionDesign.highShelfFirst(frequencyHz, gainDb, rateHz);
      case ALL_PASS_1 -> SectionDesign.allPassFirst(frequencyHz, rateHz);
      case ALL_PASS_2 -> SectionDesign.allPass(frequencyHz, q, rateHz);
      case NOTCH -> SectionDesign.notch(frequencyHz, q, rateHz);
    };
  }
}
