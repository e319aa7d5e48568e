package org.footwell.lowend;

import org.footwell.parts.CurveFrequencies;
import org.footwell.radiator.BoxDriver;
import org.footwell.radiator.CabinResponse;

/** What every request for a driver in a box has: the driver, what drives it, what to look at. */
public interface PlayedBox {

  BoxDriver driver();

  Double voltageV();

  Double powerW();

  Double sourceOhm();

  Double temperatureC();

  Integer subsonicOrder();

  CabinResponse cabin();

  CurveFrequencies frequencies();

  /** The range boxes are made for, taken where none is asked for. */
  static CurveFrequencies bass() {
    return new CurveFrequencies(null, 10.0, 200.0, null);
  }
}
