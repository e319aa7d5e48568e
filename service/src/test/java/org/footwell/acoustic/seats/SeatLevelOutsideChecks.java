package org.footwell.acoustic.seats;

import java.util.List;
import org.footwell.acoustic.seats.SeatLevelsRequest.SeatDistance;
import org.footwell.parts.CabinBuilder;
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
  private static Sources sums() {
    Sources draft = new Sources();
    draft
        .add("sub")
        .driver(Sources.driver().sensitivity(new Sensitivity(86.0, Basis.ONE_WATT)).build())
        .powerW(300.0)
        .lowPass(Sources.filter(Kind.LINKWITZ_RILEY, 4, 80.0))
        .rollOff(new SoundSource.RollOff(45.0, 0.8))
        .trimDb(-3.0);
    draft
        .add("door")
        .driver(Sources.driver().sensitivity(new Sensitivity(89.0, Basis.ONE_WATT)).build())
        .powerW(75.0)
        .highPass(Sources.filter(Kind.LINKWITZ_RILEY, 4, 80.0))
        .lowPass(Sources.filter(Kind.BUTTERWORTH, 3, 2500.0))
        .rollOff(new SoundSource.RollOff(60.0, 0.7))
        .delayMs(5.2);
    draft
        .add("tweeter")
        .driver(
            Sources.driver()
                .sensitivity(new Sensitivity(92.0, Basis.TWO_POINT_EIGHT_THREE_VOLT))
                .ratedOhm(4.0)
                .build())
        .powerW(null)
        .voltageV(12.0)
        .highPass(Sources.filter(Kind.BUTTERWORTH, 3, 2500.0))
        .delayMs(1.7)
        .polarity(-1)
        .trimDb(-6.0);
    draft
        .levels
        .seats(List.of(Sources.seat("driver"), Sources.seat("passenger")))
        .distances(
            List.of(
                new SeatDistance("sub", "driver", 2.4),
                new SeatDistance("door", "driver", 1.1),
                new SeatDistance("tweeter", "driver", 0.45),
                new SeatDistance("sub", "passenger", 2.3),
                new SeatDistance("door", "passenger", 1.5),
                new SeatDistance("tweeter", "passenger", 0.9)))
        .cabin(CabinBuilder.builder().lengthM(3.0).criticalDistanceM(0.5).gainCapDb(9.0).build())
        .fromHz(20.0)
        .toHz(12_500.0);
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
