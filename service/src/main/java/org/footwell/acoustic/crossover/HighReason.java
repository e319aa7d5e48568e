package org.footwell.acoustic.crossover;

import java.util.List;
import org.footwell.calculation.text.Words;

/** Why a crossover may not be higher. */
@SuppressWarnings("ImmutableEnumChecker") // lists that nobody can change
public enum HighReason implements Words {
  /** The lower way's cone gets large against the wavelength. */
  BEAMING(true, Remedy.SMALLER_LOWER_DRIVER, Remedy.WAY_BETWEEN, Remedy.HIGHER_BEAMING_KA),
  /** The centres of both ways get far apart against the wavelength. */
  SPACING(true, Remedy.CLOSER_TOGETHER),
  /** The ear would find the subwoofer's place. */
  LOCALISATION(true, Remedy.SUBWOOFER_NEARER),
  /** The lower way's heat from its part of the programme. */
  HEAT(false, Remedy.LOWER_LEVEL, Remedy.LOWER_MORE_POWER),
  /** What the lower way's data sheet recommends. */
  DATA_SHEET(false, Remedy.LOWER_REACHES_HIGHER, Remedy.WAY_BETWEEN),
  /** What the processor can be set to. */
  PROCESSOR(false, Remedy.PROCESSOR_HIGHER);

  private final boolean costsSoundOnly;
  private final List<Remedy> remedies;

  HighReason(boolean costsSoundOnly, Remedy... remedies) {
    this.costsSoundOnly = costsSoundOnly;
    this.remedies = List.of(remedies);
  }

  /** Whether going higher costs evenness of sound, and neither a driver nor what is possible. */
  boolean costsSoundOnly() {
    return costsSoundOnly;
  }

  /** What would move this end. */
  List<Remedy> remedies() {
    return remedies;
  }
}
