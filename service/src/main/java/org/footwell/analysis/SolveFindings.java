package org.footwell.analysis;

import static org.footwell.analysis.SolveFinding.ANY_VALUE_DOES;
import static org.footwell.analysis.SolveFinding.OUTPUT_ABSENT;
import static org.footwell.analysis.SolveFinding.OUTPUT_BREAKS_OFF;
import static org.footwell.analysis.SolveFinding.OUTPUT_DOES_NOT_CHANGE;
import static org.footwell.analysis.SolveFinding.OUTPUT_JUMPS;
import static org.footwell.analysis.SolveFinding.SEVERAL_VALUES;
import static org.footwell.analysis.SolveFinding.TARGET_NOT_REACHED;
import static org.footwell.analysis.SolveFinding.VALUES_REFUSED;

import java.util.Comparator;
import java.util.List;
import org.footwell.analysis.Crossings.Found;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Place;
import org.footwell.calculation.Run;

/** Says what was seen of an output. */
record SolveFindings(SolveRequest asked, Place input, Place output, Run run) {

  /** The output is the same everywhere: any value does, or none. */
  void flat(Samples samples, boolean does) {
    double value = samples.least().orElseThrow().output();
    if (does) {
      run.find(ANY_VALUE_DOES)
          .at("/input")
          .field("output", output.name())
          .value(value)
          .with("from", asked.from())
          .with("to", asked.to())
          .inUnitOf(input.name(), "from", "to")
          .inUnitOf(output.name(), "value");
    } else {
      run.find(OUTPUT_DOES_NOT_CHANGE)
          .at("/input")
          .field("output", output.name())
          .field("input", input.name())
          .value(value)
          .with("from", asked.from())
          .with("to", asked.to())
          .inUnitOf(input.name(), "from", "to")
          .inUnitOf(output.name(), "value");
    }
  }

  void notReached(Samples samples) {
    Sample nearest =
        samples
            .known()
            .min(Comparator.comparingDouble(one -> Math.abs(one.output() - asked.target())))
            .orElseThrow();
    run.find(TARGET_NOT_REACHED)
        .at("/target")
        .field("output", output.name())
        .with("from", asked.from())
        .with("to", asked.to())
        .with("least", samples.least().orElseThrow().output())
        .with("most", samples.most().orElseThrow().output())
        .value(nearest.output())
        .with("at", nearest.value())
        .limit(asked.target())
        .inUnitOf(input.name(), "from", "to", "at")
        .inUnitOf(output.name(), "least", "most", "value", "limit");
  }

  void several(List<Sample> found) {
    run.find(SEVERAL_VALUES)
        .at("/input")
        .field("output", output.name())
        .with("count", found.size())
        .numbers("values", found.stream().map(Sample::value).toList())
        .limit(asked.target())
        .inUnitOf(input.name(), "values")
        .inUnitOf(output.name(), "limit");
  }

  void jumps(Found jump, Sample taken) {
    boolean rising = jump.here().value() <= jump.beyond().value();
    run.find(OUTPUT_JUMPS)
        .at("/input")
        .field("output", output.name())
        .value(taken.value())
        .with("before", (rising ? jump.here() : jump.beyond()).output())
        .with("after", (rising ? jump.beyond() : jump.here()).output())
        .limit(asked.target())
        .inUnitOf(input.name(), "value")
        .inUnitOf(output.name(), "before", "after", "limit");
  }

  void breaksOff(Crossings.Gap gap) {
    run.find(OUTPUT_BREAKS_OFF)
        .at("/input")
        .field("output", output.name())
        .with("from", gap.before().value())
        .with("to", gap.after().value())
        .with("before", gap.before().output())
        .with("after", gap.after().output())
        .limit(asked.target())
        .inUnitOf(input.name(), "from", "to")
        .inUnitOf(output.name(), "before", "after", "limit");
  }

  /** Values that cannot be answered, and those without the output. */
  void missing(Samples samples) {
    samples
        .refused()
        .findFirst()
        .ifPresent(
            first -> {
              Fault fault = first.refused().faults().get(0);
              run.find(VALUES_REFUSED)
                  .at("/input")
                  .with("count", samples.refused().count())
                  .with("total", samples.all().size())
                  .value(first.value())
                  .inUnitOf(input.name(), "value")
                  .own("code", fault.code())
                  .own("place", fault.pointer());
            });
    samples
        .absent()
        .findFirst()
        .ifPresent(
            first ->
                run.find(OUTPUT_ABSENT)
                    .at("/output")
                    .with("count", samples.absent().count())
                    .with("total", samples.all().size())
                    .field("output", output.name())
                    .value(first.value())
                    .inUnitOf(input.name(), "value"));
  }
}
