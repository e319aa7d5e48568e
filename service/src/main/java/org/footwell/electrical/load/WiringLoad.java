package org.footwell.electrical.load;

import static org.footwell.electrical.load.LoadFinding.CURRENT_TO_EXPECT;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.amplifier.AmplifierFinding;
import org.footwell.electrical.load.Bands.Band;
import org.footwell.electrical.load.Solved.Share;
import org.footwell.electrical.load.WiringLoadResult.BandLoad;
import org.footwell.electrical.load.WiringLoadResult.CoilShare;
import org.footwell.parts.ConductorFault;
import org.footwell.parts.Driver;
import org.footwell.parts.Safety;
import org.footwell.parts.VoiceCoil;
import org.footwell.parts.VoiceCoilBuilder;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.physics.Conductors;
import org.footwell.physics.Electricity;

/** What load a network of voice coils is, and which coil takes what. */
public final class WiringLoad
    implements Calculation<WiringLoadRequest, WiringLoadResult>, AskOfPlan<WiringLoadRequest> {

  private static final Source IEC_60268_5 =
      Source.of(
          "IEC 60268-5:2003, Sound system equipment, Part 5: Loudspeakers: rated impedance; the"
              + " modulus is nowhere in the rated range below 80 % of it");

  private static final Formula.Of1 LOWEST_MODULUS_OHM =
      Formula.of("lowest_modulus_ohm", "0.8·R", "ohm", IEC_60268_5).with("R", r -> 0.8 * r);
  private static final Formula.Of1 HALF_LOAD =
      Formula.of(
              "half_load_ohm",
              "R/2",
              "ohm",
              Source.of("Symmetry of a bridge: its middle stays at zero"))
          .with("R", r -> r / 2);

  private static final Card<WiringLoadRequest, WiringLoadResult> CARD =
      Card.of("wiring-load", WiringLoadRequest.class, WiringLoadResult.class)
          .title("Load of a coil network")
          .purpose(
              "What rated load voice coils in series and parallel are to the amplifier and whether"
                  + " it may drive them, which coil takes what share, what a multimeter should show"
                  + " and what the speaker cable costs.")
          .example(
              """
              {"network": "(sub_left_a+sub_left_b)||(sub_right_a+sub_right_b)",
               "coils": [
                 {"name": "sub_left_a", "rated_ohm": 4, "re_ohm": 3.4, "driver": "sub_left"},
                 {"name": "sub_left_b", "rated_ohm": 4, "re_ohm": 3.4, "driver": "sub_left"},
                 {"name": "sub_right_a", "rated_ohm": 4, "re_ohm": 3.4, "driver": "sub_right"},
                 {"name": "sub_right_b", "rated_ohm": 4, "re_ohm": 3.4, "driver": "sub_right"}],
               "amplifier": {"minimum_ohm": 2, "minimum_bridged_ohm": 4, "output_ohm": 0.01},
               "bridged": true,
               "cable": {"one_way_m": 3, "area_mm2": 4},
               "voltage_v": 40}
              """)
          .sources(
              Solved.KIRCHHOFF,
              IEC_60268_5,
              Conductors.IEC_60228,
              Conductors.IEC_60028,
              OpenCoils.THIELE_SMALL,
              Source.COMMON_PRACTICE)
          .limits(
              "Loads are rated impedances, taken as resistances: coils of unlike drivers share"
                  + " their power differently from one frequency to the next.",
              "Bands are taken as wholly apart; near the crossover frequency both draw current.",
              "The cable is taken at the largest resistance of its size, without contacts and"
                  + " inductance.",
              "At most 32 coils.")
          .findings(
              Stream.concat(
                      Stream.of(LoadFinding.values()),
                      Stream.of(
                          AmplifierFinding.LOAD_BELOW_MINIMUM,
                          AmplifierFinding.MINIMUM_NOT_GIVEN,
                          AmplifierFinding.BRIDGED_MINIMUM_DOUBTFUL,
                          AmplifierFinding.LOAD_HARDLY_ANY,
                          AmplifierFinding.LOAD_LOW_BUT_ALLOWED))
                  .toArray(FindingCode[]::new))
          .refusals(ConductorFault.and(LoadFault.values()))
          .cautions(Safety.HEAT, Safety.FIRE, Safety.AIRBAG)
          .build();

  @Override
  public Card<WiringLoadRequest, WiringLoadResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.CHANNEL);
  }

  @Override
  public WiringLoadRequest ask(PlanReader plan) {
    int index = plan.about().index();
    PlannedChannel channel = plan.plan().channels().get(index);
    plan.called(
        "/network",
        plan.about().pointer() + (channel.network() == null ? "/branches" : "/network"));
    return WiringLoadRequestBuilder.builder()
        .network(
            channel.network() != null
                ? channel.network()
                : channel.branchList().stream()
                    .map(branch -> "(" + branch.network() + ")")
                    .collect(Collectors.joining(" || ")))
        .coils(plan.index().coils(index).stream().map(coil -> coil(coil, channel, plan)).toList())
        .amplifier(plan.amplifier(index))
        .bridged(plan.bridged(index, "/bridged"))
        .cable(channel.cable())
        .build();
  }

  private static VoiceCoil coil(PlanIndex.NamedCoil coil, PlannedChannel channel, PlanReader plan) {
    PlanIndex index = plan.index();
    Driver driver = index.part(coil.driver()).driver();
    return plan.made(
        VoiceCoilBuilder.builder()
            .name(coil.word())
            .ratedOhm(driver.ratedOhm())
            .reOhm(driver.reOhm())
            .driver(plan.plan().drivers().get(coil.driver()).id())
            .band(coil.branch() < 0 ? null : channel.branches().get(coil.branch()).band())
            .build(),
        index.partAt(coil.driver()) + "/driver",
        PlanIndex.driverAt(coil.driver()));
  }

  @Override
  public WiringLoadResult compute(WiringLoadRequest q, Run run) {
    Network<Coil> network = NetworkReader.of(q, run);
    List<Band> bands = Bands.of(network);
    boolean split = bands.get(0).band() != null;
    OpenCoils.find(Coil.each(q.coils()), network, run);
    MeterReading.check(q.coils(), run);

    List<BandLoad> loads = new ArrayList<>();
    List<Share> shares = new ArrayList<>();
    boolean even = true;
    for (Band band : bands) {
      Solved solved = Solved.of(band.network(), Coil::ratedOhm, run);
      loads.add(new BandLoad(band.band(), solved.ohm()));
      List<Share> ofBand = solved.shares(run);
      even &= Sharing.isEven(ofBand, run);
      shares.addAll(ofBand);
    }
    double load = loads.stream().mapToDouble(BandLoad::loadOhm).min().orElseThrow();
    double modulus = run.apply(LOWEST_MODULUS_OHM, load);
    AmplifierLimit.check(q.amplifier(), q.bridged(), load, modulus, run);
    Double meter = MeterReading.of(network, split, run);
    Double cable = q.cable() == null ? null : SpeakerCable.loopOhm(q.cable(), run);
    Double output = q.amplifier() == null ? null : q.amplifier().outputOhm(q.bridged());
    Double current = current(q.voltageV(), withCable(modulus, cable, run), run);
    return WiringLoadResultBuilder.builder()
        .loadOhm(load)
        .lowestModulusOhm(modulus)
        .bands(split ? loads : null)
        .meterReadingOhm(meter)
        .meterReadingWithCableOhm(
            meter == null || cable == null ? null : withCable(meter, cable, run))
        .coils(coils(network, shares))
        .evenSharing(even)
        .halfLoadOhm(q.bridged() ? run.apply(HALF_LOAD, load) : null)
        .cableOhm(cable)
        .loadWithCableOhm(cable == null ? null : withCable(load, cable, run))
        .cableLossDb(cable == null ? null : SpeakerCable.lossDb(load, cable, run))
        .dampingFactor(SpeakerCable.dampingFactor(load, output, cable, run))
        .currentAtLowestModulusA(current)
        .peakCurrentA(current == null ? null : Electricity.PEAK_CURRENT.at(current))
        .build();
  }

  private static double withCable(double ohm, Double cable, Run run) {
    return cable == null ? ohm : run.apply(Solved.SERIES, ohm, cable);
  }

  private static Double current(Double voltage, double ohm, Run run) {
    if (voltage == null) {
      return null;
    }
    double current = run.apply(Electricity.CURRENT, voltage, ohm);
    run.find(CURRENT_TO_EXPECT)
        .at("/voltage_v")
        .value(current)
        .with("voltage", voltage)
        .with("peak", run.apply(Electricity.PEAK_CURRENT, current));
    return current;
  }

  /** In the order of the network, whatever their bands. */
  private static List<CoilShare> coils(Network<Coil> network, List<Share> shares) {
    return network.coils().stream()
        .flatMap(coil -> shares.stream().filter(share -> share.coil().equals(coil)))
        .map(WiringLoad::coilShare)
        .toList();
  }

  private static CoilShare coilShare(Share share) {
    Coil coil = share.coil();
    return new CoilShare(
        coil.name(), coil.driver(), coil.band(), coil.ratedOhm(), share.power(), share.voltage());
  }
}
