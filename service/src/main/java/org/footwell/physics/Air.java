package org.footwell.physics;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** Dry air at 101.325 kPa. */
public final class Air {

  /** Celsius zero in kelvin, by definition of the Celsius scale (SI). */
  public static final double ZERO_CELSIUS_K = 273.15;

  /** Reference temperature of ISO 9613-1, kelvin. */
  public static final double REFERENCE_K = 293.15;

  /** Speed of sound at the reference temperature, m/s (ISO 9613-1). */
  public static final double REFERENCE_SPEED_M_PER_S = 343.2;

  /** Density at the reference temperature, kg/m³: 101325 Pa/(287.05 J/(kg·K)·293.15 K). */
  public static final double REFERENCE_DENSITY_KG_PER_M3 = 1.2041;

  public static final Source ISO_9613_1 =
      Source.of("ISO 9613-1:1993, Attenuation of sound outdoors: speed of sound in dry air");

  /**
   * Speed of sound in m/s from the temperature in °C, −50 to 100; an ideal gas, so humidity and
   * frequency are left out. Humid air is faster: 0.37 % at 30 °C and 50 %, 0.71 % at 30 °C and 100 %
   * (O. Cramer, Journal of the Acoustical Society of America 93 (1993) 2510, valid 0 to 30 °C).
   */
  public static final Formula.Of1 SPEED_OF_SOUND =
      Formula.of("speed_of_sound_m_per_s", "343.2·√((t + 273.15)/293.15)", "m/s", ISO_9613_1)
          .with("t", t -> REFERENCE_SPEED_M_PER_S * Math.sqrt((t + ZERO_CELSIUS_K) / REFERENCE_K));

  /** Density in kg/m³ from the temperature in °C, −50 to 100: an ideal gas at constant pressure. */
  public static final Formula.Of1 DENSITY =
      Formula.of("density_kg_per_m3", "1.2041·293.15/(t + 273.15)", "kg/m³", ISO_9613_1)
          .with("t", t -> REFERENCE_DENSITY_KG_PER_M3 * REFERENCE_K / (t + ZERO_CELSIUS_K));

  private Air() {}
}
