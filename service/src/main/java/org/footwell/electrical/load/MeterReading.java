package org.footwell.electrical.load;

import static org.footwell.electrical.load.LoadFinding.METER_READING_SPLIT;
import static org.footwell.electrical.load.LoadFinding.METER_READING_UNKNOWN;
import static org.footwell.electrical.load.LoadFinding.RE_UNLIKE_RATED;

import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.parts.VoiceCoil;

/** What a multimeter, which measures with direct current, shows at a network. */
final class MeterReading {

  // Common practice, no source: re lies a little below the rated impedance.
  private static final double LEAST_OF_RATED = 0.6;
  private static final double MOST_OF_RATED = 1.1;

  private MeterReading() {}

  /** The reading in ohm, or null when it cannot be said; says why if any resistance was given. */
  static Double of(Network<Coil> network, boolean split, Run run) {
    List<Coil> coils = network.coils();
    if (coils.stream().allMatch(coil -> coil.reOhm() == null)) {
      return null;
    }
    if (split) {
      run.find(METER_READING_SPLIT).at(NetworkReader.NETWORK);
      return null;
    }
    List<String> unknown =
        coils.stream().filter(coil -> coil.reOhm() == null).map(Coil::name).toList();
    if (!unknown.isEmpty()) {
      run.find(METER_READING_UNKNOWN).at(NetworkReader.NETWORK).own("coils", unknown);
      return null;
    }
    return Solved.of(network, Coil::reOhm, run).ohm();
  }

  /** Warns of resistances that can hardly belong to the rated impedance beside them. */
  static void check(List<VoiceCoil> listed, Run run) {
    for (int i = 0; i < listed.size(); i++) {
      VoiceCoil coil = listed.get(i);
      double ofRated = coil.reOhm() == null ? 1 : coil.reOhm() / coil.ratedOhm();
      if (ofRated < LEAST_OF_RATED || ofRated > MOST_OF_RATED) {
        run.find(RE_UNLIKE_RATED)
            .at("/coils/" + i + "/re_ohm")
            .value(ofRated)
            .limit(ofRated < 1 ? LEAST_OF_RATED : MOST_OF_RATED)
            .own("coil", coil.name());
      }
    }
  }
}
