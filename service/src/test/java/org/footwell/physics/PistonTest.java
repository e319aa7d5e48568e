package org.footwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PistonTest {

  @Test
  void aCircleOfTwentyCentimetresHasThatDiameterAndItsCircumferenceIsAWavelengthAtKaOne() {
    double sd = Math.PI * 100;
    assertEquals(200, Piston.EFFECTIVE_DIAMETER.at(sd), 1e-9);
    double f = Piston.FREQUENCY_OF_KA.at(1, sd, 343.2);
    assertEquals(343.2 / (Math.PI * 0.2), f, 1e-9);
    assertEquals(1, Piston.KA.at(f, sd, 343.2), 1e-12);
  }

  /** 1.2041·(100·π)²·0.05·0.001/(2·π·√2) = 0.66871 Pa, which is 90.48 dB. */
  @Test
  void fiveHundredSquareCentimetresMovingAMillimetreAtFiftyHertz() {
    double level = Piston.LEVEL_OF_DISPLACEMENT.at(50, 500, 1, Air.REFERENCE_DENSITY_KG_PER_M3);
    assertEquals(90.48, level, 0.005);
    double twiceTheFrequency =
        Piston.LEVEL_OF_DISPLACEMENT.at(100, 500, 1, Air.REFERENCE_DENSITY_KG_PER_M3);
    assertEquals(12.04, twiceTheFrequency - level, 0.005);
    assertEquals(
        50,
        Piston.FREQUENCY_OF_DISPLACEMENT.at(500, 1, level, Air.REFERENCE_DENSITY_KG_PER_M3),
        1e-9);
    assertEquals(
        1, Piston.DISPLACEMENT_OF_LEVEL.at(50, 500, level, Air.REFERENCE_DENSITY_KG_PER_M3), 1e-12);
  }
}
