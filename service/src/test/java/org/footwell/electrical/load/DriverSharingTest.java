package org.footwell.electrical.load;

import static org.footwell.electrical.load.Requests.answer;
import static org.footwell.electrical.load.Requests.coil;
import static org.footwell.electrical.load.Requests.network;
import static org.footwell.electrical.load.Requests.ofDriver;
import static org.footwell.electrical.load.Requests.sentence;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.junit.jupiter.api.Test;

/** Even coils do not make even drivers. */
class DriverSharingTest {

  @Test
  void aDriverOfTwoCoilsBesideOneOfASingleCoilTakesTwoThirds() {
    Answer<WiringLoadResult> answer =
        answer(
            network(
                "a1||a2||b",
                ofDriver("a", "a1", 4),
                ofDriver("a", "a2", 4),
                ofDriver("b", "b", 4)));
    assertFalse(answer.result().evenSharing());
    assertEquals(List.of("uneven-drivers"), Answers.codes(answer));
    assertEquals(
        "The drivers do not share the power evenly: a takes 66.67 % and b takes 33.33"
            + " %, where an even share would be 50 %. In full: a 66.67 %, b 33.33 %. Wire the"
            + " drivers alike, if all are to play alike.",
        sentence(answer, "uneven-drivers"));
  }

  @Test
  void aCoilWithoutADriverIsOneOfItsOwn() {
    Answer<WiringLoadResult> answer =
        answer(network("a1||a2||b", ofDriver("a", "a1", 4), ofDriver("a", "a2", 4), coil("b", 4)));
    assertFalse(answer.result().evenSharing());
    assertEquals(List.of("uneven-drivers"), Answers.codes(answer));
  }

  @Test
  void unevenCoilsOfEvenDriversAreSaidAsCoils() {
    Answer<WiringLoadResult> answer =
        answer(
            network(
                "(a1+a2)||(b1+b2)",
                ofDriver("a", "a1", 2),
                ofDriver("a", "a2", 4),
                ofDriver("b", "b1", 2),
                ofDriver("b", "b2", 4)));
    assertEquals(List.of("uneven-sharing"), Answers.codes(answer));
    assertFalse(answer.result().evenSharing());
  }

  @Test
  void driversOfOneCoilEachAreNotSaidTwice() {
    assertEquals(List.of("uneven-sharing"), Answers.codes(answer(network("4||8"))));
    assertTrue(answer(network("4||4")).result().evenSharing());
  }
}
