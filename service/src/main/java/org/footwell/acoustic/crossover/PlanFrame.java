package org.footwell.acoustic.crossover;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.physics.Air;
import org.footwell.physics.Decibels;
import org.footwell.physics.PointSource;
import org.footwell.physics.ProgrammeSpectrum;

/**
 * What holds for all ways.
 *
 * @param ways from low to high
 * @param scope within what crossovers are looked for
 * @param sineLevelDbSpl the wanted level of a sine at 1 m
 * @param programmeLevelDbSpl average level at 1 m of a programme whose peaks are as high
 */
record PlanFrame(
    List<CrossoverWay> ways,
    CrossoverScope scope,
    double speedOfSoundMPerS,
    double densityKgPerM3,
    double sineLevelDbSpl,
    double programmeLevelDbSpl,
    ProgrammeSpectrum spectrum) {

  private static final Formula.Of2 AT_ONE_METRE =
      Formula.of("sine_level_db_spl", "L + 20·lg(r/1 m)", "dB SPL", PointSource.INVERSE_SQUARE)
          .with("L", "r", (level, r) -> level + Decibels.ofAmplitude(r));

  /** From a level of a sine to that of a programme with the same peaks, both RMS. */
  private static final Formula.Of2 PROGRAMME_LEVEL =
      Formula.of("programme_level_db_spl", "L + 3.01 − crest", "dB SPL", DEFINITION)
          .with("L", "crest", (level, crest) -> level + Decibels.SINE_CREST - crest);

  static PlanFrame of(
      List<CrossoverWay> ways,
      CrossoverScope scope,
      WantedLevel wanted,
      double temperatureC,
      Arithmetic steps) {
    double level = steps.apply(AT_ONE_METRE, wanted.sineDbSpl(), wanted.distanceM());
    return new PlanFrame(
        ways,
        scope,
        steps.apply(Air.SPEED_OF_SOUND, temperatureC),
        steps.apply(Air.DENSITY, temperatureC),
        level,
        steps.apply(PROGRAMME_LEVEL, level, wanted.crestFactorDb()),
        wanted.spectrum());
  }
}
