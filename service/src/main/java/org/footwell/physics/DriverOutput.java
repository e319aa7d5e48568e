package org.footwell.physics;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/**
 * What a driver gives for its power, and what heat and cone movement leave of that. A programme is
 * known by its mean power and its crest factor; a peak is held against the peak of a sine.
 */
public final class DriverOutput {

  /**
   * Level in dB SPL from the level for one watt, the mean power in W (above 0) and all that is gained
   * and lost on the way, dB.
   */
  public static final Formula.Of3 LEVEL =
      Formula.of("level_db_spl", "S + 10·lg(P/1 W) + G", "dB SPL", Source.DEFINITION)
          .with("S", "P", "G", (s, p, g) -> s + Decibels.ofPower(p) + g);

  /** What a power in W leaves to the largest, both above 0: dB, negative where it is more. */
  public static final Formula.Of2 POWER_LEFT =
      Formula.of("power_left_db", "10·lg(Pmax/P)", "dB", Source.DEFINITION)
          .with("Pmax", "P", (most, power) -> Decibels.ofPower(most / power));

  /** Mean power in W whose peaks are those of a sine power in W, from the crest factor in dB. */
  public static final Formula.Of2 MEAN_POWER =
      Formula.of("mean_power_w", "P·10^((3.01 − crest)/10)", "W", Source.DEFINITION)
          .with("P", "crest", (p, crest) -> p * Decibels.toPower(Decibels.SINE_CREST - crest));

  /**
   * Level in dB SPL of a programme whose peaks move the cone to xmax, from that of a sine which does,
   * the gain in dB on its way and the crest factor in dB.
   */
  public static final Formula.Of3 LEVEL_AT_XMAX =
      Formula.of("displacement_level_db_spl", "L + G + 3.01 − crest", "dB SPL", Source.DEFINITION)
          .with("L", "G", "crest", (l, g, crest) -> l + g + Decibels.SINE_CREST - crest);

  /**
   * What the movement of a programme leaves to xmax, dB, from its crest factor in dB and its mean
   * square over that of a sine of peak xmax.
   */
  public static final Formula.Of2 MOVEMENT_LEFT =
      Formula.of("movement_left_db", "3.01 − crest − 10·lg(x²)", "dB", Source.DEFINITION)
          .with("crest", "x²", (crest, x) -> Decibels.SINE_CREST - crest - Decibels.ofPower(x));

  /** One-way peak displacement in mm at a level, from xmax in mm and the level that reaches it. */
  public static final Formula.Of3 DISPLACEMENT =
      Formula.of("displacement_mm", "xmax·10^((L − Lmax)/20)", "mm", Source.DEFINITION)
          .with("xmax", "L", "Lmax", (x, l, most) -> x * Decibels.toAmplitude(l - most));

  private DriverOutput() {}
}
