package org.footwell.vehicle.sheets;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Shown;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.plot.Drawing;
import org.footwell.sheet.FigureTable;
import org.footwell.sheet.FigureWriter;
import org.footwell.sheet.WrittenFigure;
import org.footwell.vehicle.PlanReviewResult;
import org.footwell.vehicle.PlanReviewResult.SetupLine;
import org.footwell.vehicle.curves.CurvePlots;

/** What a fitter works from: findings, wiring, set-up, supply, places, checks and the way back. */
public final class FitterSheet extends PlanPage {

  /** So many channels stand side by side on a page. */
  private static final int CHANNELS_ABREAST = 4;

  /** Rows of the setup sheet that stand beside the drawing of a channel. */
  private static final EnumSet<SetupEntry> WITH_THE_WIRING =
      EnumSet.of(SetupEntry.AMPLIFIER, SetupEntry.OUTPUTS);

  private final SetupText setup;

  FitterSheet(Shown<VehiclePlan, PlanReviewResult> shown) {
    super(shown);
    setup = new SetupText(shown.reader());
  }

  public String verdict() {
    return say(answer().verdict());
  }

  public List<Finding> findings() {
    return answer().findings();
  }

  /** How bad a finding is, as the class of its mark. */
  public String level(Finding finding) {
    return Names.of(finding.level());
  }

  public List<String> safety() {
    return answer().safety();
  }

  /** Every channel with what hangs on it. */
  public List<WiringSheet> wiring() {
    return IntStream.range(0, plan().channels().size())
        .mapToObj(
            c -> new WiringSheet(plan(), c, result().setupSheet().get(c).meterOhm(), reader()))
        .toList();
  }

  /** What to set, a few channels side by side; rows that none of them has are left out. */
  public List<FigureTable> settings() {
    List<SetupLine> all = result().setupSheet();
    List<FigureTable> tables = new ArrayList<>();
    for (int from = 0; from < all.size(); from += CHANNELS_ABREAST) {
      tables.add(settings(all.subList(from, Math.min(all.size(), from + CHANNELS_ABREAST))));
    }
    return tables;
  }

  private FigureTable settings(List<SetupLine> lines) {
    List<String> heads = new ArrayList<>(List.of(say(FitterWords.CHANNEL)));
    lines.forEach(line -> heads.add(Names.spelt(line.id())));
    List<FigureTable.Row> rows = new ArrayList<>();
    for (SetupEntry entry : EnumSet.complementOf(WITH_THE_WIRING)) {
      List<WrittenFigure> cells =
          lines.stream().map(line -> orDash(setup.figure(entry, line))).toList();
      if (cells.stream().anyMatch(cell -> !cell.text().equals(FigureWriter.DASH))) {
        rows.add(new FigureTable.Row(setup.title(entry), cells));
      }
    }
    return table(heads, rows);
  }

  private static WrittenFigure orDash(WrittenFigure figure) {
    return figure == null ? new WrittenFigure(null, FigureWriter.DASH) : figure;
  }

  /** Supply cables and fuses; null where none is planned. */
  public FigureTable cables() {
    if (result().cables() == null) {
      return null;
    }
    List<FigureTable.Row> rows =
        result().cables().stream()
            .map(
                line ->
                    new FigureTable.Row(
                        amplifier(line.id()),
                        List.of(
                            area(line.areaMm2(), line.found()),
                            figures().of(Measure.A, line.fuseA()),
                            figures().of(Measure.A, line.ownFuseA()),
                            figures().of(Measure.V, line.dropV()),
                            figures().of(Measure.A, line.ampacityA()))))
            .toList();
    return table(
        heads(
            FitterWords.AMPLIFIER,
            FitterWords.CABLE,
            FitterWords.FUSE,
            FitterWords.OWN_FUSE,
            FitterWords.DROP,
            FitterWords.CARRIES),
        rows);
  }

  private WrittenFigure area(Double areaMm2, boolean found) {
    WrittenFigure area = figures().wire(areaMm2);
    return found && area.known()
        ? new WrittenFigure(
            areaMm2, say(Phrase.of(FitterWords.CABLE_FOUND).own("area", area.text())))
        : area;
  }

  /** The supply while cruising, idling and with the engine off; null where it is not planned. */
  public FigureTable situations() {
    if (result().supply() == null) {
      return null;
    }
    List<FigureTable.Row> rows = new ArrayList<>();
    for (PlanReviewResult.SupplyLine line : result().supply()) {
      String when = say(line.situation());
      rows.add(
          new FigureTable.Row(
              when + ", " + say(FitterWords.BATTERY),
              List.of(
                  figures().of(Measure.V, line.batteryV()),
                  figures().of(Measure.V, line.sineBatteryV()),
                  figures().of(Measure.A, line.currentA()))));
      for (PlanReviewResult.FedLine fed : line.amplifiers()) {
        rows.add(
            new FigureTable.Row(
                when + ", " + amplifier(fed.id()),
                List.of(
                    figures().of(Measure.V, fed.voltageV()),
                    figures().of(Measure.V, fed.sineV()),
                    figures().of(Measure.A, fed.currentA()))));
      }
    }
    return table(
        heads(
            FitterWords.SITUATION,
            FitterWords.VOLTAGE,
            FitterWords.SINE_VOLTAGE,
            FitterWords.CURRENT),
        rows);
  }

  private static FigureTable table(List<String> heads, List<FigureTable.Row> rows) {
    return new FigureTable(null, heads.get(0), heads.subList(1, heads.size()), rows);
  }

  private List<String> heads(FitterWords... words) {
    return Stream.of(words).map(this::say).toList();
  }

  private String amplifier(String id) {
    return plan().amplifier(id).calledName();
  }

  /** Every place of a driver, with what goes in and out of it. */
  public FigureTable places() {
    List<FigureTable.Row> rows =
        plan().drivers().stream()
            .map(driver -> new FigureTable.Row(Names.spelt(driver.id()), place(driver)))
            .toList();
    return table(
        heads(
            FitterWords.PLACE,
            FitterWords.MOUNTED_IN,
            FitterWords.GOES_OUT,
            FitterWords.COMES_IN,
            FitterWords.MASS,
            FitterWords.POSITION,
            FitterWords.BEHIND),
        rows);
  }

  private List<WrittenFigure> place(PlacedDriver driver) {
    PlannedPart part = plan().newPart(driver.part());
    return List.of(
        driver.mountedIn() == null ? orDash(null) : text(say(driver.mountedIn())),
        text(
            driver.replaces() == null
                ? say(FitterWords.NOTHING)
                : plan().factoryPart(driver.replaces()).calledName()),
        text(part.calledName()),
        figures().mass(part.driver().massG()),
        text(
            String.join(
                ", ",
                figures().of(Measure.M, driver.position().xM()).text(),
                figures().of(Measure.M, driver.position().yM()).text(),
                figures().of(Measure.M, driver.position().zM()).text())),
        text(new EnclosureText(figures(), reader()).of(driver.enclosure())));
  }

  /** How the drivers go into their openings; null where none is given. */
  public FigureTable openings() {
    if (result().fits() == null) {
      return null;
    }
    return table(
        heads(
            FitterWords.PLACE,
            FitterWords.OPENING_TAKES,
            FitterWords.LEFT_BESIDE,
            FitterWords.OPENING_DEPTH,
            FitterWords.LEFT_BEHIND),
        result().fits().stream()
            .map(
                fit ->
                    new FigureTable.Row(
                        Names.spelt(fit.driver()),
                        List.of(
                            figures().of(Measure.MM, fit.openingMm()),
                            figures().of(Measure.MM, fit.widthLeftMm()),
                            figures().of(Measure.MM, fit.depthMm()),
                            figures().of(Measure.MM, fit.depthLeftMm()))))
            .toList());
  }

  private static WrittenFigure text(String text) {
    return new WrittenFigure(null, text);
  }

  /** What to look at once more, as far as this plan has it. */
  public List<String> checks() {
    Set<FitterWords> checks =
        EnumSet.of(
            FitterWords.CHECK_FUSES_LAST,
            FitterWords.CHECK_METER,
            FitterWords.CHECK_POLARITY,
            FitterWords.CHECK_HIGH_PASS,
            FitterWords.CHECK_HEAVY,
            FitterWords.CHECK_PLUGS,
            FitterWords.CHECK_RATTLE);
    if (plan().drivers().stream()
        .anyMatch(driver -> driver.mountedIn() == PlacedDriver.MountedIn.DOOR)) {
      checks.add(FitterWords.CHECK_DOORS);
    }
    return checks.stream().map(this::say).toList();
  }

  /** How the vehicle gets back what it had; empty where nothing of that is planned. */
  public List<String> backToFactory() {
    return result().restore() == null
        ? List.of()
        : result().restore().stream().map(line -> say(line.phrase())).toList();
  }

  /** The curves behind the figures, the supply and the cabin from above. */
  public List<Drawing> drawings() {
    return CurvePlots.of(plan(), curves(), reader());
  }
}
