package org.footwell.vehicle.chain;

import static org.footwell.parts.LadderElement.Place.SERIES;
import static org.footwell.parts.LadderElement.Place.SHUNT;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.footwell.parts.Box;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Filter;
import org.footwell.parts.LadderElement;
import org.footwell.parts.LadderElementBuilder;
import org.footwell.parts.plan.Enclosure;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Phasor;

/**
 * What the source gives is what output impedance, cable, ladders and coils take together. The power of a
 * ladder is added up here part by part, walking from its input to its coils with Kirchhoff's laws.
 */
class EnergyProperties {

  private static final double RATIO = 1e-9;
  private static final double[] HZ = {20, 47.3, 110, 523, 1870, 4400, 19_000};

  @Property(tries = 300)
  void nothingIsLostAndNothingIsWon(@ForAll long seed) {
    Random random = new Random(seed);
    ChannelCircuit circuit = circuit(random);
    for (double hz : HZ) {
      SolvedLoudspeaker solved = circuit.loudspeaker().at(hz);
      Phasor networkV = circuit.networkV(solved.ohm());
      Phasor current = networkV.over(solved.ohm());
      double given = current.re();
      double taken = current.square() * (circuit.outputOhm() + circuit.cableOhm());
      assertEquals(
          given - current.square() * circuit.outputOhm(),
          circuit.terminalW(solved.ohm()),
          RATIO * given);
      for (BranchCircuit branch : circuit.loudspeaker().branches()) {
        taken += ladderW(branch, hz, networkV, solved.loadOhm());
      }
      for (int i = 0; i < solved.volts().length; i++) {
        Phasor through = networkV.times(solved.volts()[i]).over(solved.loadOhm()[i]);
        taken += through.square() * solved.loadOhm()[i].re();
      }
      assertEquals(given, taken, RATIO * given, () -> hz + " Hz, seed " + seed);
    }
  }

  /** What the parts of a ladder take; its coils must get the voltage that is left at its end. */
  private static double ladderW(
      BranchCircuit branch, double hz, Phasor networkV, Phasor[] loadOhm) {
    Phasor volts = networkV;
    BranchCircuit.Solved solved = branch.at(hz, loadOhm);
    Phasor current = volts.times(solved.admittance());
    double watts = 0;
    for (LadderElement element : branch.elements()) {
      Phasor ohm = ohm(element, hz);
      if (element.place() == SERIES) {
        watts += current.square() * ohm.re();
        volts = volts.minus(current.times(ohm));
      } else {
        Phasor through = volts.over(ohm);
        watts += through.square() * ohm.re();
        current = current.minus(through);
      }
    }
    if (branch.stated().isEmpty() && branch.padGain() == 1) {
      double size = networkV.times(solved.transfer()).modulus();
      double apart = volts.minus(networkV.times(solved.transfer())).modulus();
      assertEquals(0, apart / networkV.modulus(), 1e-9 * Math.max(1, size));
    } else {
      // A pad takes what its filters hand on and the coils do not get.
      double coils = solved.transfer().square() * Phasor.ONE.over(branch.tree().ohm(loadOhm)).re();
      watts = networkV.square() * (solved.admittance().re() - coils);
      if (branch.padGain() == 1) {
        assertEquals(0, watts, RATIO * networkV.square() * solved.admittance().modulus());
      }
    }
    return watts;
  }

  private static Phasor ohm(LadderElement element, double hz) {
    double w = 2 * Math.PI * hz;
    if (element.capacitanceUf() != null) {
      return new Phasor(0, -1e6 / (w * element.capacitanceUf()));
    }
    return element.inductanceMh() == null
        ? new Phasor(element.resistanceOhm(), 0)
        : new Phasor(element.coilOhm(), w * element.inductanceMh() / 1000);
  }

  private static ChannelCircuit circuit(Random random) {
    List<DriverModel> drivers = new ArrayList<>();
    List<Loudspeaker.Load> loads = new ArrayList<>();
    List<BranchCircuit> branches = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int b = 0; b < count; b++) {
      CoilTree tree = tree(random, drivers, loads, 2);
      int kind = random.nextInt(3);
      List<AnalogFilter> stated =
          kind == 1
              ? List.of(
                  Filter.of(
                          Filter.Kind.BUTTERWORTH,
                          1 + random.nextInt(4),
                          between(random, 100, 5000))
                      .highPass())
              : List.of();
      double pad = kind == 1 && random.nextBoolean() ? between(random, 0.3, 1) : 1;
      List<LadderElement> elements = new ArrayList<>();
      for (int e = random.nextInt(6); kind == 2 && e > 0; e--) {
        elements.add(element(random));
      }
      branches.add(new BranchCircuit(elements, stated, pad, tree));
    }
    return new ChannelCircuit(
        new Loudspeaker(drivers, loads, branches),
        between(random, 0, 0.5),
        random.nextBoolean() ? 0 : between(random, 0, 0.3));
  }

  private static LadderElement element(Random random) {
    LadderElementBuilder element =
        LadderElementBuilder.builder().place(random.nextBoolean() ? SERIES : SHUNT);
    return switch (random.nextInt(3)) {
      case 0 -> element.capacitanceUf(between(random, 1, 200)).build();
      case 1 ->
          element.inductanceMh(between(random, 0.05, 5)).coilOhm(between(random, 0.05, 1)).build();
      default -> element.resistanceOhm(between(random, 0.5, 30)).build();
    };
  }

  private static CoilTree tree(
      Random random, List<DriverModel> drivers, List<Loudspeaker.Load> loads, int depth) {
    if (depth == 0 || random.nextInt(3) == 0) {
      loads.add(load(random, drivers));
      return new CoilTree(loads.size() - 1, false, List.of());
    }
    List<CoilTree> parts = new ArrayList<>();
    for (int i = 2 + random.nextInt(2); i > 0; i--) {
      parts.add(tree(random, drivers, loads, depth - 1));
    }
    return new CoilTree(-1, random.nextBoolean(), parts);
  }

  private static Loudspeaker.Load load(Random random, List<DriverModel> drivers) {
    if (random.nextInt(8) == 0) {
      return new Loudspeaker.Load(-1, between(random, 2, 20));
    }
    double re = between(random, 1.5, 7);
    Driver data =
        DriverBuilder.builder()
            .ratedOhm(re * 1.2)
            .reOhm(re)
            .leMh(between(random, 0, 1.5))
            .leExponent(between(random, 0.5, 1))
            .fsHz(between(random, 25, 1500))
            .qms(between(random, 1, 10))
            .qes(between(random, 0.2, 2))
            .vasL(between(random, 0.02, 80))
            .build();
    Enclosure box =
        random.nextBoolean()
            ? null
            : new Enclosure(Box.closed(between(random, 0.05, 60)), null, null);
    drivers.add(
        DriverModel.of(new PlannedPart("part", null, 1, data, null, null, null), box, 1, 20));
    return new Loudspeaker.Load(drivers.size() - 1, re * 1.2);
  }

  private static double between(Random random, double from, double to) {
    return from + (to - from) * random.nextDouble();
  }
}
