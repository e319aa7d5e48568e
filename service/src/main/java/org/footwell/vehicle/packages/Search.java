package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.footwell.calculation.Patience;

/**
 * Branch and bound over the units: which amplifier drives each, then what is in it. The bounds and why they
 * hold stand in the method page.
 */
final class Search {

  /** Packages of which none beats another that are kept at most: some 10 MB. */
  static final int MOST_KEPT = 5_000;

  /** Parts of packages that are kept at once at most for one set of amplifiers. */
  private static final int MOST_PARTS = 20_000;

  private static final long LOOK_AT_THE_CLOCK = 4_096;

  /** Cheapest first, so that much is beaten early; then by all else, so that the order is one. */
  private static final Comparator<PartialPackage> CHEAPEST_FIRST =
      Comparator.comparingLong((PartialPackage one) -> one.figures().price())
          .thenComparingDouble(one -> one.figures().massG())
          .thenComparingDouble(one -> one.figures().reachHz())
          .thenComparingDouble(one -> -one.figures().levelDb());

  private final List<SlotLayout.Unit> units;
  private final List<List<Map<Double, List<Choice>>>> choices;
  private final List<AmplifierChoice> amplifiers;
  private final List<List<OutputKind>> kinds;
  private final List<Rest> rests;
  private final PackageFigures fixed;
  private final Feeding feeding;
  private final Limits limits;
  private final int newAmplifiers;
  private final Patience patience;
  private final long mostLookedAt;
  private final Front front = new Front(MOST_KEPT);
  private long lookedAt;
  private boolean cutShort;
  private boolean overfull;

  Search(
      SlotLayout layout,
      Screening screening,
      List<AmplifierChoice> amplifiers,
      Limits limits,
      Patience patience) {
    this.amplifiers = amplifiers;
    this.limits = limits;
    this.patience = patience;
    mostLookedAt = layout.request().effortCount();
    newAmplifiers = layout.request().wishes().newAmplifierCount();
    fixed = screening.fixed();
    feeding = new Feeding(layout, screening.fixedCleanW());
    // What plays low comes last: only then does it matter how low a part of a package plays.
    List<Integer> order =
        IntStream.range(0, layout.units().size())
            .boxed()
            .sorted(
                Comparator.comparingDouble(
                    u -> -Rest.of(List.of(screening.choices(u))).get(0).best().reachHz()))
            .toList();
    units = order.stream().map(layout.units()::get).toList();
    choices = order.stream().map(screening::choices).toList();
    rests = Rest.of(choices);
    kinds = amplifiers.stream().map(screening::kinds).toList();
  }

  /** Looks for all packages that no other beats. */
  Front run() {
    List<OpenAmplifier> open = new ArrayList<>();
    PackageFigures cost = PackageFigures.NONE;
    for (AmplifierChoice amplifier : amplifiers) {
      if (amplifier.always()) {
        open.add(OpenAmplifier.of(amplifier, feeding.fixedCleanW(amplifier)));
      }
    }
    place(0, List.of(PartialPackage.start(fixed)), open, cost, new ArrayList<>());
    return front;
  }

  /** Whether it ended before everything was looked at or cut off. */
  boolean cutShort() {
    return cutShort;
  }

  /** Whether something was left out for want of room. */
  boolean overfull() {
    return overfull || front.overfull();
  }

  /** At best that any package is, whatever was looked at. */
  PackageFigures bound() {
    return fixed.and(rests.get(0).best());
  }

  private void place(
      int u,
      List<PartialPackage> parts,
      List<OpenAmplifier> open,
      PackageFigures opened,
      List<Integer> amplifierOf) {
    if (cutShort) {
      return;
    }
    if (u == units.size()) {
      complete(parts, open, opened, amplifierOf);
      return;
    }
    for (int a = 0; a < open.size(); a++) {
      on(a, u, parts, open, opened, amplifierOf);
    }
    long alreadyNew = open.stream().filter(one -> one.amplifier().isNew()).count();
    for (AmplifierChoice amplifier : amplifiers) {
      boolean there = open.stream().anyMatch(one -> one.amplifier().number() == amplifier.number());
      if (amplifier.isNew() ? alreadyNew < newAmplifiers : !there) {
        List<OpenAmplifier> with = new ArrayList<>(open);
        with.add(OpenAmplifier.of(amplifier, 0));
        on(open.size(), u, parts, with, opened.and(amplifier.cost()), amplifierOf);
      }
    }
  }

  /** Puts a unit on an amplifier that is open, in every way there is. */
  private void on(
      int a,
      int u,
      List<PartialPackage> parts,
      List<OpenAmplifier> open,
      PackageFigures opened,
      List<Integer> amplifierOf) {
    for (OutputKind kind : kinds.get(open.get(a).amplifier().number())) {
      int needed = kind.perChannel() * units.get(u).channels().size();
      Map<Double, List<Choice>> groups = choices.get(u).get(kind.number());
      if (open.get(a).left(kind.outputs()) < needed) {
        continue;
      }
      for (Map.Entry<Double, List<Choice>> group : groups.entrySet()) {
        List<PartialPackage> longer = longer(parts, group.getValue(), opened, u + 1);
        if (longer.isEmpty()) {
          continue;
        }
        List<OpenAmplifier> with = new ArrayList<>(open);
        with.set(a, open.get(a).with(kind.outputs(), needed, group.getKey()));
        List<Integer> on = new ArrayList<>(amplifierOf);
        on.add(a);
        place(u + 1, longer, with, opened, on);
      }
    }
  }

  /** Every part with every choice, as far as what it can become is neither beaten nor beyond a wish. */
  private List<PartialPackage> longer(
      List<PartialPackage> parts, List<Choice> group, PackageFigures opened, int next) {
    Rest rest = rests.get(next);
    PackageFigures ahead = opened.and(rest.best());
    List<PartialPackage> longer = new ArrayList<>();
    for (PartialPackage part : parts) {
      for (Choice choice : group) {
        if (outOfTime()) {
          return List.of();
        }
        PartialPackage one = part.with(choice);
        PackageFigures atBest = one.figures().and(ahead);
        if (limits.allow(atBest) && !front.beats(atBest)) {
          longer.add(one);
        }
      }
    }
    return unbeaten(longer, rest);
  }

  private boolean outOfTime() {
    lookedAt++;
    if (lookedAt > mostLookedAt || (lookedAt % LOOK_AT_THE_CLOCK == 0 && !patience.lasts())) {
      cutShort = true;
    }
    return cutShort;
  }

  /** Those that no other beats in what still decides; of two alike the first. */
  private List<PartialPackage> unbeaten(List<PartialPackage> parts, Rest rest) {
    parts.sort(CHEAPEST_FIRST);
    List<PartialPackage> kept = new ArrayList<>();
    List<PackageFigures> figures = new ArrayList<>();
    for (PartialPackage part : parts) {
      PackageFigures deciding = rest.deciding(part.figures());
      boolean beaten = false;
      for (int i = 0; i < figures.size() && !beaten; i++) {
        beaten = figures.get(i).noWorseThan(deciding);
      }
      if (!beaten) {
        kept.add(part);
        figures.add(deciding);
      }
      if (kept.size() == MOST_PARTS) {
        overfull = true;
        return kept;
      }
    }
    return kept;
  }

  private void complete(
      List<PartialPackage> parts,
      List<OpenAmplifier> open,
      PackageFigures opened,
      List<Integer> amplifierOf) {
    for (List<FoundPackage.Fed> fed : feeding.ways(open)) {
      PackageFigures cables =
          fed.stream()
              .map(one -> one.feed().cost())
              .reduce(PackageFigures.NONE, PackageFigures::and);
      for (PartialPackage part : parts) {
        PackageFigures whole = part.figures().and(opened).and(cables);
        if (limits.allow(whole)) {
          front.add(whole, () -> new FoundPackage(whole, units, part.choices(), amplifierOf, fed));
        }
      }
    }
  }
}
