package org.footwell.fitting.ring;

import org.footwell.calculation.text.Words;

/**
 * What rings are made of, with the figures taken where the request gives none. Densities and the
 * softening of HDPE are typed from memory; glass transitions of PLA, PETG, ABS and ASA are held
 * against published ones. Polycarbonate is taken by its deflection under load, 138 °C at 0.45 MPa
 * (general reference texts; its glass transition is 150 °C).
 */
public enum RingMaterial implements Words {
  PLA(Kind.PLASTIC, 1240.0, 59.0),
  PETG(Kind.PLASTIC, 1270.0, 77.0),
  ABS(Kind.PLASTIC, 1040.0, 100.0),
  ASA(Kind.PLASTIC, 1070.0, 100.0),
  POLYCARBONATE(Kind.PLASTIC, 1200.0, 138.0),
  /** Its softening is that of a loaded part: it creeps far below melting. */
  HDPE(Kind.PLASTIC, 950.0, 75.0),
  MDF(Kind.BOARD, 750.0, null),
  /** Of birch; general plywood has about 546 kg/m³. */
  PLYWOOD(Kind.BOARD, 680.0, null),
  ALUMINIUM(Kind.METAL, 2700.0, null),
  /** Density and softening must be given. */
  OTHER(Kind.PLASTIC, null, null);

  /** What screws and weather do to it. */
  enum Kind {
    /** Screws form their thread; heat softens it. Two beads of 0.45 mm, as 0.4 mm nozzles lay. */
    PLASTIC(0.8, 0.9),
    /** Wood screws; water swells it. Thinner strips break out under the saw. */
    BOARD(0.7, 2),
    /** Tapped. */
    METAL(0.8, 1);

    /** Pilot hole over screw diameter. */
    final double pilotShare;

    /** Thinnest wall that can be made at all, mm; common practice, no source. */
    final double leastWallMm;

    Kind(double pilotShare, double leastWallMm) {
      this.pilotShare = pilotShare;
      this.leastWallMm = leastWallMm;
    }
  }

  final Kind kind;
  final Double densityKgPerM3;
  final Double softeningC;

  RingMaterial(Kind kind, Double densityKgPerM3, Double softeningC) {
    this.kind = kind;
    this.densityKgPerM3 = densityKgPerM3;
    this.softeningC = softeningC;
  }
}
