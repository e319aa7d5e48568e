package org.footwell.fitting.comparison;

import java.math.BigDecimal;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;

/** The two parts of the method page, to be changed. */
final class ComparedParts {

  private ComparedParts() {}

  static DriverBuilder factory() {
    return DriverBuilder.builder()
        .ratedOhm(4.0)
        .sensitivity(atVoltage(91))
        .continuousPowerW(25.0)
        .peakPowerW(50.0)
        .sdCm2(132.0)
        .xmaxMm(2.0)
        .fsHz(75.0)
        .massG(350.0);
  }

  static DriverBuilder replacement() {
    return DriverBuilder.builder()
        .ratedOhm(4.0)
        .sensitivity(perWatt(88))
        .continuousPowerW(80.0)
        .peakPowerW(240.0)
        .sdCm2(137.0)
        .xmaxMm(5.0)
        .fsHz(58.0)
        .massG(1250.0)
        .price(new BigDecimal("64.95"));
  }

  static Sensitivity perWatt(double level) {
    return new Sensitivity(level, Basis.ONE_WATT);
  }

  static Sensitivity atVoltage(double level) {
    return new Sensitivity(level, Basis.TWO_POINT_EIGHT_THREE_VOLT);
  }
}
