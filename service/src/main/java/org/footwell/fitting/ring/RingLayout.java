package org.footwell.fitting.ring;

import java.util.ArrayList;
import java.util.List;
import org.footwell.fitting.ring.AdapterRingRequest.FittedDriver;
import org.footwell.fitting.ring.MountingHoles.HolePosition;
import org.footwell.fitting.ring.drawing.Oval;
import org.footwell.fitting.ring.drawing.RingGeometry;
import org.footwell.fitting.ring.drawing.RingHole;
import org.footwell.fitting.ring.drawing.Walls;

/**
 * Where edges and holes of a ring come to lie.
 *
 * @param turnedDeg how far the driver is turned
 */
record RingLayout(RingGeometry geometry, double turnedDeg) {

  private static final int HALVINGS = 60;

  static RingLayout of(AdapterRingRequest q, Oval inner) {
    List<RingHole> factory = holes(q.opening().holes().centres(), 0, q.ring().factoryHoleMm());
    double turned = turned(q, factory);
    List<RingHole> pilots = holes(q.driver().holes().centres(), turned, q.ring().pilotMm());
    Oval frame = q.driver().frame().oval();
    Oval panelCutOut = q.opening().cutOut().oval();
    double wall = q.ring().wallMinimumMm();
    Oval outer =
        q.ring().outer() != null
            ? q.ring().outer().oval()
            : outer(
                frame.around(panelCutOut.wider(wall)).around(inner.wider(wall)),
                factory,
                pilots,
                wall);
    return new RingLayout(
        new RingGeometry(
            outer, inner, frame, panelCutOut, factory, pilots, q.ring().arcToleranceMm()),
        turned);
  }

  private static List<RingHole> holes(List<HolePosition> centres, double turned, double diameter) {
    return centres.stream()
        .map(centre -> centre.turned(turned))
        .map(centre -> new RingHole(centre.xMm(), centre.yMm(), diameter))
        .toList();
  }

  /** As the request says; otherwise as it is, or where its holes are farthest from the others. */
  private static double turned(AdapterRingRequest q, List<RingHole> factory) {
    FittedDriver driver = q.driver();
    if (driver.turnedDeg() != null) {
      return driver.turnedDeg();
    }
    double best = 0;
    double most = pilotToFactory(q, factory, 0);
    boolean round = driver.frame().oval().circular() && driver.cutOut().oval().circular();
    if (!round || most >= q.ring().wallMinimumMm()) {
      return 0;
    }
    // Whole degrees are as well as a fitter can turn it; the smaller turn wins.
    for (int degrees = 1; degrees <= driver.holes().periodDeg() / 2; degrees++) {
      for (int turn : new int[] {degrees, -degrees}) {
        double wall = pilotToFactory(q, factory, turn);
        if (wall > most + 1e-9) {
          most = wall;
          best = turn;
        }
      }
    }
    return best;
  }

  private static double pilotToFactory(
      AdapterRingRequest q, List<RingHole> factory, double turned) {
    return least(holes(q.driver().holes().centres(), turned, q.ring().pilotMm()), factory);
  }

  private static double least(List<RingHole> some, List<RingHole> others) {
    double least = Double.MAX_VALUE;
    for (RingHole one : some) {
      for (RingHole other : others) {
        least = Math.min(least, one.wallTo(other));
      }
    }
    return least;
  }

  /** The smallest outer edge, grown alike on all sides, that leaves every hole its wall. */
  private static Oval outer(
      Oval least, List<RingHole> factory, List<RingHole> pilots, double wall) {
    List<RingHole> all = new ArrayList<>(factory);
    all.addAll(pilots);
    double lacking =
        all.stream().mapToDouble(hole -> wall - hole.wallWithin(least)).max().orElse(0);
    if (lacking <= 0) {
      return least;
    }
    if (least.circular()) {
      return least.wider(lacking);
    }
    double low = 0;
    double high = lacking;
    while (!leaves(least.wider(high), all, wall)) {
      low = high;
      high *= 2;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (leaves(least.wider(middle), all, wall)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return least.wider(high);
  }

  private static boolean leaves(Oval outer, List<RingHole> all, double wall) {
    return all.stream().allMatch(hole -> hole.wallWithin(outer) >= wall);
  }

  Walls walls() {
    Oval outer = geometry.outer();
    Oval inner = geometry.inner();
    double rim = outer.beyond(inner);
    double factoryToOuter = within(geometry.factoryHoles(), outer);
    double factoryToInner = outside(geometry.factoryHoles(), inner);
    double pilotToOuter = within(geometry.pilotHoles(), outer);
    double pilotToInner = outside(geometry.pilotHoles(), inner);
    double pilotToFactory = least(geometry.pilotHoles(), geometry.factoryHoles());
    double smallest =
        Math.min(
            Math.min(Math.min(rim, pilotToFactory), Math.min(factoryToOuter, factoryToInner)),
            Math.min(pilotToOuter, pilotToInner));
    return new Walls(
        rim, factoryToOuter, factoryToInner, pilotToOuter, pilotToInner, pilotToFactory, smallest);
  }

  private static double within(List<RingHole> holes, Oval edge) {
    return holes.stream().mapToDouble(hole -> hole.wallWithin(edge)).min().orElseThrow();
  }

  private static double outside(List<RingHole> holes, Oval edge) {
    return holes.stream().mapToDouble(hole -> hole.wallOutside(edge)).min().orElseThrow();
  }
}
