package org.footwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** One driver computed by hand: mms 50 g, cms 0.5 mm/N, sd 200 cm², re 4 ohm, bl 8 T·m, rms 2 kg/s. */
class ThieleSmallTest {

  private static final double FS = 1 / (2 * Math.PI * Math.sqrt(0.05 * 0.0005));

  @Test
  void massAndComplianceAreEachOthersInverseAtTheResonance() {
    assertEquals(50, ThieleSmall.MOVING_MASS.at(FS, 0.5), 1e-9);
    assertEquals(0.5, ThieleSmall.COMPLIANCE.at(FS, 50), 1e-12);
  }

  @Test
  void qAndVolumeFollowFromThem() {
    // ωs = 200 rad/s: qms = 200·0.05/2, qes = 200·0.05·4/64.
    assertEquals(5, ThieleSmall.MECHANICAL_Q.at(FS, 50, 2), 1e-9);
    assertEquals(0.625, ThieleSmall.ELECTRICAL_Q.at(FS, 50, 4, 8), 1e-9);
    // 1.2041·343.2²·0.02²·0.0005 m³ = 28.3653 l.
    assertEquals(28.3653, ThieleSmall.EQUIVALENT_VOLUME.at(1.2041, 343.2, 200, 0.5), 0.00005);
  }

  /** The form of efficiency in bl, sd, mms and re is another way to the same number. */
  @Test
  void efficiencyIsThatOfTheMotor() {
    double vas = ThieleSmall.EQUIVALENT_VOLUME.at(1.2041, 343.2, 200, 0.5);
    double motor = 1.2041 * 64 * 0.02 * 0.02 / (2 * Math.PI * 343.2 * 4 * 0.05 * 0.05);
    assertEquals(motor, ThieleSmall.REFERENCE_EFFICIENCY.at(343.2, FS, vas, 0.625), 1e-9 * motor);
    // 1 W of sound in half space is 112.2 dB at 1 m with this air.
    assertEquals(112.15, ThieleSmall.EFFICIENCY_LEVEL.at(1, 1.2041, 343.2), 0.01);
  }
}
