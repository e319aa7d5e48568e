package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.PassiveFilters.answer;
import static org.footwell.electrical.passive.PassiveFilters.eightOhms;
import static org.footwell.electrical.passive.PassiveFilters.filter;
import static org.footwell.electrical.passive.PassiveFilters.result;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Verdict;
import org.footwell.parts.Amplifier;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Filter.Kind;
import org.junit.jupiter.api.Test;

/** What load a filter with its driver is to the amplifier. */
class FilterLoadTest {

  static final Driver WOOFER =
      DriverBuilder.builder().reOhm(3.3).leMh(0.5).fsHz(62.0).qms(4.8).qes(0.62).build();

  static PassiveFilterRequestBuilder intoTheWoofer() {
    return eightOhms().loadOhm(4.0).driver(WOOFER);
  }

  @Test
  void aLowPassThatDipsFarBelowItsLoadIsSaid() {
    Answer<PassiveFilterResult> answer =
        answer(intoTheWoofer().lowPass(filter(Kind.LINKWITZ_RILEY, 4, 300)));
    assertEquals(1.46, answer.result().lowestModulusOhm(), 0.005);
    assertTrue(Answers.codes(answer).contains("filter-load-low"), Answers.codes(answer)::toString);
    assertEquals(Verdict.WARNING, answer.verdict());
  }

  @Test
  void aHighPassThatResonatesWithTheDriverIsSaid() {
    Answer<PassiveFilterResult> answer =
        answer(intoTheWoofer().highPass(filter(Kind.BUTTERWORTH, 4, 2500)));
    assertEquals(0.17, answer.result().lowestModulusOhm(), 0.005);
    assertTrue(Answers.codes(answer).contains("filter-load-low"), Answers.codes(answer)::toString);
  }

  @Test
  void anAmplifierIsHeldAgainstItsOwnMinimum() {
    PassiveFilterRequestBuilder draft =
        intoTheWoofer().lowPass(filter(Kind.LINKWITZ_RILEY, 4, 300)).amplifier(allowing(2.0));
    assertTrue(Answers.codes(answer(draft)).contains("network-load-too-low"));
    assertEquals(Verdict.STOP, answer(draft).verdict());
    // 80 % of 1.6 ohm are 1.28 ohm.
    draft.amplifier(allowing(1.6));
    assertTrue(Answers.codes(answer(draft)).contains("network-load-below-rated"));
    assertFalse(Answers.codes(answer(draft)).contains("filter-load-low"));
  }

  private static Amplifier allowing(double ohm) {
    return AmplifierBuilder.builder().minimumOhm(ohm).build();
  }

  @Test
  void aBridgeAllowsHalfTheLoadOnEachSide() {
    PassiveFilterRequestBuilder draft =
        intoTheWoofer().lowPass(filter(Kind.LINKWITZ_RILEY, 4, 300)).amplifier(allowing(0.8));
    // The lowest load is 1.46 ohm: above 0.8 ohm, below the 1.6 ohm of two halves.
    assertFalse(Answers.codes(answer(draft)).contains("network-load-below-rated"));
    draft.bridged(true);
    assertTrue(Answers.codes(answer(draft)).contains("network-load-below-rated"));
  }

  @Test
  void aLoadThatStaysAboveEightTenthsOfItsRatingIsNotSpokenOf() {
    PassiveFilterRequestBuilder draft =
        intoTheWoofer().compensate(true).loadOhm(3.3).lowPass(filter(Kind.LINKWITZ_RILEY, 2, 2500));
    assertTrue(result(draft).lowestModulusOhm() >= 0.8 * 3.3);
    assertFalse(Answers.codes(answer(draft)).contains("filter-load-low"));
  }
}
