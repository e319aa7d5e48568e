package org.footwell.electrical.load;

import static org.footwell.electrical.load.OptionsFinding.NONE_IN_WINDOW;
import static org.footwell.electrical.load.OptionsFinding.ONLY_UNEVEN;
import static org.footwell.electrical.load.OptionsFinding.UNEVEN_GIVES_MORE;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;

/** What there is to say about the networks as a whole. */
final class OptionsRemarks {

  private OptionsRemarks() {}

  /**
   * Finds what a fitter should know.
   *
   * @param networks all of them
   * @param ranked those in the window, best first
   */
  static void find(
      List<Solved> networks, List<Candidate> ranked, LoadWindow window, CoilKinds kinds, Run run) {
    if (ranked.isEmpty()) {
      run.find(NONE_IN_WINDOW)
          .at(window.smallest().at())
          .with("count", networks.size())
          .with("window", window.inWords())
          .with("nearest", nearest(networks, window));
      return;
    }
    Candidate best = ranked.get(0);
    if (!best.evenness().even()) {
      Candidate mostEven = ranked.stream().min(Candidate.EVENEST_FIRST).orElseThrow();
      run.find(ONLY_UNEVEN)
          .at("/coils")
          .value(mostEven.evenness().ratio())
          .limit(1)
          .own("network", text(mostEven, kinds))
          .with("load", mostEven.loadOhm())
          .with("most", percent(mostEven.evenness().most()))
          .with("least", percent(mostEven.evenness().least()));
    } else {
      // The first that is uneven has the most power of all that are.
      ranked.stream()
          .filter(candidate -> !candidate.evenness().even())
          .findFirst()
          .filter(uneven -> uneven.delivery() != null && uneven.strongerThan(best))
          .ifPresent(uneven -> remarkOn(uneven, best, kinds, run));
    }
  }

  private static void remarkOn(Candidate uneven, Candidate best, CoilKinds kinds, Run run) {
    run.find(UNEVEN_GIVES_MORE)
        .at("/coils")
        .value(uneven.delivery().powerW())
        .limit(best.delivery().powerW())
        .own("network", text(uneven, kinds))
        .with("load", uneven.loadOhm())
        .with("most", percent(uneven.evenness().most()))
        .with("least", percent(uneven.evenness().least()));
  }

  private static String text(Candidate candidate, CoilKinds kinds) {
    return kinds.named(candidate.wiring()).text(CoilKinds::written);
  }

  private static double percent(Evenness.Portion portion) {
    return 100 * portion.power();
  }

  /** The loads next to the window, none of which is in it. */
  private static List<Phrase> nearest(List<Solved> networks, LoadWindow window) {
    List<Phrase> nearest = new ArrayList<>(2);
    loads(networks)
        .filter(window::isAbove)
        .max()
        .ifPresent(ohm -> nearest.add(Phrase.of(NetworkWords.NEAREST_BELOW).with("load", ohm)));
    loads(networks)
        .filter(window::isBelow)
        .min()
        .ifPresent(ohm -> nearest.add(Phrase.of(NetworkWords.NEAREST_ABOVE).with("load", ohm)));
    return nearest;
  }

  private static DoubleStream loads(List<Solved> networks) {
    return networks.stream().mapToDouble(Solved::ohm);
  }
}
