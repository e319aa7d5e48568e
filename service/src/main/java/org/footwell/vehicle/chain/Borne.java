package org.footwell.vehicle.chain;

/**
 * What one driver of a channel gets and bears of the programme, for a source of 1 V.
 *
 * @param driver index in the plan
 * @param heldW mean power against its rated impedance
 * @param coilW mean heat in its voice coils
 * @param movedMm peak displacement with the programme; NaN where it is not known
 * @param continuousW what its data sheet bears; NaN where it is not known
 * @param xmaxMm its travel; NaN where it is not known
 */
public record Borne(
    int driver, double heldW, double coilW, double movedMm, double continuousW, double xmaxMm) {

  static Borne of(ChannelChain chain, Drive drive, int d) {
    DriverModel model = chain.model(d);
    Double continuous = model.part().driver().continuousPowerW();
    Double xmax = model.part().driver().xmaxMm();
    return new Borne(
        chain.drivers().get(d),
        drive.heldW(d),
        drive.coilW(d),
        model.movementKnown() ? drive.programmeMm(d) : Double.NaN,
        continuous == null ? Double.NaN : continuous,
        xmax == null ? Double.NaN : xmax);
  }

  /** Largest source voltage its coil bears, V; infinite where that is not known. */
  double byHeatV() {
    double most = Math.sqrt(continuousW / heldW);
    return Double.isNaN(most) ? Double.POSITIVE_INFINITY : most;
  }

  /** Largest source voltage its travel allows, V; infinite where that is not known. */
  double byMovementV() {
    double most = xmaxMm / movedMm;
    return Double.isNaN(most) ? Double.POSITIVE_INFINITY : most;
  }
}
