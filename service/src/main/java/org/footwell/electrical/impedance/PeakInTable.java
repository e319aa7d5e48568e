package org.footwell.electrical.impedance;

import static org.footwell.electrical.impedance.ImpedanceFault.RESONANCE_NOT_FOUND;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.impedance.ImpedanceFitRequest.Reading;

/** There is a resonance to be fitted. */
@Check.Of(
    value = {"*.frequency_hz", "*.modulus_ohm"},
    says =
        "modulus_ohm has a peak more than 1.15 times as high as the lowest readings on both sides of"
            + " it.")
final class PeakInTable implements Check<List<Reading>> {

  @Override
  public void check(List<Reading> table, Refusing to) {
    Readings readings = TableRules.readings(table);
    if (readings.resonance().isEmpty()) {
      to.refuse(RESONANCE_NOT_FOUND)
          .given(Allowed.between(readings.firstHz(), readings.lastHz(), "Hz"))
          .allowed(Phrase.of(TableWords.PEAK));
    }
  }
}
