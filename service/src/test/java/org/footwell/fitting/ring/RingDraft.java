package org.footwell.fitting.ring;

import java.util.List;
import org.footwell.RequestUnderTest;
import org.footwell.calculation.Fault;
import org.footwell.fitting.ring.MountingHoles.BoltCircle;
import org.footwell.fitting.ring.MountingHoles.HolePosition;
import org.footwell.fitting.ring.drawing.DrawnRing;

/** A request to be changed; starts as the card's example: round, 12 mm thick, in ASA. */
final class RingDraft extends RequestUnderTest<AdapterRingRequest, AdapterRingResult> {

  final AdapterRingRequestOpeningBuilder opening =
      AdapterRingRequestOpeningBuilder.builder()
          .cutOut(round(150))
          .holes(circle(3, 170, 90))
          .depthMm(62.0)
          .grilleMm(32.0)
          .limit(round(190));
  final AdapterRingRequestFittedDriverBuilder driver =
      AdapterRingRequestFittedDriverBuilder.builder()
          .frame(round(166))
          .cutOut(round(143))
          .holes(circle(4, 156, 45))
          .mountingDepthMm(69.0)
          .magnetDiameterMm(100.0)
          .frontHeightMm(9.0)
          .excursionMm(6.0);
  final AdapterRingRequestRingMakingBuilder ring =
      AdapterRingRequestRingMakingBuilder.builder().material(RingMaterial.ASA);

  RingDraft() {
    super(new AdapterRing());
  }

  static Outline round(double diameter) {
    return new Outline(diameter, null, null);
  }

  static Outline oval(double width, double height) {
    return new Outline(null, width, height);
  }

  static MountingHoles circle(int count, double diameter, double firstAngle) {
    return new MountingHoles(new BoltCircle(count, diameter, firstAngle), null);
  }

  /** At the four corners of a rectangle this wide and high. */
  static MountingHoles corners(double width, double height) {
    double x = width / 2;
    double y = height / 2;
    return new MountingHoles(
        null,
        List.of(
            new HolePosition(x, y),
            new HolePosition(-x, y),
            new HolePosition(-x, -y),
            new HolePosition(x, -y)));
  }

  /** An oval opening of 148 by 220 mm with four holes at its corners, without a limit. */
  RingDraft ovalOpening() {
    opening.cutOut(oval(148, 220)).holes(corners(114, 196)).limit(null);
    return this;
  }

  @Override
  public AdapterRingRequest request() {
    return new AdapterRingRequest(opening.build(), driver.build(), ring.build());
  }

  DrawnRing drawn() {
    return AdapterRing.drawn(answer());
  }

  /** Pointers of the faults of a request that must be refused. */
  List<String> refused() {
    return refusals().stream().map(Fault::pointer).toList();
  }
}
