package org.footwell.physics;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** The two drives a loudspeaker's sensitivity is stated for, and what lies between them. */
public final class SensitivityBases {

  public static final Source IEC_60268_5 =
      Source.of("IEC 60268-5:2003, Sound system equipment, Part 5: Loudspeakers: sensitivity");

  /** The usual test voltage, V RMS: a watt into 8 ohm. */
  public static final double REFERENCE_V = 2.83;

  /** Level at 2.83 V less the level at 1 W into the rated impedance in ohm (above 0), dB. */
  public static final Formula.Of1 BASIS_DIFFERENCE =
      Formula.of("basis_difference_db", "10·lg(2.83²/R)", "dB", IEC_60268_5)
          .with("R", r -> Decibels.ofPower(REFERENCE_V * REFERENCE_V / r));

  private SensitivityBases() {}
}
