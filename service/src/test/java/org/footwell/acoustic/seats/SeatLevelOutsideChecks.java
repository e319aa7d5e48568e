package org.footwell.acoustic.seats;

import java.util.List;
import org.footwell.acoustic.seats.SeatLevelsRequest.CabinModel;
import org.footwell.acoustic.seats.SeatLevelsRequest.Seat;
import org.footwell.acoustic.seats.SeatLevelsRequest.SeatDistance;
import org.footwell.acoustic.seats.Sources.Draft;
import org.footwell.acoustic.seats.Sources.SourceDraft;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class SeatLevelOutsideChecks extends OutsideChecks {

  private static final String SUMS = "seat-sums.csv";

  @Override
  public List<OutsideCheck> checks() {
    SeatLevelsResult result = sums().answer().result();
    return List.of(
        OutsideCheck.of("seat-levels", "sum of pressures, dB SPL", SUMS)
            .printed("coherent_level_db_spl")
            .computed(row -> band(result, row).coherentLevelDbSpl())
            .within(0.0002),
        OutsideCheck.of("seat-levels", "sum of powers, dB SPL", SUMS)
            .printed("incoherent_level_db_spl")
            .computed(row -> band(result, row).incoherentLevelDbSpl())
            .within(0.0002));
  }

  /** The case of scipy/seat_sums.py. */
  private static Draft sums() {
    Draft draft = new Draft();
    SourceDraft sub = draft.add("sub");
    sub.sensitivity = new Sensitivity(86.0, Basis.ONE_WATT);
    sub.powerW = 300.0;
    sub.lowPass = Sources.filter(Kind.LINKWITZ_RILEY, 4, 80.0);
    sub.rollOff = new SoundSource.RollOff(45.0, 0.8);
    sub.trimDb = -3.0;
    SourceDraft door = draft.add("door");
    door.sensitivity = new Sensitivity(89.0, Basis.ONE_WATT);
    door.powerW = 75.0;
    door.highPass = Sources.filter(Kind.LINKWITZ_RILEY, 4, 80.0);
    door.lowPass = Sources.filter(Kind.BUTTERWORTH, 3, 2500.0);
    door.rollOff = new SoundSource.RollOff(60.0, 0.7);
    door.delayMs = 5.2;
    SourceDraft tweeter = draft.add("tweeter");
    tweeter.sensitivity = new Sensitivity(92.0, Basis.TWO_POINT_EIGHT_THREE_VOLT);
    tweeter.ratedOhm = 4;
    tweeter.powerW = null;
    tweeter.voltageV = 12.0;
    tweeter.highPass = Sources.filter(Kind.BUTTERWORTH, 3, 2500.0);
    tweeter.delayMs = 1.7;
    tweeter.polarity = -1;
    tweeter.trimDb = -6.0;
    draft.seats = List.of(new Seat("driver", null), new Seat("passenger", null));
    draft.distances =
        List.of(
            new SeatDistance("sub", "driver", 2.4),
            new SeatDistance("door", "driver", 1.1),
            new SeatDistance("tweeter", "driver", 0.45),
            new SeatDistance("sub", "passenger", 2.3),
            new SeatDistance("door", "passenger", 1.5),
            new SeatDistance("tweeter", "passenger", 0.9));
    draft.cabin = new CabinModel(3.0, 0.5, 9.0);
    draft.fromHz = 20.0;
    draft.toHz = 12_500.0;
    return draft;
  }

  private static SeatLevelsResult.SeatBand band(SeatLevelsResult result, Row row) {
    double frequency = row.number("frequency_hz");
    return result.seats().stream()
        .filter(seat -> seat.name().equals(row.text("seat")))
        .flatMap(seat -> seat.bands().stream())
        .filter(band -> Math.abs(band.frequencyHz() / frequency - 1) < 1e-6)
        .findFirst()
        .orElseThrow();
  }
}
