package org.footwell.physics;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** How the inside of a vehicle lifts low frequencies: a simple model, measured tables are better. */
public final class CabinGain {

  public static final Source HALF_WAVE = Source.of("Half-wave resonance of a tube");
  public static final Source SEALED_CABIN =
      Source.of("12 dB per octave of a sealed, rigid cabin; common practice, no source");

  /** Below this the cabin is one pressure chamber: Hz from c in m/s and its longest side in m. */
  public static final Formula.Of2 CORNER =
      Formula.of("pressure_corner_hz", "c/(2·L)", "Hz", HALF_WAVE)
          .with("c", "L", (c, length) -> c / (2 * length));

  /** Gain in dB, 0 or more, from corner and frequency in Hz and the largest gain in dB. */
  public static final Formula.Of3 RISE =
      Formula.of("cabin_gain_db", "min(cap, 40·lg(fc/f)), 0 above fc", "dB", SEALED_CABIN)
          .with(
              "fc",
              "f",
              "cap",
              (fc, f, cap) -> Math.min(cap, Math.max(0, 2 * Decibels.ofAmplitude(fc / f))));

  private CabinGain() {}
}
