package org.footwell.acoustic.level;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.CabinBuilder;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;

/** Loudspeakers to be heard, and what is answered. */
final class SoundLevels {

  private static final SoundLevel CALCULATION = new SoundLevel();

  private SoundLevels() {}

  /** 90 dB per watt, 8 ohm, 1 W at 1 m. */
  static SoundLevelRequestBuilder oneWatt() {
    return SoundLevelRequestBuilder.builder().driver(driver().build()).powerW(1.0);
  }

  /** 90 dB per watt, 8 ohm. */
  static DriverBuilder driver() {
    return DriverBuilder.builder().sensitivity(new Sensitivity(90.0, Basis.ONE_WATT)).ratedOhm(8.0);
  }

  /** 8 ohm and a level per watt. */
  static Driver perWatt(double levelDbSpl) {
    return driver().sensitivity(new Sensitivity(levelDbSpl, Basis.ONE_WATT)).build();
  }

  /** A cabin of 3 m. */
  static CabinBuilder cabin() {
    return CabinBuilder.builder().lengthM(3.0);
  }

  static Answer<SoundLevelResult> answer(SoundLevelRequestBuilder heard) {
    return Answers.of(CALCULATION, heard.build());
  }

  static SoundLevelResult result(SoundLevelRequestBuilder heard) {
    return answer(heard).result();
  }

  static List<String> refusedAt(SoundLevelRequestBuilder heard) {
    return Answers.faults(CALCULATION, heard.build()).stream().map(Fault::pointer).toList();
  }
}
