package org.footwell.electrical.load;

import static org.footwell.electrical.load.OptionsFault.TOO_MANY_COILS;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.VoiceCoil;

/** So few coils that every network of them can be listed. */
@Check.Of(
    value = {"*.rated_ohm", "*.coil_count"},
    says = "At most 8 coils of one rated_ohm, or 6 in all where they differ.")
final class FewCoils implements Check<List<VoiceCoil>> {

  /** Most coils of one rated impedance: 522 networks. */
  static final int MOST_ALIKE = 8;

  /** Most coils that differ: 5504 networks when no two are alike. */
  static final int MOST_UNLIKE = 6;

  @Override
  public void check(List<VoiceCoil> coils, Refusing to) {
    int all = coils.stream().mapToInt(VoiceCoil::coilCount).sum();
    boolean alike = coils.stream().map(VoiceCoil::ratedOhm).distinct().count() == 1;
    if (all > (alike ? MOST_ALIKE : MOST_UNLIKE)) {
      to.refuse(TOO_MANY_COILS)
          .given(
              Phrase.of(alike ? NetworkWords.COILS_ALIKE : NetworkWords.COILS_UNLIKE)
                  .with("count", all))
          .allowed(
              Phrase.of(NetworkWords.COILS_IN_ALL)
                  .with("alike", MOST_ALIKE)
                  .with("unlike", MOST_UNLIKE));
    }
  }
}
