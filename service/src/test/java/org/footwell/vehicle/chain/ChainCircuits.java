package org.footwell.vehicle.chain;

import static org.footwell.parts.LadderElement.Place.SERIES;
import static org.footwell.parts.LadderElement.Place.SHUNT;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.parts.Box;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.LadderElement;
import org.footwell.parts.LadderElementBuilder;
import org.footwell.parts.plan.Enclosure;
import org.footwell.parts.plan.PlannedPart;

/**
 * Whole channels twice: as the model has them, and as netlists whose drivers are electrical
 * equivalents. In a netlist the coils of a driver share one back-EMF, made by the mean of their
 * currents; the model gives each coil its own, which is the same where all are driven alike.
 */
final class ChainCircuits {

  private static final double AIR_C = 20;

  private ChainCircuits() {}

  /**
   * A channel twice.
   *
   * @param coilNodes nodes between which each load of the circuit lies in the netlist
   */
  record Twice(ChannelCircuit circuit, List<String> netlist, List<String[]> coilNodes) {}

  private static final Driver WOOFER =
      DriverBuilder.builder()
          .ratedOhm(4.0)
          .reOhm(3.2)
          .leMh(0.42)
          .fsHz(58.0)
          .qms(4.2)
          .qes(0.55)
          .vasL(12.5)
          .build();
  private static final Driver TWEETER =
      DriverBuilder.builder()
          .ratedOhm(6.0)
          .reOhm(5.1)
          .leMh(0.04)
          .fsHz(980.0)
          .qms(2.6)
          .qes(1.1)
          .vasL(0.02)
          .build();
  private static final Driver SUBWOOFER =
      DriverBuilder.builder()
          .ratedOhm(2.0)
          .reOhm(1.7)
          .leMh(0.8)
          .fsHz(29.0)
          .qms(6.1)
          .qes(0.47)
          .vasL(52.0)
          .build();

  private static final List<LadderElement> LOW =
      List.of(
          LadderElementBuilder.builder().place(SERIES).inductanceMh(0.39).coilOhm(0.18).build(),
          LadderElementBuilder.builder()
              .place(SHUNT)
              .capacitanceUf(22.0)
              .resistanceOhm(1.5)
              .build());
  private static final List<LadderElement> HIGH =
      List.of(
          LadderElement.capacitor(SERIES, 8.2),
          LadderElementBuilder.builder().place(SHUNT).inductanceMh(0.3).coilOhm(0.25).build(),
          LadderElement.resistor(SERIES, 1.2),
          LadderElement.resistor(SHUNT, 22));

  /** A passive two-way of drivers in closed boxes, with cable and output impedance. */
  static Twice twoWay() {
    DriverModel low = model(WOOFER, 1, 9);
    DriverModel high = model(TWEETER, 1, 0.05);
    ChannelCircuit circuit =
        new ChannelCircuit(
            new Loudspeaker(
                List.of(low, high),
                List.of(new Loudspeaker.Load(0, 4), new Loudspeaker.Load(1, 6)),
                List.of(
                    new BranchCircuit(LOW, List.of(), 1, leaf(0)),
                    new BranchCircuit(HIGH, List.of(), 1, leaf(1)))),
            0.0798,
            0.05);
    List<String> netlist = source("0.05", "0.0798");
    netlist.addAll(
        List.of(
            "l1 net w1 0.39m",
            "r1 w1 w 0.18",
            "c1 w w2 22u",
            "r2 w2 0 1.5",
            "c2 net t1 8.2u",
            "l2 t1 t2 0.3m",
            "r3 t2 0 0.25",
            "r4 t1 t 1.2",
            "r5 t 0 22"));
    coils(netlist, WOOFER, 12.5 / 9, "a", new String[] {"w", "0"});
    coils(netlist, TWEETER, 0.02 / 0.05, "b", new String[] {"t", "0"});
    return new Twice(circuit, netlist, List.of(new String[] {"w", "0"}, new String[] {"t", "0"}));
  }

  /** Two drivers of two voice coils each, series-parallel across a bridge. */
  static Twice bridged() {
    DriverModel sub = model(SUBWOOFER, 2, 34);
    List<Loudspeaker.Load> loads =
        IntStream.range(0, 4).mapToObj(i -> new Loudspeaker.Load(i / 2, 2)).toList();
    CoilTree tree =
        new CoilTree(
            -1,
            false,
            List.of(
                new CoilTree(-1, true, List.of(leaf(0), leaf(1))),
                new CoilTree(-1, true, List.of(leaf(2), leaf(3)))));
    ChannelCircuit circuit =
        new ChannelCircuit(
            new Loudspeaker(
                List.of(sub, sub),
                loads,
                List.of(new BranchCircuit(List.of(), List.of(), 1, tree))),
            0.01188,
            0.04);
    List<String> netlist = source("0.04", "0.01188");
    String[][] nodes = {{"net", "m"}, {"m", "0"}, {"net", "n"}, {"n", "0"}};
    coils(netlist, SUBWOOFER, 52.0 / 34, "a", nodes[0], nodes[1]);
    coils(netlist, SUBWOOFER, 52.0 / 34, "b", nodes[2], nodes[3]);
    return new Twice(circuit, netlist, List.of(nodes));
  }

  /** One of the two voice coils of a driver, the other left open. */
  static Twice oneCoilOfTwo() {
    DriverModel sub = DriverModel.of(part(SUBWOOFER, 2), box(34), 1, AIR_C);
    ChannelCircuit circuit =
        new ChannelCircuit(
            new Loudspeaker(
                List.of(sub),
                List.of(new Loudspeaker.Load(0, 2)),
                List.of(new BranchCircuit(List.of(), List.of(), 1, leaf(0)))),
            0.02,
            0.03);
    List<String> netlist = source("0.03", "0.02");
    String[] driven = {"net", "0"};
    coils(netlist, SUBWOOFER, 52.0 / 34, "a", driven, new String[] {"open", "0"});
    netlist.add("rleak open 0 1e12");
    return new Twice(circuit, netlist, List.<String[]>of(driven));
  }

  private static CoilTree leaf(int load) {
    return new CoilTree(load, false, List.of());
  }

  private static PlannedPart part(Driver driver, int coils) {
    return new PlannedPart("part", null, coils, driver, null, null, null);
  }

  private static Enclosure box(double litre) {
    return new Enclosure(Box.closed(litre), null, null);
  }

  private static DriverModel model(Driver driver, int coils, double litre) {
    return DriverModel.of(part(driver, coils), box(litre), coils, AIR_C);
  }

  private static List<String> source(String outputOhm, String cableOhm) {
    return new ArrayList<>(
        List.of(
            "* a channel",
            "vamp src 0 dc 0 ac 1",
            "rout src amp " + outputOhm,
            "rcable amp cable " + cableOhm,
            "vsense cable net 0"));
  }

  /**
   * The coils of a driver in a closed box, each of resistance and inductance, with one back-EMF for
   * all: the mean of their currents into resistance, capacitance and inductance side by side.
   */
  private static void coils(
      List<String> netlist, Driver driver, double alpha, String name, String[]... coils) {
    double resonance = 2 * Math.PI * driver.fsHz();
    for (int i = 0; i < coils.length; i++) {
      String one = name + i;
      netlist.add("v%s %s s%s 0".formatted(one, coils[i][0], one));
      netlist.add("rre%s s%s u%s %s".formatted(one, one, one, driver.reOhm()));
      netlist.add("lle%s u%s e%s %sm".formatted(one, one, one, driver.leMh()));
      netlist.add("e%s e%s %s back%s 0 1".formatted(one, one, coils[i][1], name));
      netlist.add("f%s 0 back%s v%s %s".formatted(one, name, one, 1.0 / coils.length));
    }
    netlist.add(
        "rres%s back%s 0 %s".formatted(name, name, driver.reOhm() * driver.qms() / driver.qes()));
    netlist.add(
        "cmes%s back%s 0 %s".formatted(name, name, driver.qes() / (resonance * driver.reOhm())));
    double compliance = driver.reOhm() / (resonance * driver.qes());
    netlist.add("lces%s back%s 0 %s".formatted(name, name, compliance));
    netlist.add("lbox%s back%s 0 %s".formatted(name, name, compliance / alpha));
  }
}
