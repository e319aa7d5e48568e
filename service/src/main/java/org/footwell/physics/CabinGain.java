package org.footwell.physics;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** How the inside of a vehicle lifts low frequencies: a simple model, measured tables are better. */
public final class CabinGain {

  public static final Source HALF_WAVE = Source.of("Half-wave resonance of a tube");
  public static final Source SEALED_CABIN =
      Source.of("12 dB per octave of a sealed, rigid cabin; common practice, no source");

  public static final Source RIGID_VOLUME =
      Source.of(
          "Pressure ρ·c²·Sd·x/V of a piston in a small closed rigid room over that in half space at"
              + " 1 m, ρ·ω²·Sd·x/(2·π)");

  /**
   * Below this a closed rigid room of a volume in m³ has more pressure than half space at 1 m has: Hz,
   * with c in m/s. As long as the room is small against the wavelength.
   */
  public static final Formula.Of2 VOLUME_CORNER =
      Formula.of("pressure_corner_hz", "c/(2·π)·√(2·π·1 m/V)", "Hz", RIGID_VOLUME)
          .with("c", "V", (c, v) -> c / (2 * Math.PI) * Math.sqrt(2 * Math.PI / v));

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

  /** The distance in m that counts: the level falls no further than to the critical distance, m. */
  public static double countedM(double distanceM, double criticalDistanceM) {
    return Math.min(distanceM, criticalDistanceM);
  }
}
