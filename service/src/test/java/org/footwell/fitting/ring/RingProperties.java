package org.footwell.fitting.ring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.footwell.fitting.ring.MountingHoles.BoltCircle;
import org.footwell.fitting.ring.MountingHoles.HolePosition;
import org.footwell.fitting.ring.drawing.DrawnRing;
import org.footwell.fitting.ring.drawing.Plate;
import org.footwell.fitting.ring.drawing.RingSolid;
import org.footwell.fitting.ring.drawing.StlFile;
import org.locationtech.jts.geom.Geometry;

class RingProperties {

  /** Round and oval drivers over round and oval openings; holes may well get in each other's way. */
  @Provide
  Arbitrary<RingDraft> rings() {
    Arbitrary<Double> share = Arbitraries.doubles().between(0, 1);
    return Combinators.combine(share.list().ofSize(9), Arbitraries.integers().between(1, 8))
        .as(RingProperties::ring);
  }

  private static RingDraft ring(List<Double> share, int holes) {
    RingDraft draft = new RingDraft();
    double width = 80 + 180 * share.get(0);
    double height = share.get(1) < 0.5 ? width : width * (1 + share.get(1));
    draft
        .driver
        .frame(RingDraft.oval(width, height))
        .cutOut(RingDraft.oval(width - 24, height - 24));
    // On the axes only, so that they lie on the frame of an oval driver too.
    draft.driver.holes(
        width == height
            ? RingDraft.circle(holes, width - 12, 360 * share.get(2))
            : new MountingHoles(
                null,
                List.of(
                    new HolePosition(width / 2 - 6, 0.0), new HolePosition(0.0, 6 - height / 2))));
    double cutOut = width * (0.8 + 0.3 * share.get(3));
    draft
        .opening
        .cutOut(RingDraft.oval(cutOut, cutOut * (1 + 0.5 * share.get(4))))
        .holes(
            RingDraft.circle(9 - holes, cutOut * 1.5 + 2 + 20 * share.get(5), 360 * share.get(6)))
        .limit(null);
    draft.driver.magnetDiameterMm(40.0).mountingDepthMm(40 + 60 * share.get(7));
    draft.ring.arcToleranceMm(0.01 + 0.4 * share.get(8));
    if (share.get(7) < 0.3) {
      draft.ring.outer(RingDraft.oval(width + 2, height + 2));
    }
    return draft;
  }

  @Property(tries = 300)
  void everySolidIsClosedFacesOutwardsAndHasTheVolumeOfItsFace(@ForAll("rings") RingDraft draft) {
    DrawnRing ring = draft.drawn();
    RingSolid solid = RingSolid.of(ring);
    Geometry plate = Plate.of(ring.geometry(), ring.walls());
    double volume = plate.getArea() * ring.thicknessMm();
    assertTrue(plate.isValid());
    assertTrue(solid.closed());
    assertTrue(volume > 0);
    assertEquals(volume, solid.volume(), 1e-9 * volume);
  }

  @Property(tries = 300)
  void theSolidDiffersFromTheFormulaByNoMoreThanTheToleranceAlongItsEdges(
      @ForAll("rings") RingDraft draft) {
    AdapterRingResult result = draft.result();
    double edgeFaces = 100 * (result.surfaceCm2() - 2 * result.faceAreaCm2());
    double most = edgeFaces * result.ring().arcToleranceMm() / 1000;
    double solid = RingSolid.of(draft.drawn()).volume() / 1000;
    assertTrue(solid <= result.volumeCm3() * (1 + 1e-9));
    assertTrue(result.volumeCm3() - solid <= most + 1e-9);
  }

  @Property(tries = 100)
  void theStlFileCanAlwaysBeWritten(@ForAll("rings") RingDraft draft) {
    DrawnRing ring = draft.drawn();
    assertEquals(84 + 50 * RingSolid.of(ring).triangleCount(), StlFile.of(ring).length);
  }

  @Property(tries = 100)
  void aMirroredVehicleGetsTheMirroredRing(@ForAll("rings") RingDraft draft) {
    draft.driver.turnedDeg(0.0);
    AdapterRingResult result = draft.result();
    draft.opening.holes(mirrored(draft.request().opening().holes()));
    draft.driver.holes(mirrored(draft.request().driver().holes()));
    AdapterRingResult mirrored = draft.result();
    assertEquals(result.walls().smallestMm(), mirrored.walls().smallestMm(), 1e-6);
    // Holes that break an edge are cut with their polygons, whose corners do not mirror.
    assertEquals(result.volumeCm3(), mirrored.volumeCm3(), 0.002 * result.volumeCm3());
  }

  private static MountingHoles mirrored(MountingHoles holes) {
    BoltCircle circle = holes.boltCircle();
    return circle != null
        ? RingDraft.circle(
            circle.holeCount(), circle.diameterMm(), (180 - circle.firstAngleDeg()) % 360)
        : new MountingHoles(
            null,
            holes.positions().stream()
                .map(hole -> new HolePosition(-hole.xMm(), hole.yMm()))
                .toList());
  }

  @Property(tries = 200)
  void turningTheDriverNeverBringsItsScrewsNearer(@ForAll("rings") RingDraft draft) {
    double chosen = draft.result().walls().pilotToFactoryMm();
    draft.driver.turnedDeg(0.0);
    assertTrue(chosen >= draft.result().walls().pilotToFactoryMm() - 1e-9);
  }

  @Property(tries = 200)
  void aRingThatIsNotGivenLeavesTheDepthItsClearanceAndEveryHoleItsWallOutwards(
      @ForAll("rings") RingDraft draft) {
    draft.ring.outer(null).thicknessMm(null);
    AdapterRingResult result = draft.result();
    assertTrue(result.room().depthMm() >= 5 - 1e-9);
    assertTrue(result.walls().factoryToOuterMm() >= 3 - 1e-9);
    assertTrue(result.walls().pilotToOuterMm() >= 3 - 1e-9);
    assertTrue(result.room().overlapMm() >= 3 - 1e-9);
  }
}
