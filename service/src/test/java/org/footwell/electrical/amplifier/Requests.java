package org.footwell.electrical.amplifier;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Rails;
import org.footwell.parts.Ratings;
import org.footwell.parts.Ratings.Basis;
import org.footwell.parts.Ratings.Point;

/** Shorthand for requests with little in them, and for what is answered. */
final class Requests {

  /** Allows any load a request may have, so that only what a test is about is found. */
  private static final Double LEAST_OHM = 0.25;

  private Requests() {}

  /** Clean ratings at 14.4 V, load and power in turn. */
  static Ratings ratings(double... loadsAndPowers) {
    return ratings(Basis.CLEAN, false, false, loadsAndPowers);
  }

  static Ratings ratings(
      Basis basis, boolean bridged, boolean singleSupplyBridge, double... loadsAndPowers) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < loadsAndPowers.length; i += 2) {
      points.add(new Point(loadsAndPowers[i], loadsAndPowers[i + 1]));
    }
    return new Ratings(14.4, basis, points, bridged, singleSupplyBridge);
  }

  /** Split rails stated at 14.4 V. */
  static Rails rails(double railV, double dropV, Double currentLimitA, double sagOhm) {
    return new Rails(railV, 14.4, null, dropV, currentLimitA, sagOhm);
  }

  static Match into(double loadOhm) {
    return new Match().loadOhm(loadOhm).minimumOhm(LEAST_OHM);
  }

  static Driver driver(double continuousPowerW, double ratedOhm) {
    return DriverBuilder.builder().continuousPowerW(continuousPowerW).ratedOhm(ratedOhm).build();
  }

  static RailMatchRequest of(double loadOhm, Ratings ratings) {
    return into(loadOhm).ratings(ratings).build();
  }

  static RailMatchRequest of(double loadOhm, Rails rails) {
    return into(loadOhm).rails(rails).build();
  }

  static RailMatchRequest bridged(double loadOhm, Ratings ratings) {
    return into(loadOhm).ratings(ratings).bridged(true).build();
  }

  static RailMatchRequest bridged(double loadOhm, Rails rails) {
    return into(loadOhm).rails(rails).bridged(true).build();
  }

  static RatedRequest predicted(Ratings ratings, double... loads) {
    return new RatedRequest(ratings, loads);
  }

  static Answer<RailMatchResult> answer(RailMatchRequest request) {
    return Answers.of(new RailMatch(), request);
  }

  static RailMatchResult result(RailMatchRequest request) {
    return answer(request).result();
  }

  static List<String> codes(RailMatchRequest request) {
    return Answers.codes(answer(request));
  }

  static Fault onlyFault(RailMatchRequest request) {
    List<Fault> faults = Answers.faults(new RailMatch(), request);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }
}
