package org.footwell.acoustic.crossover;

import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.WayRole;

/** A way and its driver, to be changed in one row. */
final class DraftWay {
  private final CrossoverWayBuilder way = CrossoverWayBuilder.builder();
  private final DriverBuilder driver = DriverBuilder.builder();

  DraftWay id(String given) {
    way.id(given);
    return this;
  }

  DraftWay role(WayRole given) {
    way.role(given);
    return this;
  }

  DraftWay fcHz(Double given) {
    way.fcHz(given);
    return this;
  }

  DraftWay resonanceMultiple(Double given) {
    way.resonanceMultiple(given);
    return this;
  }

  DraftWay spacingToNextMm(Double given) {
    way.spacingToNextMm(given);
    return this;
  }

  DraftWay sdCm2(Double given) {
    driver.sdCm2(given);
    return this;
  }

  DraftWay fsHz(Double given) {
    driver.fsHz(given);
    return this;
  }

  DraftWay qts(Double given) {
    driver.qts(given);
    return this;
  }

  DraftWay xmaxMm(Double given) {
    driver.xmaxMm(given);
    return this;
  }

  DraftWay ratedOhm(Double given) {
    driver.ratedOhm(given);
    return this;
  }

  DraftWay reOhm(Double given) {
    driver.reOhm(given);
    return this;
  }

  DraftWay sensitivity(Sensitivity given) {
    driver.sensitivity(given);
    return this;
  }

  DraftWay continuousPowerW(Double given) {
    driver.continuousPowerW(given);
    return this;
  }

  DraftWay lowerLimitHz(Double given) {
    driver.lowerLimitHz(given);
    return this;
  }

  DraftWay upperLimitHz(Double given) {
    driver.upperLimitHz(given);
    return this;
  }

  CrossoverWay build() {
    return way.driver(driver.build()).build();
  }
}
