package org.footwell.electrical.load;

import static org.footwell.electrical.load.Requests.across;
import static org.footwell.electrical.load.Requests.answer;
import static org.footwell.electrical.load.Requests.minimum;
import static org.footwell.electrical.load.Requests.network;
import static org.footwell.electrical.load.Requests.on;
import static org.footwell.electrical.load.Requests.sentence;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Verdict;
import org.footwell.parts.Amplifier;
import org.footwell.parts.AmplifierBuilder;
import org.junit.jupiter.api.Test;

/** Loads that nothing is known about are not passed over in silence. */
class UnjudgedLoadTest {

  private static final Amplifier UNKNOWN = AmplifierBuilder.builder().build();

  @Test
  void aBridgeWithoutAMinimumAtHalfAnOhmAHalfIsAWarning() {
    Answer<WiringLoadResult> answer = answer(across(UNKNOWN, "2||2"));
    assertEquals(1, answer.result().loadOhm(), 1e-12);
    assertEquals(0.5, answer.result().halfLoadOhm(), 1e-12);
    assertEquals(List.of("load-hardly-any", "minimum-not-given"), Answers.codes(answer));
    assertEquals(Verdict.WARNING, answer.verdict());
  }

  @Test
  void aUsualLoadOnAnAmplifierWithoutAMinimumIsANote() {
    assertEquals(List.of("minimum-not-given"), Answers.codes(answer(across(UNKNOWN, "4"))));
  }

  @Test
  void withoutAnAmplifierOnlyALoadThatHardlyAnyoneDrivesIsSaid() {
    assertEquals(List.of(), Answers.codes(answer(network("4"))));
    assertEquals(List.of("load-hardly-any"), Answers.codes(answer(network("1||1"))));
  }

  @Test
  void whatTheMakerAllowsIsANoteWithTheCurrent() {
    Answer<WiringLoadResult> allowed = answer(on(minimum(0.5), "1||1"));
    assertEquals(List.of("load-low-but-allowed", "lowest-modulus"), codesSorted(allowed));
    assertEquals(
        "Each channel sees 0.5 ohm, which its maker allows: every volt drives 2 A through it. Every"
            + " milliohm of cable and joint counts there.",
        sentence(allowed, "load-low-but-allowed"));
  }

  @Test
  void belowTheMakersMinimumIsAStopAndNothingElse() {
    assertEquals(List.of("load-below-minimum"), Answers.codes(answer(on(minimum(1), "1||1"))));
  }

  private static List<String> codesSorted(Answer<?> answer) {
    return Answers.codes(answer).stream().sorted().toList();
  }
}
