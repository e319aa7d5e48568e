package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Packages of which none is beaten by another in all figures at once. Of two with the same figures the first
 * stays. It holds so many at most: what comes when it is full is left out, and told.
 */
final class Front {

  private final int most;
  private final List<PackageFigures> figures = new ArrayList<>();
  private final List<FoundPackage> packages = new ArrayList<>();
  private boolean overfull;

  Front(int most) {
    this.most = most;
  }

  /** Whether something here is no worse in anything. */
  boolean beats(PackageFigures other) {
    for (int i = 0; i < figures.size(); i++) {
      if (figures.get(i).noWorseThan(other)) {
        return true;
      }
    }
    return false;
  }

  void add(PackageFigures found, Supplier<FoundPackage> made) {
    if (beats(found)) {
      return;
    }
    int kept = 0;
    for (int i = 0; i < figures.size(); i++) {
      if (!found.noWorseThan(figures.get(i))) {
        figures.set(kept, figures.get(i));
        packages.set(kept, packages.get(i));
        kept++;
      }
    }
    figures.subList(kept, figures.size()).clear();
    packages.subList(kept, packages.size()).clear();
    if (figures.size() == most) {
      overfull = true;
      return;
    }
    figures.add(found);
    packages.add(made.get());
  }

  /** Whether something was left out for want of room. */
  boolean overfull() {
    return overfull;
  }

  List<FoundPackage> packages() {
    return List.copyOf(packages);
  }
}
