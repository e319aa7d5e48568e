package org.footwell.acoustic.enclosure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.enclosure.lowend.BoxPoint;
import org.footwell.calculation.Answer;
import org.footwell.parts.Cabin.TransferPoint;
import org.footwell.parts.CabinBuilder;
import org.footwell.physics.CabinGain;
import org.junit.jupiter.api.Test;

/** A closed box in a vehicle: what the cabin adds at the seat. */
class ClosedBoxCabinTest {

  @Test
  void theCabinRisesByTwelveDecibelsPerOctaveUpToItsCap() {
    ClosedBoxDraft draft = new ClosedBoxDraft().at(22, 44, 88);
    draft.played.cabin(CabinBuilder.builder().lengthM(343.2 / 176).gainCapDb(9.0).build());
    List<BoxPoint> points = draft.result().points();
    assertEquals(9, points.get(0).cabinGainDb(), 1e-9);
    assertEquals(9, points.get(1).cabinGainDb(), 1e-9);
    assertEquals(0, points.get(2).cabinGainDb(), 1e-9);
    draft.played.cabin(CabinBuilder.builder().lengthM(343.2 / 176).gainCapDb(40.0).build());
    points = draft.result().points();
    assertEquals(12.0412, points.get(1).cabinGainDb(), 1e-4);
    assertEquals(points.get(1).levelDbSpl() + 12.0412, points.get(1).cabinLevelDbSpl(), 1e-4);
    assertTrue(Answers.codes(draft.answer()).contains("cabin-rise-model"));
  }

  @Test
  void aSealedRigidCabinOfAVolumeStandsBesideTheModelByLength() {
    // 343.2/(2·π)·√(2·π/3) = 79.05 Hz; half of it is 12.04 dB more.
    ClosedBoxDraft draft = new ClosedBoxDraft().at(79.05 / 2, 79, 80);
    draft.played.cabin(CabinBuilder.builder().lengthM(3.0).gainCapDb(12.0).volumeM3(3.0).build());
    ClosedBoxResult r = draft.result();
    assertEquals(79.05, r.pressureCornerHz(), 0.005);
    BoxPoint low = r.points().get(0);
    assertEquals(12.04, low.sealedCabinLevelDbSpl() - low.levelDbSpl(), 0.005);
    assertEquals(6.42, low.cabinGainDb(), 0.005); // 40·lg(57.2/39.525)
    assertTrue(r.points().get(1).sealedCabinLevelDbSpl() > r.points().get(1).levelDbSpl());
    assertNull(r.points().get(2).sealedCabinLevelDbSpl());
    draft.played.cabin(CabinBuilder.builder().lengthM(3.0).gainCapDb(12.0).build());
    assertNull(draft.result().pressureCornerHz());
    assertNull(draft.result().points().get(0).sealedCabinLevelDbSpl());
  }

  /** Both pressures from their own laws: a piston of 200 cm², 1 mm peak, in 3 m³ and in half space. */
  @Test
  void atItsCornerTheSealedCabinHasThePressureOfHalfSpace() {
    double f = CabinGain.VOLUME_CORNER.at(343.2, 3);
    double inCabin = 1.2041 * 343.2 * 343.2 * 0.02 * 0.001 / 3;
    double inHalfSpace = 1.2041 * Math.pow(2 * Math.PI * f, 2) * 0.02 * 0.001 / (2 * Math.PI);
    assertEquals(1, inCabin / inHalfSpace, 1e-12);
  }

  @Test
  void aMeasuredTableIsStraightBetweenItsPointsAndKeptBeyond() {
    ClosedBoxDraft draft = new ClosedBoxDraft().at(10, 40, 1000);
    draft.played.cabin(
        CabinBuilder.builder()
            .transfer(List.of(new TransferPoint(20.0, 12.0), new TransferPoint(80.0, 2.0)))
            .build());
    Answer<ClosedBoxResult> answer = draft.answer();
    List<BoxPoint> points = answer.result().points();
    assertEquals(12, points.get(0).cabinGainDb(), 1e-12);
    assertEquals(7, points.get(1).cabinGainDb(), 1e-12);
    assertEquals(2, points.get(2).cabinGainDb(), 1e-12);
    assertTrue(Answers.codes(answer).contains("cabin-table-short"));
    assertFalse(Answers.codes(answer).contains("cabin-rise-model"));
  }
}
