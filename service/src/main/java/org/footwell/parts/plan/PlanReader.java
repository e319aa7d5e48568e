package org.footwell.parts.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.footwell.calculation.Asked;
import org.footwell.calculation.Provenance;
import org.footwell.calculation.Rebase;
import org.footwell.parts.Amplifier;
import org.footwell.parts.Box;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.Cabin;
import org.footwell.parts.CabinBuilder;
import org.footwell.parts.Crossover;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Filter;
import org.footwell.parts.LeakyBaffle;

/**
 * Reads one request from one place of a plan, and keeps in mind where everything in it stands there.
 * Whole parts that are handed over are known by themselves; a single figure is looked for under its
 * name at the place asked about and at those named by {@link #also}; what is called otherwise in the
 * plan is said by {@link #called}.
 */
public final class PlanReader {

  private final PlanIndex index;
  private final PlanFigures figures;
  private final PlanPlace.Place about;
  private final Provenance parts;
  private final Set<String> alike = new LinkedHashSet<>();
  private final Map<String, String> called = new LinkedHashMap<>();
  private final List<String> missing = new ArrayList<>();
  private boolean posed = true;

  /** Reads about a place. */
  public PlanReader(PlanIndex index, PlanFigures figures, PlanPlace.Place about) {
    this.index = index;
    this.figures = figures;
    this.about = about;
    this.parts = new Provenance(index.plan());
    alike.add(about.pointer());
  }

  public VehiclePlan plan() {
    return index.plan();
  }

  public PlanIndex index() {
    return index;
  }

  public PlanFigures figures() {
    return figures;
  }

  /** The place asked about. */
  public PlanPlace.Place about() {
    return about;
  }

  /** What the question is about; a plan without it does not pose the question. */
  public <T> T poses(T value, String pointer) {
    posed &= value != null;
    return needs(value, pointer);
  }

  /** What the request cannot do without, where its own rules do not say so. */
  public <T> T needs(T value, String pointer) {
    if (value == null && !missing.contains(pointer)) {
      missing.add(pointer);
    }
    return value;
  }

  /** Names further places at which single figures of the request stand under their names. */
  public void also(String... places) {
    alike.addAll(Arrays.asList(places));
  }

  /** Says where a field of the request stands that the plan calls otherwise. */
  public void called(String field, String place) {
    called.put(field, place);
  }

  /** Notes what a part was put together from: its fields stand there under their names. */
  public <T> T made(T part, String... from) {
    return parts.made(part, from);
  }

  /** Temperature in the vehicle, °C. */
  public Double temperatureC() {
    also("/vehicle");
    return plan().vehicle().temperatureC();
  }

  /** Crest factor of the programme, dB, for a field of the request. */
  public Double crestFactorDb(String field) {
    called(field, "/programme/crest_factor_db");
    return plan().programme().crestFactorDb();
  }

  /** Voltage at the battery with the engine running, V, for a field of the request. */
  public Double engineV(String field) {
    supplied(field);
    return figures.engineV();
  }

  /** Voltage at an amplifier while cruising, V, for a field of the request; null without a supply. */
  public Double operatingV(int amplifier, String field) {
    supplied(field);
    return plan().supply() == null ? null : (Double) figures.operatingV(amplifier);
  }

  private void supplied(String field) {
    boolean held = plan().supply() != null && plan().supply().batteryV() == null;
    called(field, held ? "/supply/alternator/voltage_v" : "/supply/battery_v");
  }

  /** Clean sine power into a driver, W, for a field of the request. */
  public Double cleanPowerW(int driver, String field) {
    int channel = index.channelOf(driver);
    String at = channel < 0 ? "/channels" : channelAt(channel);
    called(field, at);
    return needs(figures.driverW(driver), at);
  }

  /** What a box takes: the data of a part, of one voice coil where it has several. */
  public Driver driver(int driver) {
    return index.part(driver).driver();
  }

  /** The data of a part with its voice coils joined as its sensitivity is stated. */
  public Driver joined(int driver) {
    return joined(index.part(driver), index.partAt(driver));
  }

  /** The same of any part. */
  public Driver joined(PlannedPart part, String at) {
    return made(
        DriverBuilder.builder(part.driver()).ratedOhm(part.sensitivityLoadOhm()).build(),
        at + "/driver");
  }

  /** What is behind a driver as its impedance sees it; null in free air. */
  public Box box(int driver) {
    Enclosure enclosure = plan().drivers().get(driver).enclosure();
    if (enclosure == null || enclosure.closed() != null) {
      return enclosure == null ? null : enclosure.closed();
    }
    String at = PlanIndex.driverAt(driver) + "/enclosure";
    if (enclosure.vented() != null) {
      needs(enclosure.vented().box().fbHz(), at + "/vented/box/fb_hz");
      return enclosure.vented().box();
    }
    LeakyBaffle baffle = enclosure.baffle();
    return made(
        BoxBuilder.builder().volumeL(baffle.volumeL()).ql(baffle.ql()).build(), at + "/baffle");
  }

  /** The cabin by its measured table where it has one, else by its length. */
  public Cabin cabin() {
    Cabin cabin = plan().vehicle().cabin();
    return cabin.transfer() == null
        ? cabin
        : made(CabinBuilder.builder(cabin).lengthM(null).build(), "/vehicle/cabin");
  }

  /** The high-pass before a driver: of its branch where it states one, else of its channel. */
  public Filter highPass(int driver) {
    return filter(driver, Branch::highPass, PlannedChannel::highPass);
  }

  /** The low-pass before a driver, likewise. */
  public Filter lowPass(int driver) {
    return filter(driver, Branch::lowPass, PlannedChannel::lowPass);
  }

  private Filter filter(
      int driver, Function<Branch, Filter> ofBranch, Function<PlannedChannel, Filter> ofChannel) {
    int on = index.channelOf(driver);
    if (on < 0) {
      return null;
    }
    PlannedChannel channel = plan().channels().get(on);
    return index.coils(on).stream()
        .filter(coil -> coil.driver() == driver && coil.branch() >= 0)
        .map(coil -> ofBranch.apply(channel.branches().get(coil.branch())))
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(ofChannel.apply(channel));
  }

  /** The output of a channel as calculations ask for an amplifier. */
  public Amplifier amplifier(int channel) {
    int amplifier = index.amplifierOf(channel);
    return amplifier(amplifier, index.outputsOf(channel));
  }

  /** One of alike outputs, likewise. */
  public Amplifier amplifier(int amplifier, int outputs) {
    PlannedAmplifier planned = plan().amplifiers().get(amplifier);
    String at = amplifierAt(amplifier);
    return made(
        planned.outputs().get(outputs).asAmplifier(planned.supplyRegulated()),
        at + "/outputs/" + outputs,
        at);
  }

  /** Whether a channel is bridged, for a field of the request. */
  public Boolean bridged(int channel, String field) {
    called(field, channelAt(channel) + "/outputs");
    return plan().channels().get(channel).bridged();
  }

  /**
   * Channels that hand over to each other, from low to high: of a crossover its two, of a channel all
   * on its side. Where a channel hands over to several, the first of the plan is followed.
   */
  public List<Integer> handingOver() {
    if (about.kind() == PlanPlace.CROSSOVER) {
      Crossover crossover = plan().crossovers().get(about.index());
      return List.of(index.channel(crossover.lower()), index.channel(crossover.upper()));
    }
    List<Integer> chain = new ArrayList<>(List.of(about.index()));
    for (int next = beside(about.index(), Crossover::upper, Crossover::lower);
        next >= 0 && !chain.contains(next);
        next = beside(next, Crossover::upper, Crossover::lower)) {
      chain.add(0, next);
    }
    for (int next = beside(about.index(), Crossover::lower, Crossover::upper);
        next >= 0 && !chain.contains(next);
        next = beside(next, Crossover::lower, Crossover::upper)) {
      chain.add(next);
    }
    return chain;
  }

  private int beside(
      int channel, Function<Crossover, String> own, Function<Crossover, String> other) {
    String id = plan().channels().get(channel).id();
    return plan().crossovers().stream()
        .filter(crossover -> own.apply(crossover).equals(id))
        .findFirst()
        .map(crossover -> index.channel(other.apply(crossover)))
        .orElse(-1);
  }

  /** JSON Pointer to a channel. */
  public static String channelAt(int channel) {
    return "/channels/" + channel;
  }

  /** JSON Pointer to the alike outputs that a channel hangs on. */
  public String outputsAt(int channel) {
    return amplifierAt(index.amplifierOf(channel)) + "/outputs/" + index.outputsOf(channel);
  }

  /** JSON Pointer to an amplifier. */
  public static String amplifierAt(int amplifier) {
    return "/amplifiers/" + amplifier;
  }

  /** The request as it was read. */
  public <Q extends Record> Asked<Q> asked(Q request) {
    Rebase places = Rebase.to(about.pointer(), about.name());
    places.from("", alike.toArray(String[]::new));
    parts.tell(request, places);
    called.forEach(places::from);
    return new Asked<>(request, places, List.copyOf(missing), posed);
  }
}
