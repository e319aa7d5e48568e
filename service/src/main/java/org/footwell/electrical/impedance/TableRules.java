package org.footwell.electrical.impedance;

import static org.footwell.electrical.impedance.ImpedanceFault.FIT_FAILED;

import java.util.List;
import java.util.Optional;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.impedance.ImpedanceFitRequest.Reading;

/** One table of a request: reads it, and refuses it where nothing follows from it. */
record TableRules(Readings readings, String pointer, Run run) {

  static TableRules of(List<Reading> table, String pointer, Run run) {
    return new TableRules(readings(table), pointer, run);
  }

  static Readings readings(List<Reading> table) {
    return new Readings(
        table.stream().mapToDouble(Reading::frequencyHz).toArray(),
        table.stream().mapToDouble(Reading::modulusOhm).toArray(),
        table.stream()
            .mapToDouble(r -> r.phaseDeg() == null ? Double.NaN : r.phaseDeg())
            .toArray());
  }

  /** The index of the resonance. */
  int resonance() {
    return readings.resonance().orElseThrow();
  }

  /** What was fitted, refused when the table does not determine it. */
  DriverFit determined(Optional<DriverFit> fit) {
    return fit.orElseThrow(
        () -> {
          run.refuse(FIT_FAILED).at(pointer).given(Phrase.of(TableWords.NO_END));
          return run.refused();
        });
  }
}
