package org.footwell.fitting.comparison.sides;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import org.footwell.calculation.Run;
import org.footwell.parts.Driver;
import org.footwell.parts.Sensitivity.Basis;
import org.footwell.physics.Electricity;
import org.footwell.physics.Piston;
import org.footwell.physics.SensitivityBases;

/** All that follows from one part in its position. */
public final class SideFigures {

  private final ComparedPosition position;
  private final ComparedPart part;
  private final Driver driver;
  private final double density;
  private final Run run;

  /**
   * Of one part.
   *
   * @param density of the air, kg/m³
   */
  public SideFigures(ComparedPosition position, ComparedPart part, double density, Run run) {
    this.position = position;
    this.part = part;
    this.driver = part.driver();
    this.density = density;
    this.run = run;
  }

  /**
   * The figures.
   *
   * @param cleanV the amplifier's clean voltage, V RMS, or null
   */
  public ComparedSide side(Double cleanV) {
    Double difference =
        driver.sensitivity() == null
            ? null
            : (Double) run.apply(SensitivityBases.BASIS_DIFFERENCE, driver.ratedOhm());
    Double oneWatt = difference == null ? null : (Double) oneWattLevel(difference);
    Double atVoltage = difference == null ? null : (Double) voltageLevel(difference);
    Double amplifierW =
        cleanV == null ? null : (Double) run.apply(Electricity.POWER, cleanV, driver.ratedOhm());
    Map<LevelLimit, Double> limits = limits(oneWatt, amplifierW);
    LevelLimit least = least(limits);
    Map<ReachLimit, Double> reach = reach();
    // Travel alone says how low a part does not go, not how low it goes.
    ReachLimit highest = reachBasis(position, part) == null ? null : highest(reach);
    Double area = ofAll(driver.sdCm2());
    return ComparedSideBuilder.builder()
        .name(driver.name())
        .oneWattLevelDbSpl(oneWatt)
        .twoPointEightThreeVoltLevelDbSpl(atVoltage)
        .amplifierPowerW(amplifierW)
        .thermalLevelDbSpl(limits.get(LevelLimit.THERMAL))
        .displacementLevelDbSpl(limits.get(LevelLimit.DISPLACEMENT))
        .amplifierLevelDbSpl(limits.get(LevelLimit.AMPLIFIER))
        .largestLevelDbSpl(limits.get(least))
        .limitedBy(least)
        .displacementLimitedBelowHz(displacementLimitedBelow(limits))
        .lowestUsefulHz(highest == null ? null : reach.get(highest))
        .lowestUsefulBy(highest)
        .coneAreaCm2(area)
        .displacementCm3(
            driver.displacementKnown()
                ? (Double) run.apply(SideFormulas.DISPLACEMENT, area, driver.xmaxMm())
                : null)
        .continuousPowerW(ofAll(driver.continuousPowerW()))
        .peakPowerW(ofAll(driver.peakPowerW()))
        .peakOverContinuousDb(
            driver.continuousPowerW() == null || driver.peakPowerW() == null
                ? null
                : (Double)
                    run.apply(
                        SideFormulas.POWER_CHANGE, driver.peakPowerW(), driver.continuousPowerW()))
        .massG(ofAll(driver.massG()))
        .price(
            driver.price() == null
                ? null
                : driver.price().multiply(BigDecimal.valueOf(position.driverCount())))
        .build();
  }

  private double oneWattLevel(double difference) {
    double stated = driver.sensitivity().levelDbSpl();
    return driver.sensitivity().basis() == Basis.ONE_WATT
        ? stated
        : run.apply(SideFormulas.ONE_WATT_LEVEL, stated, difference);
  }

  private double voltageLevel(double difference) {
    double stated = driver.sensitivity().levelDbSpl();
    return driver.sensitivity().basis() == Basis.ONE_WATT
        ? run.apply(SideFormulas.VOLTAGE_LEVEL, stated, difference)
        : stated;
  }

  private Map<LevelLimit, Double> limits(Double oneWatt, Double amplifierW) {
    Map<LevelLimit, Double> limits = new EnumMap<>(LevelLimit.class);
    if (oneWatt != null && driver.continuousPowerW() != null) {
      limits.put(
          LevelLimit.THERMAL,
          run.apply(SideFormulas.THERMAL_LEVEL, oneWatt, driver.continuousPowerW()));
    }
    if (driver.displacementKnown()) {
      limits.put(
          LevelLimit.DISPLACEMENT,
          run.apply(
              Piston.LEVEL_OF_DISPLACEMENT,
              position.displacementHz(),
              driver.sdCm2(),
              driver.xmaxMm(),
              density));
    }
    if (oneWatt != null && amplifierW != null) {
      limits.put(
          LevelLimit.AMPLIFIER, run.apply(SideFormulas.AMPLIFIER_LEVEL, oneWatt, amplifierW));
    }
    return limits;
  }

  private static LevelLimit least(Map<LevelLimit, Double> limits) {
    return limits.entrySet().stream()
        .min(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(null);
  }

  /** Where travel lets go and power or amplifier take over, Hz; null when one is not known. */
  private Double displacementLimitedBelow(Map<LevelLimit, Double> limits) {
    Map<LevelLimit, Double> others = new EnumMap<>(LevelLimit.class);
    others.putAll(limits);
    if (others.remove(LevelLimit.DISPLACEMENT) == null || others.isEmpty()) {
      return null;
    }
    return frequencyOfTravel(others.get(least(others)));
  }

  private Map<ReachLimit, Double> reach() {
    Map<ReachLimit, Double> reach = new EnumMap<>(ReachLimit.class);
    ReachLimit basis = reachBasis(position, part);
    if (basis != null) {
      reach.put(basis, basis == ReachLimit.RESPONSE ? part.f3Hz() : driver.fsHz());
    }
    if (driver.displacementKnown()) {
      reach.put(ReachLimit.DISPLACEMENT, frequencyOfTravel(position.reachLevelDbSpl()));
    }
    return reach;
  }

  /**
   * What the reach of a part is taken from, travel aside; null when nothing is known. A stated
   * response is no match for a resonance: it counts where both parts have one.
   */
  public static ReachLimit reachBasis(ComparedPosition position, ComparedPart part) {
    boolean bothHaveResponse =
        position.replacementF3Hz() != null
            && (position.factory() == null || position.factoryF3Hz() != null);
    Double resonance = part.driver().fsHz();
    if (part.f3Hz() != null && (bothHaveResponse || resonance == null)) {
      return ReachLimit.RESPONSE;
    }
    return resonance == null ? null : ReachLimit.RESONANCE;
  }

  private static ReachLimit highest(Map<ReachLimit, Double> reach) {
    return reach.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(null);
  }

  private double frequencyOfTravel(double level) {
    return run.apply(
        Piston.FREQUENCY_OF_DISPLACEMENT, driver.sdCm2(), driver.xmaxMm(), level, density);
  }

  private Double ofAll(Double one) {
    return one == null
        ? null
        : (Double) run.apply(SideFormulas.OF_ALL, position.driverCount(), one);
  }
}
