package org.footwell.acoustic.seats;

import java.util.HashSet;
import java.util.Set;
import org.footwell.acoustic.seats.Paths.Way;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Given;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.Filter;
import org.footwell.parts.Position;
import org.footwell.parts.Seat;

/** What a request must keep to beyond its declared rules; every breach is refused, all at once. */
final class SeatLevelRules {

  /** Nearer than this nothing is a point source, m; the bound of a measured distance too. */
  private static final double NEAREST_M = 0.05;

  private final SeatLevelsRequest q;
  private final Run run;

  private SeatLevelRules(SeatLevelsRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  /** Ends the run if anything is amiss. */
  static void require(SeatLevelsRequest q, Run run) {
    SeatLevelRules rules = new SeatLevelRules(q, run);
    for (int i = 0; i < q.sources().size(); i++) {
      rules.source(q.sources().get(i), "/sources/" + i);
    }
    if (q.distances() == null) {
      rules.positionsEverywhere();
    } else {
      rules.distancesEverywhere();
    }
    run.requireNoFaults();
  }

  private void source(SoundSource source, String at) {
    Filter.require(source.highPass(), at + "/high_pass", run);
    Filter.require(source.lowPass(), at + "/low_pass", run);
  }

  private void positionsEverywhere() {
    boolean all = true;
    for (int i = 0; i < q.sources().size(); i++) {
      all &= given(q.sources().get(i).position(), "/sources/" + i + "/position");
    }
    for (int k = 0; k < q.seats().size(); k++) {
      all &= given(q.seats().get(k).head(), "/seats/" + k + "/position");
    }
    if (all) {
      farEnough();
    }
  }

  private boolean given(Position position, String at) {
    if (position == null) {
      run.refuse(SeatLevelFault.PLACE_MISSING).at(at);
    }
    return position != null;
  }

  private void farEnough() {
    for (int i = 0; i < q.sources().size(); i++) {
      for (Seat seat : q.seats()) {
        double distance = q.sources().get(i).position().distanceTo(seat.head());
        if (distance < NEAREST_M) {
          run.refuse(SeatLevelFault.SOURCE_TOO_NEAR)
              .at("/sources/" + i + "/position")
              .given(
                  Phrase.of(SeatWords.AWAY_FROM)
                      .own("distance", Double.toString(distance))
                      .own("seat", seat.name()))
              .allowed(Allowed.atLeast(NEAREST_M, "m"));
        }
      }
    }
  }

  private void distancesEverywhere() {
    Set<Way> measured = new HashSet<>();
    q.distances().forEach(tape -> measured.add(new Way(tape.source(), tape.seat())));
    for (SoundSource source : q.sources()) {
      for (Seat seat : q.seats()) {
        if (!measured.contains(new Way(source.name(), seat.name()))) {
          run.refuse(SeatLevelFault.SEAT_DISTANCE_MISSING)
              .at("/distances")
              .given(Given.fromTo(source.name(), seat.name()));
        }
      }
    }
  }
}
