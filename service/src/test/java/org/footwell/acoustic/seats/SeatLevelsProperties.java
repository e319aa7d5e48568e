package org.footwell.acoustic.seats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.acoustic.seats.SeatLevelsRequest.Tilt;
import org.footwell.acoustic.seats.SeatLevelsResult.SeatBand;
import org.footwell.acoustic.seats.SeatLevelsResult.SourceBand;
import org.footwell.acoustic.seats.SeatLevelsResult.SourceLine;
import org.footwell.parts.Filter.Kind;

class SeatLevelsProperties {

  private static Sources wide() {
    Sources draft = Sources.two();
    draft.levels.fromHz(20.0).toHz(20_000.0).incoherentAboveHz(20_000.0);
    return draft;
  }

  @Property(tries = 100)
  void aLinkwitzRileyCrossoverAddsToOneSource(
      @ForAll @DoubleRange(min = 30, max = 5000) double corner) {
    Sources draft = wide();
    draft.sources.get(0).lowPass(Sources.filter(Kind.LINKWITZ_RILEY, 4, corner));
    draft.sources.get(1).highPass(Sources.filter(Kind.LINKWITZ_RILEY, 4, corner));
    for (SeatBand band : draft.answer().result().seats().get(0).bands()) {
      assertEquals(110, band.coherentLevelDbSpl(), 1e-9);
    }
  }

  @Property(tries = 100)
  void pressuresNeverAddToMoreThanAllInPhase(
      @ForAll @DoubleRange(min = 0, max = 20) double delay,
      @ForAll @DoubleRange(min = -40, max = 0) double trim) {
    Sources draft = wide();
    draft.sources.get(1).delayMs(delay).trimDb(trim);
    for (SeatBand band : draft.answer().result().seats().get(0).bands()) {
      assertTrue(band.coherentLevelDbSpl() <= band.incoherentLevelDbSpl() + 3.0104);
    }
  }

  @Property(tries = 100)
  void atTheCommonDriveNoSourcePassesItsOwnLimit(
      @ForAll @DoubleRange(min = 1, max = 100) double continuous,
      @ForAll @DoubleRange(min = 0.1, max = 20) double xmax) {
    Sources draft = wide();
    draft.sources.get(0).driver(Sources.driver().continuousPowerW(continuous).build());
    draft.sources.get(1).driver(Sources.driver().sdCm2(150.0).xmaxMm(xmax).build());
    SeatLevelsResult result = draft.answer().result();
    for (int i = 0; i < 2; i++) {
      SourceLine source = result.sources().get(i);
      for (int b = 0; b < source.bands().size(); b++) {
        SourceBand alone = source.bands().get(b);
        double together = result.seats().get(0).bands().get(b).sourceLevelsDbSpl().get(i);
        assertTrue(together <= alone.levelDbSpl() + 1e-9);
      }
    }
  }

  @Property(tries = 100)
  void aLouderTargetLeavesTheLargestProgrammeAsItIs(
      @ForAll @DoubleRange(min = 0, max = 60) double louder) {
    Sources draft = wide();
    draft.levels.tilt(new Tilt(60.0, -1.0));
    double before = draft.answer().result().largest().seats().get(0).levelDbSpl();
    draft.levels.tilt(new Tilt(60.0 + louder, -1.0));
    assertEquals(before, draft.answer().result().largest().seats().get(0).levelDbSpl(), 1e-9);
  }
}
