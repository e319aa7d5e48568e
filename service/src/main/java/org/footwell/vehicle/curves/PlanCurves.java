package org.footwell.vehicle.curves;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.FilterFault;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;
import org.footwell.vehicle.SupplyFigures;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.Grid;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.SoundField;
import org.footwell.vehicle.curves.PlanCurvesResult.ChannelCurve;
import org.footwell.vehicle.curves.PlanCurvesResult.DriverCurve;
import org.footwell.vehicle.curves.PlanCurvesResult.SeatCurve;
import org.footwell.vehicle.questions.DemoPlan;
import org.footwell.vehicle.questions.PlanDocument;
import org.footwell.vehicle.reading.Modelled;
import org.footwell.vehicle.reading.PlaysPlan;

/** The model of a plan over frequency: what plan-review sums up, drawn out. */
public final class PlanCurves implements Calculation<VehiclePlan, PlanCurvesResult>, PlaysPlan {

  private static final Card<VehiclePlan, PlanCurvesResult> CARD =
      Card.of("plan-curves", VehiclePlan.class, PlanCurvesResult.class)
          .title("Curves of a vehicle plan")
          .purpose(
              "What the model behind plan-review does over frequency with a full-scale sine and the"
                  + " settings of the sheet: response of each channel and at each seat, impedance,"
                  + " movement, and how much more drive each channel is allowed and what ends it; also"
                  + " what replaces a factory part against what it replaces, the way of each driver to"
                  + " the main seat, and the supply.")
          .example(DemoPlan.json())
          .sources(Source.DEFINITION)
          .limits(
              "The model is that of plan-review, with its limits: no reflections, no standing waves,"
                  + " no beaming, no thermal compression.",
              "Headroom is for a sine that lasts; a programme moves and heats less, as plan-review"
                  + " has it.",
              "Before against after takes both parts in the enclosure the plan has for the place, and"
                  + " below what a part states it falls like a high-pass of the second order.")
          .refusals(FilterFault.and(PlanDocument.faults()))
          .view(
              "svg",
              "image/svg+xml",
              "response, seats, impedance, movement, headroom, before against after, supply and cabin"
                  + " as plots, one below the other",
              CurvePlots::sheet)
          .view(
              "html",
              "text/html;charset=utf-8",
              "the plots, each with a table of its figures",
              shown -> CurvesPage.sheet(shown).html())
          .view(
              "pdf",
              "application/pdf",
              "the plots with their tables on paper",
              shown -> CurvesPage.sheet(shown).pdf())
          .build();

  /** The place whose figures the workings show, Hz. */
  private static final double SHOWN_HZ = 1000;

  private static final Formula.Of2 MODULUS =
      Formula.of("impedance_ohm", "√(R² + X²) at 1 kHz", "ohm", Source.DEFINITION)
          .with("R", "X", (r, x) -> new Phasor(r, x).modulus());

  private static final Formula.Of2 DRIVE_LEFT =
      Formula.of("headroom_db", "20·lg(U_allowed/U) at 1 kHz", "dB", Source.DEFINITION)
          .with("U_allowed", "U", (allowed, u) -> Decibels.ofAmplitude(allowed / u));

  @Override
  public Card<VehiclePlan, PlanCurvesResult> card() {
    return CARD;
  }

  @Override
  public PlanCurvesResult compute(VehiclePlan plan, Run run) {
    Modelled modelled = Modelled.of(PlanIndex.of(plan, run), run);
    Grid grid = modelled.grid();
    boolean heard =
        modelled.model().channels().stream().allMatch(channel -> channel.chain().heard());
    List<SeatCurve> seats = heard ? seats(modelled) : null;
    return PlanCurvesResultBuilder.builder()
        .mainSeat(plan.seats().get(plan.mainSeat()).name())
        .frequenciesHz(over(grid, grid::hz))
        .channels(
            IntStream.range(0, plan.channels().size())
                .mapToObj(c -> channel(c, modelled, run))
                .toList())
        .drivers(drivers(modelled))
        .seats(seats)
        .targetDbSpl(heard ? target(seats.get(plan.mainSeat()).levelDbSpl(), modelled) : null)
        .replacements(orNone(BeforeAfter.curves(modelled)))
        .paths(SoundPaths.of(modelled))
        .supply(orNone(SupplyFigures.of(modelled)))
        .build();
  }

  private static <T> List<T> orNone(List<T> lines) {
    return lines.isEmpty() ? null : lines;
  }

  private static List<Double> over(Grid grid, IntToDoubleFunction figure) {
    return IntStream.range(0, grid.size()).mapToObj(figure::applyAsDouble).toList();
  }

  private static List<SeatCurve> seats(Modelled modelled) {
    VehiclePlan plan = modelled.index().plan();
    SoundField field = modelled.model().field();
    List<SeatCurve> seats = new ArrayList<>();
    for (int s = 0; s < plan.seats().size(); s++) {
      int seat = s;
      seats.add(
          new SeatCurve(
              plan.seats().get(s).name(),
              over(modelled.grid(), k -> field.sineDbSpl(seat, modelled.heard(), k))));
    }
    return seats;
  }

  /** The wanted curve as high as the response at the main seat is on average. */
  private static List<Double> target(List<Double> response, Modelled modelled) {
    List<Double> shape =
        over(
            modelled.grid(),
            k ->
                modelled
                    .index()
                    .plan()
                    .target()
                    .curve()
                    .curve()
                    .applyAsDouble(modelled.grid().hz(k)));
    double height = mean(response) - mean(shape);
    return shape.stream().map(db -> db + height).toList();
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  private static ChannelCurve channel(int c, Modelled modelled, Run run) {
    PlanIndex index = modelled.index();
    PlayedChannel channel = modelled.model().channels().get(c);
    ChannelChain chain = channel.chain();
    SoundField field = modelled.model().field();
    int seat = index.plan().mainSeat();
    List<PlayedChannel.Allowed> allowed =
        IntStream.range(0, modelled.grid().size()).mapToObj(k -> allowed(c, k, modelled)).toList();
    double volts = volts(c, modelled);
    show(chain, allowed, volts, run);
    boolean bridged = index.plan().channels().get(c).bridged();
    return new ChannelCurve(
        index.plan().channels().get(c).id(),
        chain.heard()
            ? over(modelled.grid(), k -> field.sineDbSpl(seat, modelled.heard(), c, k))
            : null,
        over(modelled.grid(), k -> chain.terminalOhm(k).modulus()),
        index.outputs(c).allowedOhm(bridged),
        allowed.stream().map(one -> DRIVE_LEFT.at(one.volts(), volts)).toList(),
        allowed.stream().map(PlayedChannel.Allowed::by).toList());
  }

  private static void show(
      ChannelChain chain, List<PlayedChannel.Allowed> allowed, double volts, Run run) {
    for (int k = 0; k < chain.grid().size(); k++) {
      if (Math.abs(chain.grid().hz(k) / SHOWN_HZ - 1) < 1e-6) {
        run.apply(MODULUS, chain.terminalOhm(k).re(), chain.terminalOhm(k).im());
        run.apply(DRIVE_LEFT, allowed.get(k).volts(), volts);
      }
    }
  }

  /** The source voltage behind the trim that a channel plays with, V. */
  private static double volts(int c, Modelled modelled) {
    ChannelState state = modelled.heard().get(c);
    return state.trimmedV();
  }

  /** The largest source voltage that a lasting sine is allowed at a frequency. */
  private static PlayedChannel.Allowed allowed(int c, int k, Modelled modelled) {
    PlayedChannel channel = modelled.model().channels().get(c);
    double clip = modelled.levelled().cruising().clipV().get(c);
    return channel.sineAllowed(k, clip);
  }

  private static List<DriverCurve> drivers(Modelled modelled) {
    VehiclePlan plan = modelled.index().plan();
    List<DriverCurve> drivers = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      PlayedChannel channel = modelled.model().channels().get(c);
      double volts = volts(c, modelled);
      for (int d = 0; d < channel.borne().size(); d++) {
        int driver = d;
        if (!channel.chain().model(d).movementKnown()) {
          continue;
        }
        drivers.add(
            new DriverCurve(
                plan.drivers().get(channel.borne().get(d).driver()).id(),
                plan.channels().get(c).id(),
                over(modelled.grid(), k -> channel.drive().sineMm(driver, k) * volts),
                channel.chain().model(d).part().driver().xmaxMm()));
      }
    }
    return drivers;
  }
}
