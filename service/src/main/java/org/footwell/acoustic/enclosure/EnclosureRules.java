package org.footwell.acoustic.enclosure;

import static org.footwell.acoustic.enclosure.EnclosureFault.ALIGNMENT_NOT_FOUND;
import static org.footwell.acoustic.enclosure.EnclosureFault.PORT_FILLS_BOX;
import static org.footwell.acoustic.enclosure.EnclosureFault.QTC_UNREACHABLE;
import static org.footwell.acoustic.enclosure.EnclosureFault.TUNING_UNREACHABLE;

import java.util.Optional;
import org.footwell.acoustic.enclosure.VentedBoxResult.Alignment;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.BoxPort;

/** Asks for boxes and ports, and refuses those that cannot be had. */
final class EnclosureRules {

  private EnclosureRules() {}

  /** The closed box of a request. */
  static ClosedAlignment closed(ClosedBoxRequest q, Run run) {
    return ClosedAlignment.inBox(q.driver(), q.box(), q.sourceOhm(), run)
        .orElseThrow(() -> unreachable(q, run));
  }

  private static Refused unreachable(ClosedBoxRequest q, Run run) {
    double qts = ClosedAlignment.freeAirQ(q.driver(), q.sourceOhm(), Arithmetic.SILENT);
    boolean tight = ClosedAlignment.loss(q.box(), Arithmetic.SILENT) == 0;
    run.refuse(QTC_UNREACHABLE)
        .at(q.sizePointer())
        .given(ClosedAlignment.wantedQ(q.box(), Arithmetic.SILENT))
        .allowed(
            Phrase.of(tight ? BoxWords.ABOVE_OWN_QTS : BoxWords.WITHIN_LOSSES).with("qts", qts));
    return run.refused();
  }

  /** The vented box of a request that gives none, by the total Q of its driver. */
  static Alignment vented(VentedBoxRequest q, double qts, Run run) {
    double ql = q.box().ventedQl();
    Optional<Alignment> found =
        VentedAlignment.of(qts, ql, q.driver().vasL(), q.driver().fsHz(), run);
    if (found.isEmpty()) {
      run.refuse(ALIGNMENT_NOT_FOUND)
          .at("/box/volume_l")
          .given(Phrase.of(BoxWords.QTS_WITH_QL).with("qts", qts).with("ql", ql))
          .allowed(Phrase.of(BoxWords.OWN_ALIGNMENT));
      throw run.refused();
    }
    return found.get();
  }

  /**
   * A port that can be built.
   *
   * @param volume of air in the box, litre
   * @param wantedHz tuning the port shall give, or null where its length decides
   * @param c speed of sound, m/s
   */
  static PortTuning port(BoxPort port, double volume, Double wantedHz, double c, Run run) {
    double limit = PortTuning.limitHz(port, volume, c);
    if (wantedHz != null && wantedHz >= limit) {
      run.refuse(TUNING_UNREACHABLE)
          .at("/box/fb_hz")
          .given(wantedHz)
          .limit(limit)
          .allowed(Phrase.of(BoxWords.WITH_THIS_PORT).with("limit", limit));
      throw run.refused();
    }
    PortTuning tuned = PortTuning.of(port, volume, wantedHz, c, run);
    if (tuned.displacementL() >= volume) {
      run.refuse(PORT_FILLS_BOX)
          .at("/port")
          .given(tuned.displacementL())
          .with("length", 1000 * tuned.length())
          .with("room", tuned.displacementL())
          .allowed(Allowed.below(volume, "l"));
      throw run.refused();
    }
    return tuned;
  }
}
