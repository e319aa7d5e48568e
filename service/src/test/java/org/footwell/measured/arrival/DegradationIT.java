package org.footwell.measured.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.footwell.Committed;
import org.footwell.measured.arrival.DegradationStudy.Place;
import org.footwell.measured.arrival.MadeUpRoom.Speaker;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The published tables of where arrivals fail are what this code gives. Takes a minute or two. */
@Tag("workbench")
class DegradationIT {

  private static final int TRIALS = 20;

  @Test
  void thePageIsUpToDate() throws IOException {
    Committed.assertUpToDate(
        "docs/method/arrival-times-limits.md", new DegradationStudy(TRIALS).page());
  }

  @ParameterizedTest
  @EnumSource(
      value = Speaker.class,
      names = {"WOOFER", "SUBWOOFER"})
  void amongModesNoneOfAThousandIsToldToSwapItsWiresWrongly(Speaker speaker) {
    Trials trials = DegradationStudy.amongModes(speaker, Place.MODAL_CABIN);
    assertEquals(0, trials.sureAndWrong(), trials::toString);
    assertTrue(trials.covered() >= 0.95, trials::toString);
  }

  @Test
  void noneOfAThousandPairsAmongModesIsToldWrongly() {
    PairStudy.Trials trials = PairStudy.amongModes();
    assertEquals(0, trials.wrong(), trials::toString);
    assertTrue(trials.told() >= 800, trials::toString);
  }
}
