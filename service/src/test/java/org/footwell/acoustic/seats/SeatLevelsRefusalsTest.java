package org.footwell.acoustic.seats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.seats.SeatLevelsRequest.SeatDistance;
import org.footwell.acoustic.seats.SeatLevelsRequest.TargetPoint;
import org.footwell.acoustic.seats.SeatLevelsRequest.Tilt;
import org.footwell.calculation.Fault;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.Position;
import org.footwell.parts.SeatBuilder;
import org.junit.jupiter.api.Test;

class SeatLevelsRefusalsTest {

  private static List<String> refused(Sources draft) {
    return Answers.faults(Sources.CALCULATION, draft.request()).stream()
        .map(fault -> fault.code() + " " + fault.pointer())
        .toList();
  }

  @Test
  void everythingAmissIsRefusedAtOnce() {
    Sources draft = Sources.two();
    draft.sources.get(0).voltageV(20.0);
    draft.sources.get(1).name("a").position(new Position(0.0, 0.0, 0.0));
    draft
        .levels
        .distances(
            List.of(
                new SeatDistance("a", "driver", 1.0),
                new SeatDistance("a", "driver", 2.0),
                new SeatDistance("c", "rear", 1.0)))
        .target(List.of(new TargetPoint(100.0, 90.0), new TargetPoint(50.0, 90.0)))
        .tilt(new Tilt(80.0, 0.0))
        .toHz(50.0)
        .referenceSeat("drivers");
    assertEquals(
        List.of(
            "exactly-one-of /sources/0",
            "at-most-one-of /sources/1/position",
            "at-most-one-of /tilt",
            "duplicate /sources/1/name",
            "duplicate /distances/1/source",
            "dangling-reference /distances/2/source",
            "dangling-reference /distances/2/seat",
            "dangling-reference /reference_seat",
            "not-ascending /target/1/frequency_hz",
            "not-ascending /to_hz"),
        refused(draft));
  }

  @Test
  void polarityAndFiltersOfASourceMustBePossible() {
    Sources draft = Sources.two();
    draft.sources.get(0).polarity(0);
    assertEquals(List.of("not-allowed /sources/0/polarity"), refused(draft));
    draft.sources.get(0).polarity(-1);
    draft.sources.get(1).lowPass(Sources.filter(Kind.LINKWITZ_RILEY, 3, 80.0));
    assertEquals(List.of("linkwitz-riley-odd /sources/1/low_pass/order"), refused(draft));
  }

  @Test
  void everySourceAndSeatNeedsAPlace() {
    Sources draft = Sources.two();
    draft.measured = false;
    draft.sources.get(0).position(new Position(1.0, 0.0, 0.0));
    assertEquals(
        List.of("place-missing /sources/1/position", "place-missing /seats/0/position"),
        refused(draft));
    draft.levels.distances(List.of(new SeatDistance("a", "driver", 1.0)));
    draft.sources.get(0).position(null);
    List<Fault> faults = Answers.faults(Sources.CALCULATION, draft.request());
    assertEquals("There is no distance from b to driver.", faults.get(0).detail());
  }

  @Test
  void aSourceAtTheEarIsRefused() {
    Sources draft = new Sources();
    draft.measured = false;
    draft.add("a").position(new Position(0.0, 0.0, 0.02));
    draft.levels.seats(
        List.of(
            SeatBuilder.builder().name("driver").position(new Position(0.0, 0.0, 0.0)).build()));
    assertEquals(List.of("source-too-near /sources/0/position"), refused(draft));
  }

  @Test
  void bandsAndTargetMustMeet() {
    Sources draft = Sources.two();
    draft.levels.fromHz(105.0).toHz(115.0);
    assertEquals(List.of("range-without-points /from_hz"), refused(draft));
    draft
        .levels
        .toHz(160.0)
        .target(List.of(new TargetPoint(20.0, 90.0), new TargetPoint(50.0, 90.0)));
    assertEquals(List.of("target-outside-bands /target"), refused(draft));
  }
}
