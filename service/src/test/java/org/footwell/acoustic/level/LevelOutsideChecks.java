package org.footwell.acoustic.level;

import static org.footwell.acoustic.level.SoundLevels.driver;
import static org.footwell.acoustic.level.SoundLevels.oneWatt;
import static org.footwell.acoustic.level.SoundLevels.result;

import java.util.List;
import org.footwell.acoustic.level.SoundLevelRequest.Band;
import org.footwell.physics.NoiseDose;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class LevelOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        // Above 121 dBA the table's whole seconds are too coarse for a ratio; 99 dBA is printed
        // 18:59 where the formula of the same document gives 18:54.
        OutsideCheck.of("sound-level", "exposure_allowed_h", "niosh-98-126-table-1-1.csv")
            .rows(row -> row.number("exposure_dba") <= 121)
            .printed(LevelOutsideChecks::printedHours)
            .computed(row -> NoiseDose.NIOSH_ALLOWED_H.at(row.number("exposure_dba")))
            .withinRelative(0.03),
        OutsideCheck.of("sound-level", "a_weighting_db", "iec-61672-1-a-c-weighting.csv")
            .printed("a_weighting_db")
            .computed(row -> weighting(row))
            .within(0.051),
        OutsideCheck.of("sound-level", "basis difference, dB", "sensitivity-bases.csv")
            .printed("difference_db")
            .computed(row -> basisDifference(row.number("rated_ohm")))
            .within(0.005));
  }

  private static double printedHours(Row row) {
    return row.numberOr("hours", 0)
        + row.numberOr("minutes", 0) / 60
        + row.numberOr("seconds", 0) / 3600;
  }

  /** Weighted by the calculation itself, at the frequency as the table names it. */
  private static double weighting(Row row) {
    SoundLevelRequestBuilder draft =
        oneWatt().spectrum(List.of(new Band(row.number("frequency_hz"), 0.0)));
    SoundLevelResult result = result(draft);
    return result.levelDba() - result.levelDbSpl();
  }

  private static double basisDifference(double ratedOhm) {
    SoundLevelResult result = result(oneWatt().driver(driver().ratedOhm(ratedOhm).build()));
    return result.twoPointEightThreeVoltLevelDbSpl() - result.oneWattLevelDbSpl();
  }
}
