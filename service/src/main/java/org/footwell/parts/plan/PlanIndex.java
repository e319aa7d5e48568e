package org.footwell.parts.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Run;
import org.footwell.parts.WayRole;

/**
 * A plan whose references lead somewhere: from ids to what they name. Lists keep the order of the plan,
 * and things are known by their index in it.
 */
public final class PlanIndex {

  private final VehiclePlan plan;
  private final Map<String, Integer> factoryParts;
  private final Map<String, Integer> newParts;
  private final Map<String, Integer> amplifiers;
  private final Map<String, Integer> channels;
  private final List<List<NamedCoil>> coils;
  private final List<List<Integer>> drivers;

  private PlanIndex(VehiclePlan plan, List<List<NamedCoil>> coils) {
    this.plan = plan;
    this.coils = coils;
    drivers =
        coils.stream().map(own -> own.stream().map(NamedCoil::driver).distinct().toList()).toList();
    factoryParts = byId(plan.factoryParts().stream().map(PlannedPart::id).toList());
    newParts = byId(plan.newParts().stream().map(PlannedPart::id).toList());
    amplifiers = byId(plan.amplifiers().stream().map(PlannedAmplifier::id).toList());
    channels = byId(plan.channels().stream().map(PlannedChannel::id).toList());
  }

  /**
   * Follows every reference of a plan whose rules held before a part or an amplifier of it may have been
   * changed.
   *
   * @throws org.footwell.calculation.Refused with each coil and output that is not there or used twice
   */
  public static PlanIndex of(VehiclePlan plan, Run run) {
    new FreeOutputs().check(plan, run);
    List<List<NamedCoil>> coils = PlannedCoils.of(plan, run);
    run.requireNoFaults();
    return new PlanIndex(plan, coils);
  }

  /** The voice coils of each channel; none where a network names one that is not there. */
  public static Optional<List<List<NamedCoil>>> knownCoils(VehiclePlan plan) {
    Faults told = new Faults();
    List<List<NamedCoil>> coils = PlannedCoils.of(plan, told::add);
    return told.none() ? Optional.of(coils) : Optional.empty();
  }

  static Map<String, Integer> byId(List<String> ids) {
    return IntStream.range(0, ids.size())
        .boxed()
        .collect(Collectors.toMap(ids::get, i -> i, (first, second) -> first));
  }

  /**
   * A voice coil that a network names.
   *
   * @param word as the network writes it
   * @param driver index of its driver
   * @param number from 1
   * @param branch index of its branch on the channel, or −1 where there are none
   */
  public record NamedCoil(String word, int driver, int number, int branch) {}

  /** The plan itself. */
  public VehiclePlan plan() {
    return plan;
  }

  /** The voice coils of a channel, in the order of its networks. */
  public List<NamedCoil> coils(int channel) {
    return coils.get(channel);
  }

  /** Indexes of the drivers on a channel, each once, in the order of its networks. */
  public List<Integer> driversOf(int channel) {
    return drivers.get(channel);
  }

  /** Index of the channel a driver is on, or −1 where it is on none. */
  public int channelOf(int driver) {
    return IntStream.range(0, drivers.size())
        .filter(c -> driversOf(c).contains(driver))
        .findFirst()
        .orElse(-1);
  }

  /** Index of a channel by its id. */
  public int channel(String id) {
    return channels.get(id);
  }

  /** Index of the part in a driver's place. */
  public int partOf(int driver) {
    return newParts.get(plan.drivers().get(driver).part());
  }

  /** The part in a driver's place. */
  public PlannedPart part(int driver) {
    return plan.newParts().get(partOf(driver));
  }

  /** What a driver is used as, or null where nothing says it. */
  public WayRole roleOf(int driver) {
    WayRole here = plan.drivers().get(driver).role();
    return here == null ? part(driver).role() : here;
  }

  /** Index of the factory part a driver replaces, or −1. */
  public int replacedBy(int driver) {
    String id = plan.drivers().get(driver).replaces();
    return id == null ? -1 : factoryParts.get(id);
  }

  /** Whether two channels of one role play the same parts on the two sides of the vehicle. */
  public boolean isPair(int one, int other) {
    return plan.channels().get(one).role() == plan.channels().get(other).role()
        && driversOf(one).stream()
            .map(this::partOf)
            .toList()
            .equals(driversOf(other).stream().map(this::partOf).toList())
        && side(one) * side(other) < 0;
  }

  private double side(int channel) {
    return driversOf(channel).stream()
        .mapToDouble(driver -> plan.drivers().get(driver).position().yM())
        .sum();
  }

  /** Index of the amplifier of a channel. */
  public int amplifierOf(int channel) {
    return amplifiers.get(plan.channels().get(channel).amplifier());
  }

  /** Indexes of the channels of an amplifier. */
  public List<Integer> channelsOf(int amplifier) {
    List<Integer> found = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      if (amplifierOf(c) == amplifier) {
        found.add(c);
      }
    }
    return found;
  }

  /** Index of the entry of alike outputs a channel hangs on, within its amplifier. */
  public int outputsOf(int channel) {
    String id = plan.channels().get(channel).outputs().get(0);
    List<PlannedAmplifier.Outputs> all = plan.amplifiers().get(amplifierOf(channel)).outputs();
    return IntStream.range(0, all.size())
        .filter(o -> all.get(o).ids().contains(id))
        .findFirst()
        .orElseThrow();
  }

  /** The kind of output a channel hangs on. */
  public PlannedAmplifier.Outputs outputs(int channel) {
    return plan.amplifiers().get(amplifierOf(channel)).outputs().get(outputsOf(channel));
  }

  /** What was set on a channel, or null. */
  public ChannelSettings settingsOf(int channel) {
    String id = plan.channels().get(channel).id();
    return plan.settings().stream()
        .filter(one -> one.channel().equals(id))
        .findFirst()
        .orElse(null);
  }

  /** JSON Pointer to a driver's place. */
  public static String driverAt(int driver) {
    return "/drivers/" + driver;
  }

  /** JSON Pointer to the part of a driver. */
  public String partAt(int driver) {
    return "/new_parts/" + partOf(driver);
  }
}
