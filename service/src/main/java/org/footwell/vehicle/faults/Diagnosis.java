package org.footwell.vehicle.faults;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.vehicle.reading.Modelled;

/**
 * What best explains what was measured in a vehicle: nothing wrong, one fault, or two. By Bayes' rule
 * each counts by its evidence times what it was worth before: faults come independently, one in a
 * vehicle on average, so that nothing wrong, a fault and a pair stand as 1, q and q·q'.
 */
final class Diagnosis {

  static final Source BAYES =
      Source.of(
          "R. E. Kass, A. E. Raftery, Bayes Factors, J. Am. Stat. Assoc. 90 (1995), pp. 773-795, with"
              + " Laplace's method in section 4.1 (from memory)");

  static final Source SEVERAL_FAULTS =
      Source.of(
          "J. de Kleer, B. C. Williams, Diagnosing Multiple Faults, Artificial Intelligence 32 (1987),"
              + " pp. 97-130 (from memory)");

  private static final Formula.Of2 CONFIDENCE =
      Formula.of("confidence", "w/Σw", "", BAYES)
          .with("w", "Σw", (weight, total) -> weight / total);

  /** Nearer than this, in standard deviations, two cannot be told apart. */
  private static final double ALIKE = 1;

  /** So many faults are expected in a vehicle that is measured; common practice, no source. */
  private static final double EXPECTED = 1;

  /** A single part fails no more often than this, however few there are; common practice, no source. */
  private static final double MOST_EXPECTED = 0.02;

  /** Of more single faults than this only the best are tried in pairs. */
  private static final int MOST_PAIRED = 40;

  /** Explanations that cannot be told apart, the likeliest first, and their confidence together. */
  record Explained(List<Tested> alike, double confidence) {
    Tested first() {
      return alike.get(0);
    }
  }

  private final Run run;
  private final Trial trial;
  private final List<VehicleFault> unseen = new ArrayList<>();
  private final List<Tested> singles = new ArrayList<>();
  private final double[] left;
  private final double[] usual;
  private final double share;

  /** Tries every one of some faults. */
  Diagnosis(Modelled base, Figures figures, List<VehicleFault> faults, Run run) {
    this.run = run;
    trial = new Trial(base, figures, run);
    left = trial.squares(trial.none());
    usual = trial.usualSquares();
    for (VehicleFault fault : faults) {
      Trial.Tried tried = trial.tried(trial.none(), fault);
      if (tried.seen() < ALIKE) {
        unseen.add(fault);
      } else {
        singles.add(tried.best());
        double[] with = trial.squares(tried.best());
        Arrays.setAll(left, c -> Math.min(left[c], with[c]));
      }
    }
    double weights = singles.stream().mapToDouble(one -> one.faults().get(0).kind().weight()).sum();
    share = Math.min(MOST_EXPECTED, EXPECTED / weights);
    singles.sort(Comparator.comparingDouble((Tested one) -> -one.evidence()));
  }

  Trial trial() {
    return trial;
  }

  /** Faults that would not show in what was measured. */
  List<VehicleFault> unseen() {
    return unseen;
  }

  /** Those that would, one at a time, the one that fits best first. */
  List<Tested> singles() {
    return singles;
  }

  /** Everything tried with its confidence, the most confident first; together 1. */
  List<Explained> explained() {
    List<Tested> all = new ArrayList<>(List.of(trial.none()));
    all.addAll(singles);
    List<Tested> paired = singles.subList(0, Math.min(MOST_PAIRED, singles.size()));
    for (int i = 0; i < paired.size(); i++) {
      for (int j = 0; j < i; j++) {
        VehicleFault one = paired.get(i).faults().get(0);
        VehicleFault two = paired.get(j).faults().get(0);
        boolean both = !one.thing().equals(two.thing());
        if (both && (Trial.apart(one, two) || unexplained(one) || unexplained(two))) {
          all.add(trial.together(paired.get(j), paired.get(i)));
        }
      }
    }
    return sorted(all);
  }

  /** Two faults of one channel are tried only where none alone agrees with what was measured there. */
  private boolean unexplained(VehicleFault fault) {
    return fault.channels().stream().anyMatch(c -> left[c] > usual[c]);
  }

  private List<Explained> sorted(List<Tested> all) {
    Posterior posterior =
        new Posterior(all.stream().mapToDouble(one -> one.worth(share)).toArray());
    double total = posterior.total();
    List<Double> weights = new ArrayList<>();
    List<List<Tested>> classes = new ArrayList<>();
    for (int i : posterior.order()) {
      int home = home(all.get(i), classes);
      double own = posterior.of(i);
      if (home < 0) {
        classes.add(new ArrayList<>(List.of(all.get(i))));
        weights.add(own);
      } else {
        classes.get(home).add(all.get(i));
        weights.set(home, weights.get(home) + own);
      }
    }
    return IntStream.range(0, classes.size())
        .mapToObj(i -> new Explained(classes.get(i), run.apply(CONFIDENCE, weights.get(i), total)))
        .sorted(Comparator.comparingDouble((Explained one) -> -one.confidence()))
        .toList();
  }

  /** The first class whose first member is alike, or −1. */
  private int home(Tested one, List<List<Tested>> classes) {
    for (int i = 0; i < classes.size(); i++) {
      if (trial.distance(one, classes.get(i).get(0)) < ALIKE) {
        return i;
      }
    }
    return -1;
  }
}
