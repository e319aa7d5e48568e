package org.footwell.measured.response;

import static org.footwell.calculation.CoreFault.DUPLICATE;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Given;

/** Pairs are of two different channels, each once, whichever comes first. */
@Check.Of(
    value = {"*.left", "*.right"},
    says = "Each is of two different channels, and no two of the same.")
final class PairsOfTwo implements Check<List<LeftAndRight>> {

  @Override
  public void check(List<LeftAndRight> pairs, Refusing to) {
    Set<Set<String>> seen = new HashSet<>();
    for (int i = 0; i < pairs.size(); i++) {
      LeftAndRight pair = pairs.get(i);
      String at = "/" + i;
      if (pair.left().equals(pair.right())) {
        to.refuse(PairFault.PAIR_OF_ONE).at(at).given(pair.left());
      } else if (!seen.add(Set.of(pair.left(), pair.right()))) {
        to.refuse(DUPLICATE).at(at).given(Given.both(pair.left(), pair.right()));
      }
    }
  }
}
