package org.footwell.acoustic.enclosure;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.DriverBuilder;

/** What requests for closed and for vented boxes share. */
final class BoxDrafts {

  static final double FS_HZ = 40;
  static final double VAS_L = 30;

  private BoxDrafts() {}

  /** A driver whose qts is 0.5, without inductance. */
  static DriverBuilder driver() {
    return DriverBuilder.builder()
        .reOhm(3.2)
        .ratedOhm(4.0)
        .fsHz(FS_HZ)
        .qms(4.0)
        .qes(4.0 / 7)
        .vasL(VAS_L)
        .sdCm2(200.0);
  }

  /** Changes the electrical Q so that the total one is that given. */
  static void qts(DriverBuilder driver, double qts) {
    driver.qes(1 / (1 / qts - 1 / driver.build().qms()));
  }

  static CurveFrequencies only(double... hz) {
    return CurveFrequencies.only(hz);
  }

  static CurveFrequencies range(double from, double to) {
    return CurveFrequencies.range(from, to);
  }

  /** The sentence of the one finding with a code. */
  static String said(Answer<?> answer, String code) {
    List<String> texts =
        answer.findings().stream()
            .filter(finding -> finding.code().equals(code))
            .map(Finding::inFull)
            .toList();
    if (texts.size() != 1) {
      throw new AssertionError(texts.size() + " are " + code + " of " + Answers.codes(answer));
    }
    return texts.get(0);
  }
}
