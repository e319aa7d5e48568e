package org.footwell.acoustic.seats;

import static org.footwell.acoustic.seats.SeatLevelFinding.CABIN_NOT_MEASURED;
import static org.footwell.acoustic.seats.SeatLevelFinding.HEADROOM_SHORT;
import static org.footwell.acoustic.seats.SeatLevelFinding.HEAT_NOT_JUDGED;
import static org.footwell.acoustic.seats.SeatLevelFinding.LARGEST_LEVEL_LOUD;
import static org.footwell.acoustic.seats.SeatLevelFinding.MOVEMENT_NOT_JUDGED;
import static org.footwell.acoustic.seats.SeatLevelFinding.PHASES_NOT_PREDICTED;
import static org.footwell.acoustic.seats.SeatLevelFinding.SOURCES_CANCEL;
import static org.footwell.acoustic.seats.SeatLevelFinding.SOURCE_HOLDS_BACK;

import java.util.List;
import java.util.function.Predicate;
import org.footwell.acoustic.seats.SeatLevelsResult.Largest;
import org.footwell.acoustic.seats.SeatLevelsResult.SeatTotal;
import org.footwell.acoustic.seats.SeatLevelsResult.Tightest;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.Driver;
import org.footwell.physics.NoiseDose;

/** What there is to say about levels at the seats. */
final class SeatRemarks {

  /** Pressures that add to this less than the powers do are worth a word, dB. */
  private static final double CANCELLED_DB = 3;

  /** A source this far below all together hardly plays in a band, dB; common practice. */
  private static final double HARDLY_PLAYS_DB = 10;

  /** Drive that such a source may cost before it is remarked on, dB. */
  private static final double HELD_BACK_DB = 3;

  private final SeatLevelsRequest q;
  private final Run run;

  SeatRemarks(SeatLevelsRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  void onModel(List<SourcesInBand> bands) {
    if (q.cabin() != null) {
      run.find(CABIN_NOT_MEASURED).at("/cabin").value(q.cabin().criticalDistanceM());
    }
    boolean beyond = bands.stream().anyMatch(band -> !band.coherent());
    if (beyond && q.sources().size() > 1) {
      run.find(PHASES_NOT_PREDICTED).at("/incoherent_above_hz").value(q.incoherentAboveHz());
    }
  }

  /** Names once the sources whose limits are not known. */
  void onUnjudged() {
    unjudged(MOVEMENT_NOT_JUDGED, Driver::displacementKnown);
    unjudged(HEAT_NOT_JUDGED, driver -> driver.continuousPowerW() != null);
  }

  private void unjudged(SeatLevelFinding code, Predicate<Driver> judged) {
    List<String> names =
        q.sources().stream()
            .filter(source -> !judged.test(source.driver()))
            .map(SoundSource::name)
            .toList();
    if (!names.isEmpty()) {
      run.find(code).at("/sources").own("sources", names);
    }
  }

  /** The deepest cancellation of all seats and bands. */
  void onCancellation(List<SourcesInBand> bands, double[] delayMs) {
    double deepest = CANCELLED_DB;
    int where = -1;
    double frequency = 0;
    for (SourcesInBand band : bands) {
      for (int seat = 0; band.coherent() && seat < q.seats().size(); seat++) {
        SourcesInBand.Sum sum = band.at(seat, 0, delayMs);
        if (sum.incoherentDb() - sum.coherentDb() > deepest) {
          deepest = sum.incoherentDb() - sum.coherentDb();
          where = seat;
          frequency = band.frequency();
        }
      }
    }
    if (where >= 0) {
      run.find(SOURCES_CANCEL)
          .at("/seats/" + where)
          .value(deepest)
          .limit(CANCELLED_DB)
          .own("seat", q.seats().get(where).name())
          .with("frequency", frequency);
    }
  }

  /** Every source that hardly plays in a band but holds the others there; once each, the worst. */
  void onHoldingBack(List<SourcesInBand> bands, int seat, double[] delayMs) {
    for (int i = 0; i < q.sources().size(); i++) {
      SourcesInBand worst = null;
      for (SourcesInBand band : bands) {
        if (band.holding() == i
            && band.driveDb() < -HELD_BACK_DB
            && hardlyPlays(band.at(seat, 0, delayMs), i)
            && (worst == null || band.driveDb() < worst.driveDb())) {
          worst = band;
        }
      }
      if (worst != null) {
        run.find(SOURCE_HOLDS_BACK)
            .at("/sources/" + i)
            .value(-worst.driveDb())
            .limit(HELD_BACK_DB)
            .own("source", q.sources().get(i).name())
            .with("frequency", worst.frequency())
            .with("by", worst.heldBy());
      }
    }
  }

  private static boolean hardlyPlays(SourcesInBand.Sum sum, int source) {
    return sum.incoherentDb() - sum.parts().get(source) > HARDLY_PLAYS_DB;
  }

  void onTarget(Tightest tightest, Largest largest) {
    if (tightest.headroomDb() < 0) {
      run.find(HEADROOM_SHORT)
          .at(q.tilt() == null ? "/target" : "/tilt")
          .value(-tightest.headroomDb())
          .limit(0)
          .own("seat", tightest.seat())
          .with("frequency", tightest.frequencyHz())
          .with("why", why(tightest));
    }
    double loudest = largest.seats().stream().mapToDouble(SeatTotal::levelDba).max().orElse(0);
    if (loudest > NoiseDose.NIOSH_EIGHT_HOUR_DBA) {
      double minutes = 60 * run.apply(NoiseDose.NIOSH_ALLOWED_H, loudest);
      run.find(LARGEST_LEVEL_LOUD)
          .at("/seats")
          .value(loudest)
          .limit(NoiseDose.NIOSH_EIGHT_HOUR_DBA)
          .with("minutes", minutes);
    }
  }

  private static Phrase why(Tightest tightest) {
    return tightest.limitingSource() == null
        ? Phrase.of(SeatWords.ALL_AT_FULL_DRIVE)
        : Phrase.of(SeatWords.LIMIT_OF)
            .with("limit", tightest.limitedBy())
            .own("source", tightest.limitingSource());
  }
}
