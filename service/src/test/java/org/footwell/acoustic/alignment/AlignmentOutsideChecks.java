package org.footwell.acoustic.alignment;

import java.util.List;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class AlignmentOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("seat-delays", "speed_of_sound_m_per_s", "iso-9613-1-speed-of-sound.csv")
            .printed("speed_of_sound_m_per_s")
            .computed(AlignmentOutsideChecks::speedOfSound)
            .within(0.005001),
        OutsideCheck.of("seat-delays", "speed_of_sound_m_per_s", "handbook-speed-of-sound.csv")
            .printed("speed_of_sound_m_per_s")
            .computed(AlignmentOutsideChecks::speedOfSound)
            .within(0.1),
        OutsideCheck.of("seat-delays", "sum_loss_db", "cos-phase-sum.csv")
            .printed("change_db")
            .computed(row -> EqualSines.SUM_LOSS.at(row.number("phase_difference_deg")))
            .within(0.005001));
  }

  private static double speedOfSound(Row row) {
    Setup setup = Setup.tape(new double[][] {{1}});
    setup.asked.temperatureC(row.number("temperature_c"));
    return setup.result().speedOfSoundMPerS();
  }
}
