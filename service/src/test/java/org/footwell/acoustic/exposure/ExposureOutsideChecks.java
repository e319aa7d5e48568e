package org.footwell.acoustic.exposure;

import static org.footwell.acoustic.exposure.Days.day;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.exposure.SoundExposureRequest.Band;
import org.footwell.acoustic.exposure.SoundExposureRequest.Period;
import org.footwell.acoustic.exposure.SoundExposureResult.Dose;
import org.footwell.physics.NoiseDose;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class ExposureOutsideChecks extends OutsideChecks {

  private static final String WEIGHTINGS = "iec-61672-1-a-c-weighting.csv";
  private static final String WORKED = "noise-dose-worked.csv";

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("sound-exposure", "A-weighting, dB", WEIGHTINGS)
            .printed("a_weighting_db")
            .computed(row -> weighted(row).levelDba() - 100)
            .within(0.051),
        OutsideCheck.of("sound-exposure", "C-weighting, dB", WEIGHTINGS)
            .printed("c_weighting_db")
            .computed(row -> weighted(row).levelDbc() - 100)
            .within(0.051),
        // Two digits are printed from 7 h down: half of the last is 4.5 % at worst, at 1.1 h.
        OutsideCheck.of("sound-exposure", "reference duration, h", "29-cfr-1910-95-table-g-16a.csv")
            .printed("reference_duration_h")
            .computed(row -> NoiseDose.CFR_REFERENCE_H.at(row.number("level_dba")))
            .withinRelative(0.045),
        OutsideCheck.of("sound-exposure", "NIOSH TWA, dBA", "niosh-dose-and-twa.csv")
            .printed("twa_dba")
            .computed(row -> NoiseDose.NIOSH_TWA.at(row.number("dose_percent")))
            .within(0.051),
        OutsideCheck.of("sound-exposure", "dose of a mixed day by NIOSH, %", WORKED)
            .rows(row -> row.text("rule").equals("niosh"))
            .printed("dose_percent")
            .computed(row -> dose(row).dosePercent())
            .within(0.5),
        OutsideCheck.of("sound-exposure", "dose of a mixed day by 29 CFR 1910.95, %", WORKED)
            .rows(row -> row.text("rule").equals("cfr"))
            .printed("dose_percent")
            .computed(row -> dose(row).dosePercent())
            .within(0.05),
        OutsideCheck.of("sound-exposure", "its TWA, dBA", WORKED)
            .rows(row -> row.text("rule").equals("cfr"))
            .printed("twa_dba")
            .computed(row -> dose(row).twaDba())
            .within(0.0051));
  }

  private static SoundExposureResult.Line weighted(Row row) {
    List<Band> band = List.of(new Band("one", row.number("frequency_hz"), 100.0));
    return Days.result(day(band, Days.of("one", null, 1))).periods().get(0);
  }

  private static Dose dose(Row row) {
    List<Period> periods = new ArrayList<>();
    for (int i = 1; i <= 3; i++) {
      if (!row.text("level_" + i + "_dba").isBlank()) {
        periods.add(Days.at(row.number("level_" + i + "_dba"), row.number("hours_" + i)));
      }
    }
    SoundExposureResult result = Days.result(new SoundExposureRequest(periods, null));
    return row.text("rule").equals("niosh") ? result.niosh() : result.cfr();
  }
}
