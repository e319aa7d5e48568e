package org.footwell.acoustic.loudness;

import static org.footwell.acoustic.loudness.LoudnessFinding.CONTOUR_NOT_MEASURED;
import static org.footwell.acoustic.loudness.LoudnessFinding.CUT_CAPPED;
import static org.footwell.acoustic.loudness.LoudnessFinding.LIFT_CAPPED;
import static org.footwell.acoustic.loudness.LoudnessFinding.LIFT_ONLY_WHEN_QUIET;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.loudness.EqualLoudnessResult.Band;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.FrequencyFault;
import org.footwell.parts.Safety;
import org.footwell.physics.Decibels;

/** How much bass a balance needs when it is listened to more quietly than it was tuned. */
public final class EqualLoudness implements Calculation<EqualLoudnessRequest, EqualLoudnessResult> {

  /** A lift from here on must not be left in, dB; common practice, no source. */
  private static final double COSTLY_DB = 6;

  private static final Formula.Of4 BALANCE =
      Formula.of("balance_db", "(L2 − LN2) − (L1 − LN1)", "dB", Source.DEFINITION)
          .with("L2", "LN2", "L1", "LN1", (l2, n2, l1, n1) -> l2 - n2 - (l1 - n1));

  private static final Card<EqualLoudnessRequest, EqualLoudnessResult> CARD =
      Card.of("equal-loudness", EqualLoudnessRequest.class, EqualLoudnessResult.class)
          .title("Balance at a low listening level")
          .purpose(
              "A system was tuned at one loudness and is listened to at another: how much must each"
                  + " third octave be lifted or cut for the balance to sound the same.")
          .example(
              """
              {"tuned_phon": 80, "listening_phon": 60, "to_hz": 250}
              """)
          .sources(Contours.ISO_226, Source.DEFINITION, Source.COMMON_PRACTICE)
          .limits(
              "The contours are averages for pure tones from the front in a free field and for"
                  + " listeners of 18 to 25 years with normal hearing; people differ by several dB.",
              "20 to 90 phon up to 4 kHz, 20 to 80 phon above.",
              "Road noise masks bass; what it takes to be heard above it is not in the contours.")
          .findings(LoudnessFinding.values())
          .refusals(FrequencyFault.RANGE_WITHOUT_POINTS)
          .cautions(Safety.HEARING)
          .build();

  @Override
  public Card<EqualLoudnessRequest, EqualLoudnessResult> card() {
    return CARD;
  }

  @Override
  public EqualLoudnessResult compute(EqualLoudnessRequest q, Run run) {
    int[] rows = Contours.rows(q.fromHz(), q.toHz());
    List<Band> bands = new ArrayList<>();
    Band most = null;
    int mostRow = rows[0];
    for (int row : rows) {
      Band band = band(q, row);
      bands.add(band);
      if (most == null || Math.abs(band.balanceDb()) > Math.abs(most.balanceDb())) {
        most = band;
        mostRow = row;
      }
    }
    noteWorkings(q, mostRow, run);
    remark(q, most, run);
    boolean lifted = most.liftDb() > 0;
    return new EqualLoudnessResult(
        lifted ? most.liftDb() : 0, lifted ? most.frequencyHz() : null, bands);
  }

  private static Band band(EqualLoudnessRequest q, int row) {
    double tuned = level(q.tunedPhon(), row);
    double listening = level(q.listeningPhon(), row);
    double balance = BALANCE.at(listening, q.listeningPhon(), tuned, q.tunedPhon());
    double lift = Math.max(-q.capDb(), Math.min(q.capDb(), balance));
    return new Band(Contours.frequencyHz(row), tuned, listening, balance, lift);
  }

  private static double level(double phon, int row) {
    return Contours.LEVEL.at(
        phon, Contours.exponent(row), Contours.transferDb(row), Contours.thresholdDb(row));
  }

  /** The band that changes most stands for all in the workings. */
  private static void noteWorkings(EqualLoudnessRequest q, int row, Run run) {
    double exponent = Contours.exponent(row);
    double transfer = Contours.transferDb(row);
    double threshold = Contours.thresholdDb(row);
    run.apply(
        BALANCE,
        run.apply(Contours.LEVEL, q.listeningPhon(), exponent, transfer, threshold),
        q.listeningPhon(),
        run.apply(Contours.LEVEL, q.tunedPhon(), exponent, transfer, threshold),
        q.tunedPhon());
  }

  private static void remark(EqualLoudnessRequest q, Band most, Run run) {
    double balance = most.balanceDb();
    if (Math.abs(balance) > q.capDb()) {
      run.find(balance > 0 ? LIFT_CAPPED : CUT_CAPPED)
          .at("/cap_db")
          .value(Math.abs(balance))
          .limit(q.capDb())
          .with("frequency", most.frequencyHz());
    }
    if (most.liftDb() >= COSTLY_DB) {
      run.find(LIFT_ONLY_WHEN_QUIET)
          .at("/listening_phon")
          .value(most.liftDb())
          .with("frequency", most.frequencyHz())
          .with("times", Decibels.toPower(most.liftDb()));
    }
    double loudest = Math.max(q.tunedPhon(), q.listeningPhon());
    if (loudest > Contours.LOUDEST_ABOVE_PHON && q.toHz() > Contours.LOUDEST_UP_TO_HZ) {
      run.find(CONTOUR_NOT_MEASURED).at("/to_hz").value(loudest).limit(Contours.LOUDEST_ABOVE_PHON);
    }
  }
}
