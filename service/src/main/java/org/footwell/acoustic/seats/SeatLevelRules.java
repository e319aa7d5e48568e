package org.footwell.acoustic.seats;

import static org.footwell.calculation.CoreFault.DANGLING_REFERENCE;
import static org.footwell.calculation.CoreFault.DUPLICATE;
import static org.footwell.calculation.CoreFault.NOT_ALLOWED;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.acoustic.seats.Paths.Way;
import org.footwell.acoustic.seats.SeatLevelsRequest.Seat;
import org.footwell.acoustic.seats.SeatLevelsRequest.SeatDistance;
import org.footwell.acoustic.seats.SeatLevelsRequest.TargetPoint;
import org.footwell.calculation.Names;
import org.footwell.calculation.Run;
import org.footwell.parts.Filter;
import org.footwell.parts.FrequencyFault;
import org.footwell.parts.Position;
import org.footwell.parts.Rising;

/** The rules between the fields of a request; every breach is refused, all at once. */
final class SeatLevelRules {

  /** Nearer than this nothing is a point source, m; the bound of a measured distance too. */
  private static final double NEAREST_M = 0.05;

  private final SeatLevelsRequest q;
  private final Run run;
  private final List<String> sources;
  private final List<String> seats;

  private SeatLevelRules(SeatLevelsRequest q, Run run) {
    this.q = q;
    this.run = run;
    this.sources = q.sources().stream().map(SoundSource::name).toList();
    this.seats = q.seats().stream().map(Seat::name).toList();
  }

  /** Ends the run if anything is amiss. */
  static void require(SeatLevelsRequest q, Run run) {
    SeatLevelRules rules = new SeatLevelRules(q, run);
    rules.unique("/sources/", rules.sources);
    rules.unique("/seats/", rules.seats);
    for (int i = 0; i < q.sources().size(); i++) {
      rules.source(q.sources().get(i), "/sources/" + i);
    }
    if (q.distances() == null) {
      rules.positionsEverywhere();
    } else {
      rules.distancesEverywhere();
    }
    rules.target();
    if (q.referenceSeat() != null) {
      rules.known(q.referenceSeat(), rules.seats, "/reference_seat", "seats");
    }
    run.requireNoFaults();
  }

  private void unique(String list, List<String> names) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < names.size(); i++) {
      if (!seen.add(names.get(i))) {
        run.refuse(DUPLICATE).at(list + i + "/name").given(names.get(i));
      }
    }
  }

  private void source(SoundSource source, String at) {
    Map<String, Double> drives = new HashMap<>();
    drives.put("power_w", source.powerW());
    drives.put("voltage_v", source.voltageV());
    run.exactlyOneOf(at, drives);
    if (source.polarity() == 0) {
      run.refuse(NOT_ALLOWED).at(at + "/polarity").given(0).allowed("1 or -1");
    }
    Filter.require(source.highPass(), at + "/high_pass", run);
    Filter.require(source.lowPass(), at + "/low_pass", run);
  }

  private void positionsEverywhere() {
    boolean all = true;
    for (int i = 0; i < q.sources().size(); i++) {
      all &= given(q.sources().get(i).position(), "/sources/" + i + "/position");
    }
    for (int k = 0; k < q.seats().size(); k++) {
      all &= given(q.seats().get(k).position(), "/seats/" + k + "/position");
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
        double distance = Paths.between(q.sources().get(i).position(), seat.position());
        if (distance < NEAREST_M) {
          run.refuse(SeatLevelFault.SOURCE_TOO_NEAR)
              .at("/sources/" + i + "/position")
              .given(distance + " m from " + seat.name())
              .allowed("at least " + NEAREST_M + " m");
        }
      }
    }
  }

  private void distancesEverywhere() {
    for (int i = 0; i < q.sources().size(); i++) {
      none(q.sources().get(i).position(), "/sources/" + i + "/position");
    }
    for (int k = 0; k < q.seats().size(); k++) {
      none(q.seats().get(k).position(), "/seats/" + k + "/position");
    }
    Set<Way> measured = new HashSet<>();
    for (int i = 0; i < q.distances().size(); i++) {
      SeatDistance distance = q.distances().get(i);
      String at = "/distances/" + i;
      known(distance.source(), sources, at + "/source", "sources");
      known(distance.seat(), seats, at + "/seat", "seats");
      if (!measured.add(new Way(distance.source(), distance.seat()))) {
        run.refuse(DUPLICATE).at(at).given(distance.source() + " to " + distance.seat());
      }
    }
    for (String source : sources) {
      for (String seat : seats) {
        if (!measured.contains(new Way(source, seat))) {
          run.refuse(SeatLevelFault.SEAT_DISTANCE_MISSING)
              .at("/distances")
              .given(source + " to " + seat);
        }
      }
    }
  }

  private void none(Position position, String at) {
    if (position != null) {
      run.refuse(SeatLevelFault.PLACE_BESIDE_DISTANCES).at(at);
    }
  }

  private void known(String name, List<String> names, String at, String what) {
    if (!names.contains(name)) {
      run.refuse(DANGLING_REFERENCE)
          .at(at)
          .given(name)
          .allowed(what)
          .with("nearest", Names.didYouMean(name, names));
    }
  }

  private void target() {
    if (q.target() != null) {
      Rising.require(
          "/target",
          "/frequency_hz",
          q.target().stream().map(TargetPoint::frequencyHz).toList(),
          run);
      if (q.tilt() != null) {
        run.refuse(SeatLevelFault.TARGET_GIVEN_TWICE).at("/tilt");
      }
    }
    if (q.fromHz() > q.toHz()) {
      run.refuse(FrequencyFault.RANGE_REVERSED)
          .at("/to_hz")
          .given(q.toHz())
          .allowed("at least " + q.fromHz());
    }
  }
}
