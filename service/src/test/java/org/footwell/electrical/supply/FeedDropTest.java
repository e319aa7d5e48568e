package org.footwell.electrical.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Verdict;
import org.junit.jupiter.api.Test;

/** What a feed may lose is the caller's choice, but not in silence. */
class FeedDropTest {

  private static List<Finding> drops(Answer<?> answer) {
    return answer.findings().stream().filter(one -> one.code().equals("drop-high")).toList();
  }

  @Test
  void aFeedThatLeavesSevenVoltsIsAWarningWhateverIsPermitted() {
    CableDraft draft =
        Cables.standard().permittedDropV(6.6).areaMm2(1.3).currentA(12.0).oneWayM(31.0);
    Answer<SupplyCableResult> answer = Cables.answer(draft);
    double end = answer.result().metric().endV();
    assertTrue(end > 7.2 && end < 8, () -> "end " + end);
    Finding said = drops(answer).get(0);
    assertEquals(Verdict.WARNING, said.level());
    assertEquals("/permitted_drop_v", said.pointer());
    assertEquals(100 * (13.8 - end) / 13.8, said.value(), 1e-9);
    assertEquals(10, said.limit());
  }

  @Test
  void mainCableAndBranchCountTogether() {
    CableDraft draft =
        Cables.branched(Cables.branch("bass", 40, 1.0))
            .permittedDropV(1.38)
            .areaMm2(10.0)
            .oneWayM(16.0); // 16·1.91·1.1179 mohm: 1.367 V of the 1.38 V that are a tenth
    Answer<SupplyCableResult> answer = Cables.answer(draft);
    assertEquals(1, drops(answer).size());
    assertEquals("/branches/0/permitted_drop_v", drops(answer).get(0).pointer());
  }

  @Test
  void aTenthIsAllowed() {
    assertFalse(
        Answers.codes(Cables.answer(Cables.standard().permittedDropV(1.38))).contains("drop-high"));
  }

  @Test
  void twoBranchesOfOneNameAreRefused() {
    CableDraft draft =
        Cables.branched(Cables.branch("bass", 20, 0.2), Cables.branch("bass", 30, 0.2));
    var faults = Answers.faults(new SupplyCable(), draft.build());
    assertEquals(1, faults.size(), faults::toString);
    assertEquals("duplicate", faults.get(0).code());
    assertEquals("/branches/1/name", faults.get(0).pointer());
  }
}
