package org.footwell.fitting.ring;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.fitting.ring.AdapterRingRequest.Opening;
import org.footwell.fitting.ring.MountingHoles.BoltCircle;
import org.footwell.fitting.ring.MountingHoles.HolePosition;
import org.footwell.fitting.ring.drawing.DrawnRing;

/** A request to be changed; starts as the card's example: round, 12 mm thick, in ASA. */
final class RingDraft {
  Outline panelCutOut = round(150);
  MountingHoles factoryHoles = circle(3, 170, 90);
  Double depthMm = 62.0;
  Double grilleMm = 32.0;
  Outline limit = round(190);
  Outline frame = round(166);
  Outline driverCutOut = round(143);
  MountingHoles driverHoles = circle(4, 156, 45);
  Double turnedDeg;
  Double mountingDepthMm = 69.0;
  Double magnetDiameterMm = 100.0;
  Double basketDiameterMm;
  Double frontHeightMm = 9.0;
  Double excursionMm = 6.0;
  RingMaterial material = RingMaterial.ASA;
  Double thicknessMm;
  Outline outer;
  Double basketClearanceMm;
  Double factoryHoleMm;
  Double screwMm;
  Double pilotMm;
  Double wallMinimumMm;
  Double densityKgPerM3;
  Double softeningC;
  Double fill;
  Double placeTemperatureC;
  Double arcToleranceMm;

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
    panelCutOut = oval(148, 220);
    factoryHoles = corners(114, 196);
    limit = null;
    return this;
  }

  AdapterRingRequest request() {
    return new AdapterRingRequest(
        new Opening(panelCutOut, factoryHoles, depthMm, null, grilleMm, null, limit),
        AdapterRingRequestFittedDriverBuilder.builder()
            .frame(frame)
            .cutOut(driverCutOut)
            .holes(driverHoles)
            .turnedDeg(turnedDeg)
            .mountingDepthMm(mountingDepthMm)
            .magnetDiameterMm(magnetDiameterMm)
            .basketDiameterMm(basketDiameterMm)
            .frontHeightMm(frontHeightMm)
            .excursionMm(excursionMm)
            .build(),
        AdapterRingRequestRingMakingBuilder.builder()
            .material(material)
            .thicknessMm(thicknessMm)
            .outer(outer)
            .basketClearanceMm(basketClearanceMm)
            .factoryHoleMm(factoryHoleMm)
            .screwMm(screwMm)
            .pilotMm(pilotMm)
            .wallMinimumMm(wallMinimumMm)
            .densityKgPerM3(densityKgPerM3)
            .softeningC(softeningC)
            .fill(fill)
            .placeTemperatureC(placeTemperatureC)
            .arcToleranceMm(arcToleranceMm)
            .build());
  }

  Answer<AdapterRingResult> answer() {
    return Answers.of(new AdapterRing(), request());
  }

  AdapterRingResult result() {
    return answer().result();
  }

  DrawnRing drawn() {
    return AdapterRing.drawn(answer());
  }

  List<String> codes() {
    return Answers.codes(answer());
  }

  /** Pointers of the faults of a request that must be refused. */
  List<String> refused() {
    return Answers.faults(new AdapterRing(), request()).stream().map(Fault::pointer).toList();
  }
}
