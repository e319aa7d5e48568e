package org.footwell.acoustic.exposure;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.exposure.SoundExposureRequest.Band;
import org.footwell.acoustic.exposure.SoundExposureRequest.Period;
import org.footwell.calculation.Answer;

/** Shorthand for days. */
final class Days {

  static final SoundExposure CALCULATION = new SoundExposure();

  private Days() {}

  static SoundExposureRequestPeriodBuilder lasting(double hours) {
    return SoundExposureRequestPeriodBuilder.builder().durationH(hours);
  }

  static Period at(double levelDba, double hours) {
    return lasting(hours).levelDba(levelDba).build();
  }

  static Period of(String spectrum, Double levelDbSpl, double hours) {
    return lasting(hours).spectrum(spectrum).levelDbSpl(levelDbSpl).build();
  }

  static SoundExposureRequest day(Period... periods) {
    return new SoundExposureRequest(List.of(periods), null);
  }

  static SoundExposureRequest day(List<Band> bands, Period... periods) {
    return new SoundExposureRequest(List.of(periods), bands);
  }

  static SoundExposureResult result(SoundExposureRequest day) {
    return answer(day).result();
  }

  static Answer<SoundExposureResult> answer(SoundExposureRequest day) {
    return Answers.of(CALCULATION, day);
  }
}
