package org.footwell.vehicle.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.electrical.load.Network;
import org.footwell.electrical.load.NetworkReader;
import org.footwell.parts.LadderElement;
import org.footwell.parts.plan.Branch;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.sheet.SpokenPage;

/** What hangs on one channel, coil by coil. */
public final class WiringSheet extends SpokenPage {

  private final VehiclePlan plan;
  private final PlannedChannel channel;
  private final int number;
  private final Double meterOhm;
  private final SetupText setup;

  WiringSheet(VehiclePlan plan, int number, Double meterOhm, Reader reader) {
    super(reader);
    this.plan = plan;
    this.number = number;
    this.meterOhm = meterOhm;
    channel = plan.channels().get(number);
    setup = new SetupText(reader);
  }

  /**
   * A drawing.
   *
   * @param caption above it, or null
   */
  public record Drawing(String caption, String svg) {}

  public String name() {
    return Names.spelt(channel.id());
  }

  /** Where it is connected. */
  public String connected() {
    String amplifier = plan.amplifier(channel.amplifier()).calledName();
    String at =
        say(
            Phrase.of(FitterWords.AT_OUTPUTS)
                .own("amplifier", amplifier)
                .own("outputs", String.join(" + ", channel.outputs())));
    return Stream.of(
            at,
            channel.bridged() ? say(FitterWords.BRIDGED) : null,
            channel.polarity() < 0 ? say(FitterWords.POLED_INVERTED) : null)
        .filter(text -> text != null)
        .reduce((one, other) -> one + ", " + other)
        .orElseThrow();
  }

  /** What a meter must read. */
  public String meter() {
    return meterOhm == null
        ? say(FitterWords.NO_METER)
        : say(
            Phrase.of(FitterWords.METER).own("value", figures().of(Measure.OHM, meterOhm).text()));
  }

  /** Its coils, branch by branch where it has a passive crossover. */
  public List<Drawing> drawings() {
    if (channel.network() != null) {
      return List.of(new Drawing(null, svg("", List.of(), channel.network())));
    }
    return IntStream.range(0, channel.branchList().size()).mapToObj(this::branch).toList();
  }

  private Drawing branch(int place) {
    Branch branch = channel.branchList().get(place);
    String caption = say(Phrase.of(FitterWords.BRANCH).own("band", branch.band()));
    List<String> stated =
        Stream.of(branch.highPass(), branch.lowPass())
            .filter(filter -> filter != null)
            .map(setup::filter)
            .toList();
    if (!stated.isEmpty()) {
      caption += ". " + say(Phrase.of(FitterWords.MAKERS_FILTER).own("filters", stated));
    }
    List<WiringDiagram.Element> ladder =
        branch.ladder().stream()
            .map(element -> new WiringDiagram.Element(label(element), element.shunt()))
            .toList();
    return new Drawing(caption, svg("-" + place, ladder, branch.network()));
  }

  private String svg(String part, List<WiringDiagram.Element> ladder, String network) {
    Network<String> coils =
        NetworkReader.words(network)
            .fold(word -> Network.leaf(coil(word)), Network::series, Network::parallel);
    return WiringDiagram.svg(
        "wiring-" + number + part,
        say(Phrase.of(FitterWords.WIRING_OF).own("channel", name())),
        ladder,
        coils);
  }

  /** A coil by its name and rated impedance; a number of the network is a resistance. */
  private String coil(String word) {
    String id = word.contains(".") ? word.substring(0, word.indexOf('.')) : word;
    return plan.drivers().stream()
        .filter(driver -> driver.id().equals(id))
        .findFirst()
        .map(driver -> Names.spelt(word) + ", " + ohm(driver))
        .orElseGet(() -> figures().of(Measure.OHM, Double.valueOf(word)).text());
  }

  private String ohm(PlacedDriver driver) {
    return figures().of(Measure.OHM, plan.newPart(driver.part()).driver().ratedOhm()).text();
  }

  private String label(LadderElement element) {
    List<String> parts = new ArrayList<>();
    if (element.capacitanceUf() != null) {
      parts.add(figures().of(Measure.UF, element.capacitanceUf()).text());
    }
    if (element.inductanceMh() != null) {
      parts.add(figures().of(Measure.MH, element.inductanceMh()).text());
    }
    if (element.resistanceOhm() != null) {
      parts.add(figures().of(Measure.OHM, element.resistanceOhm()).text());
    }
    return String.join(element.inParallel() ? " || " : " + ", parts);
  }
}
