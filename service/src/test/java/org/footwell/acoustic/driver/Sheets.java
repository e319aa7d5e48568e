package org.footwell.acoustic.driver;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import org.footwell.Answers;
import org.footwell.acoustic.driver.sheet.DriverTolerance;
import org.footwell.acoustic.driver.sheet.DriverToleranceBuilder;
import org.footwell.calculation.Answer;

/** Data sheets of drivers, and what is answered. */
final class Sheets {

  /** Figures with all their digits, so that nothing is put down to printing. */
  static final DriverTolerance EXACT =
      DriverToleranceBuilder.builder().printedRounding(false).build();

  /** How a figure is set, by the name of its field. */
  static final Map<String, BiConsumer<DriverCheckRequestBuilder, Double>> FIGURES =
      new LinkedHashMap<>();

  static {
    FIGURES.put("re_ohm", DriverCheckRequestBuilder::reOhm);
    FIGURES.put("fs_hz", DriverCheckRequestBuilder::fsHz);
    FIGURES.put("qms", DriverCheckRequestBuilder::qms);
    FIGURES.put("qes", DriverCheckRequestBuilder::qes);
    FIGURES.put("qts", DriverCheckRequestBuilder::qts);
    FIGURES.put("vas_l", DriverCheckRequestBuilder::vasL);
    FIGURES.put("sd_cm2", DriverCheckRequestBuilder::sdCm2);
    FIGURES.put("bl_tm", DriverCheckRequestBuilder::blTm);
    FIGURES.put("mms_g", DriverCheckRequestBuilder::mmsG);
    FIGURES.put("cms_mm_per_n", DriverCheckRequestBuilder::cmsMmPerN);
    FIGURES.put("rms_kg_per_s", DriverCheckRequestBuilder::rmsKgPerS);
  }

  private Sheets() {}

  /** A rated impedance of 4 ohm, nothing else. */
  static DriverCheckRequestBuilder rated() {
    return DriverCheckRequestBuilder.builder().ratedOhm(4.0);
  }

  /** An invented 25 cm woofer whose mechanics are 62 g, 0.28 mm/N, 2.1 kg/s; printed as usual. */
  static DriverCheckRequestBuilder woofer() {
    return rated()
        .reOhm(3.4)
        .fsHz(38.0)
        .qms(7.09)
        .qes(0.56)
        .qts(0.52)
        .vasL(43.2)
        .sdCm2(330.0)
        .blTm(9.5)
        .mmsG(62.0)
        .cmsMmPerN(0.28)
        .rmsKgPerS(2.1);
  }

  static Answer<DriverCheckResult> answer(DriverCheckRequestBuilder sheet) {
    return Answers.of(new DriverCheck(), sheet.build());
  }

  static DriverCheckResult result(DriverCheckRequestBuilder sheet) {
    return answer(sheet).result();
  }
}
