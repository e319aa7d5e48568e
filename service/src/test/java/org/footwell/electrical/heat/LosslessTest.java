package org.footwell.electrical.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.parts.ClassD;
import org.junit.jupiter.api.Test;

/** Stages without heat and supplies without end do not exist. */
class LosslessTest {

  @Test
  void aClassDStageWithoutAnyLossIsSaid() {
    AmplifierHeatRequest request =
        Requests.of(Requests.classD(40, 4, 0, new ClassD(0.0, null, 1.0)));
    assertEquals(0, Requests.result(request).total().worstStageHeatW());
    assertTrue(Requests.codes(request).contains("class-d-optimistic"));
  }

  @Test
  void aResistanceThatLosesNextToNothingIsTheSame() {
    AmplifierHeatRequest request =
        Requests.of(Requests.classD(40, 4, 0, new ClassD(0.5, 0.001, null)));
    assertTrue(Requests.codes(request).contains("class-d-optimistic"));
  }

  @Test
  void usualLossesAreNotSpokenOf() {
    AmplifierHeatRequest request =
        Requests.of(Requests.classD(40, 4, 0, new ClassD(5.0, null, 0.92)));
    assertFalse(Requests.codes(request).contains("class-d-optimistic"));
  }

  @Test
  void aCurrentBeyondAnyFuseIsSaid() {
    Answer<AmplifierHeatResult> answer =
        Requests.answer(
            Requests.of(
                Requests.times(8, Requests.classD(160, 4, 0, new ClassD(20.0, null, 0.9)))));
    Finding said =
        answer.findings().stream()
            .filter(one -> one.code().equals("current-beyond-fuses"))
            .findFirst()
            .orElseThrow();
    assertEquals(answer.result().total().sine().batteryCurrentA(), said.value());
    assertEquals(500, said.limit());
  }
}
