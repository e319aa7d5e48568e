package org.footwell.fitting.comparison;

import java.math.BigDecimal;
import org.footwell.fitting.comparison.sides.ComparedDriver;
import org.footwell.fitting.comparison.sides.ComparedDriverBuilder;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;

/** A driver to be changed. */
final class DriverDraft {
  String name;
  Double ratedOhm = 4.0;
  Sensitivity sensitivity = perWatt(88);
  Double continuousPowerW = 80.0;
  Double peakPowerW = 240.0;
  Double sdCm2 = 137.0;
  Double xmaxMm = 5.0;
  Double fsHz = 58.0;
  Double f3Hz;
  Double massG = 1250.0;
  BigDecimal price = new BigDecimal("64.95");

  /** The factory part of the method page. */
  static DriverDraft factory() {
    DriverDraft draft = new DriverDraft();
    draft.sensitivity = atVoltage(91);
    draft.continuousPowerW = 25.0;
    draft.peakPowerW = 50.0;
    draft.sdCm2 = 132.0;
    draft.xmaxMm = 2.0;
    draft.fsHz = 75.0;
    draft.massG = 350.0;
    draft.price = null;
    return draft;
  }

  static Sensitivity perWatt(double level) {
    return new Sensitivity(level, Basis.ONE_WATT);
  }

  static Sensitivity atVoltage(double level) {
    return new Sensitivity(level, Basis.TWO_POINT_EIGHT_THREE_VOLT);
  }

  ComparedDriver driver() {
    return ComparedDriverBuilder.builder()
        .name(name)
        .ratedOhm(ratedOhm)
        .sensitivity(sensitivity)
        .continuousPowerW(continuousPowerW)
        .peakPowerW(peakPowerW)
        .sdCm2(sdCm2)
        .xmaxMm(xmaxMm)
        .fsHz(fsHz)
        .f3Hz(f3Hz)
        .massG(massG)
        .price(price)
        .build();
  }
}
