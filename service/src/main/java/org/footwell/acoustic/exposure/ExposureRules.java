package org.footwell.acoustic.exposure;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.footwell.acoustic.exposure.SoundExposureRequest.Period;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Names;
import org.footwell.calculation.Run;

/** The rules between the fields of a request; every breach is refused, all at once. */
final class ExposureRules {

  private static final double DAY_H = 24;

  private ExposureRules() {}

  /** Ends the run if anything is amiss. */
  static void require(SoundExposureRequest q, Spectra spectra, Run run) {
    List<Period> periods = q.periods();
    for (int i = 0; i < periods.size(); i++) {
      weightable(periods.get(i), "/periods/" + i, spectra, run);
    }
    double hours = periods.stream().mapToDouble(Period::durationH).sum();
    if (hours > DAY_H) {
      run.refuse(ExposureFault.DAY_TOO_LONG).at("/periods").given(hours).allowed("at most 24 h");
    }
    run.requireNoFaults();
  }

  private static void weightable(Period period, String at, Spectra spectra, Run run) {
    if (period.levelDba() == null && period.spectrum() == null && period.levelDbSpl() != null) {
      run.refuse(ExposureFault.UNWEIGHTED_LEVEL)
          .at(at + "/level_db_spl")
          .given(period.levelDbSpl())
          .allowed("level_dba, or a spectrum beside it");
      return;
    }
    Map<String, Object> either = new HashMap<>();
    either.put("level_dba", period.levelDba());
    either.put("spectrum", period.spectrum());
    run.exactlyOneOf(at, either);
    if (period.levelDba() != null && period.levelDbSpl() != null) {
      run.refuse(CoreFault.NOT_ALLOWED)
          .at(at + "/level_db_spl")
          .given(period.levelDbSpl())
          .allowed("absent beside level_dba");
    }
    if (period.spectrum() == null) {
      return;
    }
    if (period.levelDbc() != null) {
      run.refuse(ExposureFault.C_LEVEL_GIVEN_TWICE).at(at + "/level_dbc").given(period.levelDbc());
    }
    if (!spectra.names().contains(period.spectrum())) {
      run.refuse(CoreFault.DANGLING_REFERENCE)
          .at(at + "/spectrum")
          .given(period.spectrum())
          .allowed("spectra of bands")
          .with("nearest", Names.didYouMean(period.spectrum(), spectra.names()));
    }
  }
}
