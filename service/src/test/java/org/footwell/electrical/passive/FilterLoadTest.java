package org.footwell.electrical.passive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.impedance.ImpedanceDriver;
import org.footwell.electrical.passive.PassiveFilterTest.Draft;
import org.footwell.parts.Filter.Kind;
import org.junit.jupiter.api.Test;

/** What load a filter with its driver is to the amplifier. */
class FilterLoadTest {

  static final ImpedanceDriver WOOFER =
      new ImpedanceDriver(3.3, 0.5, null, null, 62.0, 4.8, 0.62, null);

  static Draft intoTheWoofer() {
    Draft draft = new Draft();
    draft.loadOhm = 4;
    draft.driver = WOOFER;
    return draft;
  }

  @Test
  void aLowPassThatDipsFarBelowItsLoadIsSaid() {
    Draft draft = intoTheWoofer();
    draft.lowPass = PassiveFilterTest.filter(Kind.LINKWITZ_RILEY, 4, 300);
    Answer<PassiveFilterResult> answer = draft.answer();
    assertEquals(1.46, answer.result().lowestModulusOhm(), 0.005);
    assertTrue(Answers.codes(answer).contains("filter-load-low"), Answers.codes(answer)::toString);
    assertEquals(Verdict.WARNING, answer.verdict());
  }

  @Test
  void aHighPassThatResonatesWithTheDriverIsSaid() {
    Draft draft = intoTheWoofer();
    draft.highPass = PassiveFilterTest.filter(Kind.BUTTERWORTH, 4, 2500);
    Answer<PassiveFilterResult> answer = draft.answer();
    assertEquals(0.17, answer.result().lowestModulusOhm(), 0.005);
    assertTrue(Answers.codes(answer).contains("filter-load-low"), Answers.codes(answer)::toString);
  }

  @Test
  void anAmplifierIsHeldAgainstItsOwnMinimum() {
    Draft draft = intoTheWoofer();
    draft.lowPass = PassiveFilterTest.filter(Kind.LINKWITZ_RILEY, 4, 300);
    draft.amplifierMinimumOhm = 2.0;
    assertTrue(Answers.codes(draft.answer()).contains("network-load-too-low"));
    assertEquals(Verdict.STOP, draft.answer().verdict());
    // 80 % of 1.6 ohm are 1.28 ohm.
    draft.amplifierMinimumOhm = 1.6;
    assertTrue(Answers.codes(draft.answer()).contains("network-load-below-rated"));
    assertFalse(Answers.codes(draft.answer()).contains("filter-load-low"));
  }

  @Test
  void aLoadThatStaysAboveEightTenthsOfItsRatingIsNotSpokenOf() {
    Draft draft = intoTheWoofer();
    draft.compensate = true;
    draft.loadOhm = 3.3;
    draft.lowPass = PassiveFilterTest.filter(Kind.LINKWITZ_RILEY, 2, 2500);
    assertTrue(draft.answer().result().lowestModulusOhm() >= 0.8 * 3.3);
    assertFalse(Answers.codes(draft.answer()).contains("filter-load-low"));
  }
}
