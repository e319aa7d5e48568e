package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A part of a package: choices for the first units.
 *
 * @param figures of all that is chosen, amplifiers left out
 * @param before the same without the last choice; null for nothing chosen yet
 */
record PartialPackage(PackageFigures figures, PartialPackage before, Choice last) {

  /** Nothing chosen, with what every package has. */
  static PartialPackage start(PackageFigures fixed) {
    return new PartialPackage(fixed, null, null);
  }

  PartialPackage with(Choice choice) {
    return new PartialPackage(figures.and(choice.figures()), this, choice);
  }

  /** The choices in their order. */
  List<Choice> choices() {
    List<Choice> choices = new ArrayList<>();
    for (PartialPackage one = this; one.before != null; one = one.before) {
      choices.add(one.last);
    }
    Collections.reverse(choices);
    return choices;
  }
}
