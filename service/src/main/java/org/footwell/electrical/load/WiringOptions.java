package org.footwell.electrical.load;

import static org.footwell.electrical.load.OptionsFinding.NONE_IN_WINDOW;
import static org.footwell.electrical.load.OptionsFinding.ONLY_UNEVEN;
import static org.footwell.electrical.load.OptionsFinding.UNEVEN_GIVES_MORE;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.amplifier.AmplifierFault;
import org.footwell.electrical.amplifier.AmplifierFinding;
import org.footwell.electrical.amplifier.StatedAmplifier;
import org.footwell.electrical.load.WiringOptionsResult.Option;
import org.footwell.parts.Safety;

/** All the ways to wire given coils for one channel, and which of them are best. */
public final class WiringOptions implements Calculation<WiringOptionsRequest, WiringOptionsResult> {

  private static final Card<WiringOptionsRequest, WiringOptionsResult> CARD =
      Card.of("wiring-options", WiringOptionsRequest.class, WiringOptionsResult.class)
          .title("Ways to wire coils")
          .purpose(
              "All the ways to wire these coils in series and parallel for an amplifier channel,"
                  + " each once: which loads it accepts, how evenly the coils share, what the"
                  + " amplifier gives clean into each, the best first.")
          .example(
              """
              {"coils": [{"name": "sub_left", "rated_ohm": 4, "coil_count": 2},
                         {"name": "sub_right", "rated_ohm": 4, "coil_count": 2}],
               "maximum_ohm": 16,
               "amplifier": {
                 "minimum_ohm": 2,
                 "ratings": {"supply_v": 14.4, "basis": "clean",
                             "points": [{"load_ohm": 4, "power_w": 100},
                                        {"load_ohm": 2, "power_w": 160}]}},
               "list_count": 5}
              """)
          .sources(
              Solved.KIRCHHOFF,
              Source.of(
                  "The On-Line Encyclopedia of Integer Sequences, A000084 and A006351: how many"
                      + " series-parallel networks there are"),
              Source.COMMON_PRACTICE)
          .limits(
              "Loads and shares are those of rated impedances, taken as resistances: coils of"
                  + " unlike drivers share their power differently from one frequency to the next.",
              "Only networks in series and parallel that use every coil; no coil is left open.",
              "At most 8 coils of one rated impedance, or 6 that differ.",
              "Which coil sits in which driver or box is not looked at; coils of one driver should"
                  + " take the same power.",
              "Clean power is that at the supply voltage stated for the amplifier.")
          .findings(
              NONE_IN_WINDOW,
              ONLY_UNEVEN,
              UNEVEN_GIVES_MORE,
              AmplifierFinding.BRIDGED_MINIMUM_DOUBTFUL,
              AmplifierFinding.CURRENT_LIMIT_FIRST,
              AmplifierFinding.RATING_NOT_CLEAN,
              AmplifierFinding.RATING_ONLY_SQUARE_WAVE,
              AmplifierFinding.RATINGS_REGULATED,
              AmplifierFinding.RATINGS_POWER_LIMITED,
              AmplifierFinding.RATINGS_INCONSISTENT,
              AmplifierFinding.SAG_NEGATIVE,
              AmplifierFinding.OUTSIDE_RATED_LOADS,
              AmplifierFinding.BASIS_NOT_CLEAN,
              AmplifierFinding.BRIDGED_RATINGS_HALVED)
          .refusals(
              OptionsFault.TOO_MANY_COILS,
              OptionsFault.WINDOW_EMPTY,
              AmplifierFault.BRIDGE_OF_BRIDGES,
              AmplifierFault.LOADS_WITHOUT_SPREAD,
              AmplifierFault.SAG_GROSSLY_NEGATIVE,
              AmplifierFault.RATING_IMPOSSIBLE)
          .cautions(Safety.HEAT, Safety.FIRE)
          .build();

  @Override
  public Card<WiringOptionsRequest, WiringOptionsResult> card() {
    return CARD;
  }

  @Override
  public WiringOptionsResult compute(WiringOptionsRequest q, Run run) {
    CoilKinds kinds = CoilKinds.of(q.coils());
    LoadWindow window = LoadWindow.of(q, run);
    StatedAmplifier amplifier = StatedAmplifier.of(q.amplifier(), q.bridged(), "/amplifier", run);
    run.requireNoFaults();

    List<Solved> networks = kinds.networks();
    List<Candidate> ranked = new ArrayList<>();
    int below = 0;
    int above = 0;
    for (Solved network : networks) {
      run.checkDeadline();
      if (window.isAbove(network.ohm())) {
        below++;
      } else if (window.isBelow(network.ohm())) {
        above++;
      } else {
        ranked.add(Candidate.of(network, amplifier));
      }
    }
    ranked.sort(Candidate.BEST_FIRST);
    OptionsRemarks.find(networks, ranked, window, kinds, run);
    List<Option> options =
        ranked.stream().limit(q.listCount()).map(candidate -> candidate.option(kinds)).toList();
    if (!ranked.isEmpty()) {
      explain(ranked.get(0), kinds, amplifier, run);
    }
    Option best = options.isEmpty() ? null : options.get(0);
    return WiringOptionsResultBuilder.builder()
        .networkCount(networks.size())
        .belowWindowCount(below)
        .aboveWindowCount(above)
        .inWindowCount(ranked.size())
        .evenCount((int) ranked.stream().filter(candidate -> candidate.evenness().even()).count())
        .notListedCount(ranked.size() - options.size())
        .smallestLoadOhm(window.smallest().ohm())
        .bestNetwork(best == null ? null : best.network())
        .bestLoadOhm(best == null ? null : (Double) best.loadOhm())
        .bestEvenness(best == null ? null : (Double) best.evenness())
        .bestCleanPowerW(best == null ? null : best.cleanPowerW())
        .options(options)
        .build();
  }

  /** Notes how load, shares and power of the best network follow. */
  private static void explain(Candidate best, CoilKinds kinds, StatedAmplifier amplifier, Run run) {
    Solved.of(kinds.named(best.wiring()), Coil::ratedOhm, run).shares(run);
    if (amplifier != null) {
      amplifier.explain(best.loadOhm(), "/coils");
    }
  }
}
