package org.footwell.acoustic.seats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.seats.SeatLevelsRequest.Seat;
import org.footwell.acoustic.seats.SeatLevelsRequest.SeatDistance;
import org.footwell.acoustic.seats.SeatLevelsRequest.TargetPoint;
import org.footwell.acoustic.seats.SeatLevelsRequest.Tilt;
import org.footwell.acoustic.seats.Sources.Draft;
import org.footwell.calculation.Fault;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.Position;
import org.junit.jupiter.api.Test;

class SeatLevelsRefusalsTest {

  private static List<String> refused(Draft draft) {
    return Answers.faults(Sources.CALCULATION, draft.request()).stream()
        .map(fault -> fault.code() + " " + fault.pointer())
        .toList();
  }

  @Test
  void everythingAmissIsRefusedAtOnce() {
    Draft draft = Sources.two();
    draft.sources.get(0).voltageV = 20.0;
    draft.sources.get(0).polarity = 0;
    draft.sources.get(1).name = "a";
    draft.sources.get(1).lowPass = Sources.filter(Kind.LINKWITZ_RILEY, 3, 80.0);
    draft.sources.get(1).position = new Position(0.0, 0.0, 0.0);
    draft.distances =
        List.of(
            new SeatDistance("a", "driver", 1.0),
            new SeatDistance("a", "driver", 2.0),
            new SeatDistance("c", "rear", 1.0));
    draft.target = List.of(new TargetPoint(100.0, 90.0), new TargetPoint(50.0, 90.0));
    draft.tilt = new Tilt(80.0, 0.0);
    draft.toHz = 50.0;
    draft.referenceSeat = "drivers";
    assertEquals(
        List.of(
            "duplicate /sources/1/name",
            "exactly-one-of /sources/0",
            "not-allowed /sources/0/polarity",
            "linkwitz-riley-odd /sources/1/low_pass/order",
            "place-beside-distances /sources/1/position",
            "duplicate /distances/1",
            "dangling-reference /distances/2/source",
            "dangling-reference /distances/2/seat",
            "frequencies-unsorted /target/1/frequency_hz",
            "target-given-twice /tilt",
            "range-reversed /to_hz",
            "dangling-reference /reference_seat"),
        refused(draft));
  }

  @Test
  void everySourceAndSeatNeedsAPlace() {
    Draft draft = Sources.two();
    draft.measured = false;
    draft.sources.get(0).position = new Position(1.0, 0.0, 0.0);
    assertEquals(
        List.of("place-missing /sources/1/position", "place-missing /seats/0/position"),
        refused(draft));
    draft.distances = List.of(new SeatDistance("a", "driver", 1.0));
    draft.sources.get(0).position = null;
    List<Fault> faults = Answers.faults(Sources.CALCULATION, draft.request());
    assertEquals("There is no distance from b to driver.", faults.get(0).detail());
  }

  @Test
  void aSourceAtTheEarIsRefused() {
    Draft draft = new Draft();
    draft.measured = false;
    draft.add("a").position = new Position(0.0, 0.0, 0.02);
    draft.seats = List.of(new Seat("driver", new Position(0.0, 0.0, 0.0)));
    assertEquals(List.of("source-too-near /sources/0/position"), refused(draft));
  }

  @Test
  void bandsAndTargetMustMeet() {
    Draft draft = Sources.two();
    draft.fromHz = 105.0;
    draft.toHz = 115.0;
    assertEquals(List.of("range-without-points /from_hz"), refused(draft));
    draft.toHz = 160.0;
    draft.target = List.of(new TargetPoint(20.0, 90.0), new TargetPoint(50.0, 90.0));
    assertEquals(List.of("target-outside-bands /target"), refused(draft));
  }
}
