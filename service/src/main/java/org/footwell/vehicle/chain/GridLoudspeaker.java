package org.footwell.vehicle.chain;

import org.footwell.physics.Phasor;

/**
 * A loudspeaker worked out over the grid for 1 V RMS at its terminals. Nothing before its terminals is in
 * it, so that left and right share one however long their cables are.
 */
public final class GridLoudspeaker {

  private final Loudspeaker loudspeaker;
  private final Grid grid;
  private final Phasor[] ohm;
  private final double[][] heldW;
  private final double[][] coilW;
  private final double[][] movedMm;
  private final Phasor[][] pressure;

  public GridLoudspeaker(Loudspeaker loudspeaker, Grid grid) {
    this.loudspeaker = loudspeaker;
    this.grid = grid;
    int drivers = loudspeaker.drivers().size();
    ohm = new Phasor[grid.size()];
    heldW = new double[drivers][grid.size()];
    coilW = new double[drivers][grid.size()];
    movedMm = new double[drivers][grid.size()];
    pressure = new Phasor[drivers][grid.size()];
    for (int k = 0; k < grid.size(); k++) {
      look(k);
    }
  }

  private void look(int k) {
    SolvedLoudspeaker solved = loudspeaker.at(grid.hz(k));
    ohm[k] = solved.ohm();
    for (int d = 0; d < heldW.length; d++) {
      DriverModel model = loudspeaker.drivers().get(d);
      heldW[d][k] = solved.heldW(d);
      coilW[d][k] = solved.coilW(d);
      movedMm[d][k] = model.movementKnown() ? solved.movedMm(d) : 0;
      pressure[d][k] = model.heard() ? solved.pressure(d) : Phasor.ZERO;
    }
  }

  Loudspeaker loudspeaker() {
    return loudspeaker;
  }

  Grid grid() {
    return grid;
  }

  /** Its impedance at a frequency of the grid. */
  Phasor ohm(int k) {
    return ohm[k];
  }

  /** What a driver gets there, against its rated impedance, W. */
  double heldW(int driver, int k) {
    return heldW[driver][k];
  }

  /** What becomes heat in the coils of a driver there, W. */
  double coilW(int driver, int k) {
    return coilW[driver][k];
  }

  /** Peak displacement of a driver there, mm; 0 where it is not known. */
  double movedMm(int driver, int k) {
    return movedMm[driver][k];
  }

  /** Pressure of a driver there at 1 m in half space, Pa; 0 where it is not known. */
  Phasor pressure(int driver, int k) {
    return pressure[driver][k];
  }
}
