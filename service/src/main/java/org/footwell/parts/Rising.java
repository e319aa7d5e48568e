package org.footwell.parts;

import java.util.List;
import org.footwell.calculation.Allowed;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;

/** The rule that frequencies rise from one entry to the next. */
public final class Rising {

  private Rising() {}

  /**
   * Refuses every frequency that is not above the one before.
   *
   * @param list pointer to the list
   * @param field what follows the index in the pointer, such as {@code /frequency_hz}
   */
  public static void require(String list, String field, List<Double> frequencies, Run run) {
    for (int i = 1; i < frequencies.size(); i++) {
      double before = frequencies.get(i - 1);
      double here = frequencies.get(i);
      if (here == before) {
        run.refuse(CoreFault.DUPLICATE).at(list + "/" + i + field).given(here + " Hz");
      } else if (here < before) {
        run.refuse(FrequencyFault.FREQUENCIES_UNSORTED)
            .at(list + "/" + i + field)
            .given(here)
            .allowed(Allowed.above(before, ""));
      }
    }
  }
}
