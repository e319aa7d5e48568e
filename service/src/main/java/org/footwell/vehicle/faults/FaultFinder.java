package org.footwell.vehicle.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.faults.Diagnosis.Explained;
import org.footwell.vehicle.faults.FaultFinderResult.Alternative;
import org.footwell.vehicle.faults.FaultFinderResult.Explanation;
import org.footwell.vehicle.faults.FaultFinderResult.NextMeasurement;
import org.footwell.vehicle.reading.Modelled;
import org.footwell.vehicle.reading.PlaysPlan;

/** What is wrong in a finished vehicle, from what was measured in it and the plan it was built by. */
@Keeps(SomethingMeasured.class)
public final class FaultFinder implements Calculation<VehiclePlan, FaultFinderResult>, PlaysPlan {

  /** From this confidence on a fault is named as found. */
  private static final double SURE = 0.9;

  /** Errors alone give a worse fit less often than this; common practice, no source. */
  private static final double UNLIKELY = 0.001;

  /** The figures of an explanation one after the other, each by how many errors it is off. */
  private static final Formula.Of2 CHI_SQUARE =
      Formula.of("chi_square", "χ² + r²", "", Source.DEFINITION)
          .with("χ²", "r", (sum, off) -> sum + off * off);

  private static final int MOST_LISTED = 8;
  private static final int MOST_ALIKE = 8;
  private static final int MOST_SAID = 3;

  @Override
  public Card<VehiclePlan, FaultFinderResult> card() {
    return FaultCard.CARD;
  }

  @Override
  public FaultFinderResult compute(VehiclePlan plan, Run run) {
    PlanIndex index = PlanIndex.of(plan, run);
    Modelled base = Modelled.of(index, run);
    Figures figures = Figures.measured(base);
    Diagnosis diagnosis = new Diagnosis(base, figures, all(index, run), run);
    List<Explained> explained = diagnosis.explained();
    Tested first = explained.get(0).first();
    List<Explanation> lines =
        explained.stream().limit(MOST_LISTED).map(one -> explanation(one, plan)).toList();
    double listed = lines.stream().mapToDouble(Explanation::confidence).sum();
    Judged judged = Judged.of(diagnosis.trial(), first, figures);
    List<NextMeasurement> next = next(base, figures, explained);
    remark(plan, explained, judged, next, diagnosis, run);
    return FaultFinderResultBuilder.builder()
        .figureCount(figures.size())
        .soundConfidence(
            explained.stream()
                .filter(one -> one.alike().stream().anyMatch(Tested::none))
                .mapToDouble(Explained::confidence)
                .sum())
        .soundChiSquare(diagnosis.trial().none().square())
        .chiSquare(chiSquare(diagnosis.trial().off(first), run))
        .degrees(judged.degrees())
        .fitProbability(judged.probability())
        .fits(judged.fits())
        .explanations(lines)
        .unlistedConfidence(Math.max(0, 1 - listed))
        .measureNext(next)
        .unseen(diagnosis.unseen().stream().map(fault -> told(fault, plan)).toList())
        .build();
  }

  private static double chiSquare(double[] off, Run run) {
    double sum = 0;
    for (double errors : off) {
      sum = Double.isNaN(errors) ? sum : run.apply(CHI_SQUARE, sum, errors);
    }
    return sum;
  }

  private static List<VehicleFault> all(PlanIndex index, Run run) {
    VehiclePlan plan = index.plan();
    List<Integer> channels = IntStream.range(0, plan.channels().size()).boxed().toList();
    List<Integer> fed =
        IntStream.range(0, plan.amplifiers().size())
            .boxed()
            .filter(a -> plan.amplifiers().get(a).draw() != null)
            .toList();
    return new FaultList(index, run).of(channels, fed);
  }

  /** A fault without a figure. */
  private static FaultLine told(VehicleFault fault, VehiclePlan plan) {
    return FaultLineBuilder.builder(fault.line(plan, fault.range().tried().get(0)))
        .cornerHz(null)
        .filterOrder(null)
        .gainDb(null)
        .jointOhm(null)
        .wiredAs(null)
        .build();
  }

  private static Explanation explanation(Explained one, VehiclePlan plan) {
    List<Alternative> alike =
        alternatives(one).stream().map(other -> new Alternative(other.lines(plan))).toList();
    return new Explanation(one.confidence(), one.first().lines(plan), one.first().square(), alike);
  }

  /** What is alike and no more than the first; what is too small to be seen is alike to nothing wrong. */
  private static List<Tested> alternatives(Explained one) {
    int most = one.first().faults().size();
    return one.alike().stream()
        .skip(1)
        .filter(other -> other.faults().size() <= most)
        .limit(MOST_ALIKE)
        .toList();
  }

  /**
   * Whether an explanation agrees with what was measured at all.
   *
   * @param probability of such a sum of squares or a larger one; null where nothing is left to judge by
   */
  record Judged(int degrees, Double probability) {

    /** Polarities are right or wrong and have no part in it. */
    static Judged of(Trial trial, Tested one, Figures figures) {
      double[] off = trial.off(one);
      double sum = 0;
      int degrees = -trial.fit().groups() - one.fitted();
      for (int i = 0; i < off.length; i++) {
        if (figures.all().get(i).kind() != FigureKind.POLARITY && !Double.isNaN(off[i])) {
          sum += off[i] * off[i];
          degrees++;
        }
      }
      if (degrees <= 0) {
        return new Judged(0, null);
      }
      return new Judged(degrees, ChiSquare.worse(sum, degrees));
    }

    boolean fits() {
      return probability == null || probability >= UNLIKELY;
    }
  }

  /** The first two that could still be told apart: within the first class, then between the classes. */
  private static List<NextMeasurement> next(
      Modelled base, Figures figures, List<Explained> explained) {
    List<Tested> rivals = new ArrayList<>(alternatives(explained.get(0)));
    if (explained.size() > 1) {
      rivals.add(explained.get(1).first());
    }
    for (Tested rival : rivals) {
      List<NextMeasurement> next =
          new Telling(base, figures, explained.get(0).first(), rival).next();
      if (!next.isEmpty()) {
        return next;
      }
    }
    return List.of();
  }

  private static void remark(
      VehiclePlan plan,
      List<Explained> explained,
      Judged judged,
      List<NextMeasurement> next,
      Diagnosis diagnosis,
      Run run) {
    Explained first = explained.get(0);
    boolean sure = first.confidence() >= SURE;
    boolean soundButUnsure = first.first().none() && !sure && explained.size() > 1;
    if (!judged.fits()) {
      run.find(FaultFinding.NOTHING_FITS)
          .at("/measured")
          .value(first.first().square())
          .limit(judged.degrees())
          .with("first", phrase(first.first(), plan));
    } else if (soundButUnsure) {
      told(FaultFinding.FAULT_POSSIBLE, explained.get(1), plan, run);
    } else if (!first.first().none()) {
      told(sure ? FaultFinding.FAULT_FOUND : FaultFinding.FAULT_UNSURE, first, plan, run);
    }
    List<Tested> alike = alternatives(first).stream().limit(MOST_SAID).toList();
    if (!alike.isEmpty()) {
      run.find(FaultFinding.FAULTS_ALIKE)
          .at(places(first.first()))
          .with("faults", phrase(first.first(), plan))
          .with("others", alike.stream().map(one -> phrase(one, plan)).toList());
    }
    if (!next.isEmpty() && (!sure || !alike.isEmpty())) {
      NextMeasurement most = next.get(0);
      run.find(FaultFinding.MEASURE_NEXT)
          .value(most.errorsApart())
          .with("what", most.measure())
          .own("place", most.channel() == null ? most.amplifier() : most.channel());
    }
    if (!diagnosis.unseen().isEmpty()) {
      run.find(FaultFinding.FAULTS_UNSEEN)
          .value(diagnosis.unseen().size())
          .limit(diagnosis.unseen().size() + diagnosis.singles().size());
    }
  }

  private static void told(FaultFinding code, Explained one, VehiclePlan plan, Run run) {
    run.find(code)
        .at(places(one.first()))
        .value(one.confidence())
        .with("faults", phrase(one.first(), plan));
  }

  /** Where the faults are. */
  private static List<String> places(Tested one) {
    return one.faults().stream()
        .flatMap(
            fault ->
                Stream.concat(
                    fault.channels().stream().map(c -> "/channels/" + c),
                    Stream.of(fault.amplifier()).filter(a -> a >= 0).map(a -> "/amplifiers/" + a)))
        .distinct()
        .toList();
  }

  private static Phrase phrase(Tested one, VehiclePlan plan) {
    List<Phrase> all = one.lines(plan).stream().map(FaultLine::phrase).toList();
    if (all.isEmpty()) {
      return Phrase.of(Together.NOTHING);
    }
    return all.size() == 1
        ? all.get(0)
        : Phrase.of(Together.BOTH).with("one", all.get(0)).with("two", all.get(1));
  }
}
