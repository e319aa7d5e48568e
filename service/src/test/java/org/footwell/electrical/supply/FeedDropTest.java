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
    CableDraft draft = new CableDraft();
    draft.permittedDropV = 6.6;
    draft.areaMm2 = 1.3;
    draft.currentA = 12.0;
    draft.oneWayM = 31.0;
    Answer<SupplyCableResult> answer = draft.answer();
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
    CableDraft draft = new CableDraft().branches(CableDraft.branch("bass", 40, 1.0));
    draft.permittedDropV = 1.38;
    draft.areaMm2 = 10.0;
    draft.oneWayM = 16.0; // 16·1.91·1.1179 mohm: 1.367 V of the 1.38 V that are a tenth
    Answer<SupplyCableResult> answer = draft.answer();
    assertEquals(1, drops(answer).size());
    assertEquals("/branches/0/permitted_drop_v", drops(answer).get(0).pointer());
  }

  @Test
  void aTenthIsAllowed() {
    CableDraft draft = new CableDraft();
    draft.permittedDropV = 1.38;
    assertFalse(Answers.codes(draft.answer()).contains("drop-high"));
  }

  @Test
  void twoBranchesOfOneNameAreRefused() {
    CableDraft draft =
        new CableDraft()
            .branches(CableDraft.branch("bass", 20, 0.2), CableDraft.branch("bass", 30, 0.2));
    var faults = Answers.faults(new SupplyCable(), draft.request());
    assertEquals(1, faults.size(), faults::toString);
    assertEquals("duplicate", faults.get(0).code());
    assertEquals("/branches/1/name", faults.get(0).pointer());
  }
}
