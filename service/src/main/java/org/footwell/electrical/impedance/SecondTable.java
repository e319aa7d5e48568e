package org.footwell.electrical.impedance;

import static org.footwell.electrical.impedance.DriverFit.FS;
import static org.footwell.electrical.impedance.DriverFit.QES;
import static org.footwell.electrical.impedance.DriverFit.QMS;
import static org.footwell.electrical.impedance.ImpedanceFault.BOX_WITHOUT_EFFECT;
import static org.footwell.electrical.impedance.ImpedanceFault.MASS_WITHOUT_EFFECT;
import static org.footwell.electrical.impedance.ImpedanceFinding.SECOND_TABLE_INCONSISTENT;

import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.impedance.ImpedanceFitRequest.AddedMass;
import org.footwell.electrical.impedance.ImpedanceFitRequest.KnownBox;
import org.footwell.electrical.impedance.ImpedanceFitResult.InBox;
import org.footwell.electrical.impedance.ImpedanceFitResult.WithMass;

/**
 * A table of the same driver, changed in a known way: only its resonance moves, so resistance and
 * inductance stay as found in free air.
 */
final class SecondTable {

  /** More than this between two ways to the same figure is worth a warning; common practice. */
  private static final double INCONSISTENT = 0.1;

  private static final int[] RESONANCE_ONLY = {FS, QMS, QES};

  private SecondTable() {}

  /** The moving mass in g. */
  record Mass(double grams, WithMass found) {}

  /** vas in litre. */
  record Volume(double litres, InBox found) {}

  static Mass withMass(AddedMass added, DriverFit free, Run run) {
    DriverFit with = fit(TableRules.of(added.readings(), "/added_mass/readings", run), free, false);
    double fs = free.value(FS);
    double fm = with.value(FS);
    requireEffect(
        fm < fs, MASS_WITHOUT_EFFECT, "/added_mass/readings", fm, Allowed.below(fs, "Hz"), run);
    double mass = run.apply(MovingMass.MMS_G, added.massG(), fs, fm);
    double byQ =
        MovingMass.MMS_BY_Q_G.at(added.massG(), with.value(QES) / fm, free.value(QES) / fs);
    requireConsistent(byQ, mass, TableWords.MOVING_MASS, "/added_mass", run);
    return new Mass(
        mass,
        new WithMass(
            fm,
            with.value(QMS),
            with.value(QES),
            100 * Residuals.rms(with, added.readings().size()),
            100 * MovingMass.massConfidence(free, with)));
  }

  static Volume inBox(KnownBox box, DriverFit free, Run run) {
    DriverFit in = fit(TableRules.of(box.readings(), "/known_box/readings", run), free, true);
    double fs = free.value(FS);
    double fc = in.value(FS);
    requireEffect(
        fc > fs, BOX_WITHOUT_EFFECT, "/known_box/readings", fc, Allowed.above(fs, "Hz"), run);
    double inBox = fc * in.value(QES);
    double inFree = fs * free.value(QES);
    requireEffect(
        inBox > inFree,
        BOX_WITHOUT_EFFECT,
        "/known_box/readings",
        fc,
        Phrase.of(TableWords.HIGHER_Q),
        run);
    double vas = run.apply(MovingMass.VAS_IN_BOX_L, box.volumeL(), inBox, inFree);
    double byResonance = MovingMass.VAS_BY_RESONANCE_L.at(box.volumeL(), fc, fs);
    requireConsistent(vas, byResonance, TableWords.VAS, "/known_box", run);
    return new Volume(
        vas,
        new InBox(
            fc,
            in.value(QMS),
            in.value(QES),
            100 * Residuals.rms(in, box.readings().size()),
            100 * MovingMass.volumeConfidence(free, in)));
  }

  private static DriverFit fit(TableRules table, DriverFit free, boolean stiffer) {
    Readings readings = table.readings();
    double[] start = free.values();
    double moved = readings.frequencyHz(table.resonance()) / start[FS];
    start[FS] *= moved;
    start[QMS] *= stiffer ? moved : 1 / moved;
    start[QES] *= stiffer ? moved : 1 / moved;
    return table.determined(DriverFit.of(readings, start, RESONANCE_ONLY, table.run()));
  }

  private static void requireEffect(
      boolean there, FaultCode fault, String at, double found, Phrase expected, Run run) {
    if (!there) {
      run.refuse(fault).at(at).given(found + " Hz").allowed(expected);
      throw run.refused();
    }
  }

  private static void requireConsistent(
      double byQ, double byResonance, TableWords what, String at, Run run) {
    if (!(Math.abs(byQ / byResonance - 1) <= INCONSISTENT)) {
      run.find(SECOND_TABLE_INCONSISTENT).at(at).value(byQ).limit(byResonance).with("what", what);
    }
  }
}
