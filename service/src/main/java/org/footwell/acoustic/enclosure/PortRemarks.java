package org.footwell.acoustic.enclosure;

import static org.footwell.acoustic.enclosure.EnclosureFinding.PORT_AIR_TOO_FAST;
import static org.footwell.acoustic.enclosure.EnclosureFinding.PORT_CHOKES;
import static org.footwell.acoustic.enclosure.EnclosureFinding.PORT_LONGER_THAN_BOX;
import static org.footwell.acoustic.enclosure.EnclosureFinding.PORT_RESONANCE_IN_RANGE;
import static org.footwell.acoustic.enclosure.EnclosureFinding.PORT_TAKES_MUCH_ROOM;
import static org.footwell.acoustic.enclosure.EnclosureFinding.PORT_VERY_SHORT;
import static org.footwell.acoustic.enclosure.EnclosureFinding.QTS_UNUSUAL_FOR_VENTED;
import static org.footwell.acoustic.enclosure.EnclosureFinding.SLOT_END_CORRECTION;

import org.footwell.acoustic.enclosure.VentedBoxResult.Vent;
import org.footwell.calculation.Run;
import org.footwell.physics.Air;

/** What is said of a port and of a driver in a vented box. All limits: common practice, no source. */
final class PortRemarks {

  private static final double LOW_QTS = 0.2;
  private static final double HIGH_QTS = 0.5;
  private static final double MUCH_ROOM = 0.25;

  /** A port shorter than its end corrections by this factor is tuned by them. */
  private static final double SHORT_SHARE = 0.25;

  private PortRemarks() {}

  static void of(
      VentedBoxRequest q,
      double volumeL,
      PortTuning port,
      Vent air,
      double longestM,
      double qts,
      double highestHz,
      Run run) {
    if (qts < LOW_QTS || qts > HIGH_QTS) {
      run.find(QTS_UNUSUAL_FOR_VENTED)
          .at("/driver")
          .value(qts)
          .limit(qts < LOW_QTS ? LOW_QTS : HIGH_QTS)
          .with("from", LOW_QTS)
          .with("to", HIGH_QTS);
    }
    double c = Air.SPEED_OF_SOUND.at(q.temperatureC());
    double quiet = VentedBox.QUIET_SPEED.at(c);
    boolean chokes = air.largestVelocityMPerS() > VentedBox.CHOKED_SPEED.at(c);
    if (air.largestVelocityMPerS() > quiet) {
      run.find(chokes ? PORT_CHOKES : PORT_AIR_TOO_FAST)
          .at("/port")
          .value(air.largestVelocityMPerS())
          .limit(chokes ? VentedBox.CHOKED_SPEED.at(c) : quiet)
          .with("at", air.largestVelocityHz())
          .with("area", air.quietAreaCm2());
    }
    if (air.resonanceHz() < highestHz) {
      run.find(PORT_RESONANCE_IN_RANGE).at("/port").value(air.resonanceHz()).limit(highestHz);
    }
    size(q, volumeL, port, longestM, run);
  }

  private static void size(
      VentedBoxRequest q, double volumeL, PortTuning port, double longestM, Run run) {
    if (port.length() > longestM) {
      run.find(PORT_LONGER_THAN_BOX).at("/port").value(1000 * port.length()).limit(1000 * longestM);
    }
    if (port.displacementL() > MUCH_ROOM * volumeL) {
      run.find(PORT_TAKES_MUCH_ROOM).at("/port").value(port.displacementL()).limit(volumeL);
    }
    double ends = port.effectiveLength() - port.length();
    if (port.length() < SHORT_SHARE * ends) {
      run.find(PORT_VERY_SHORT)
          .at("/port")
          .value(1000 * port.length())
          .limit(1000 * SHORT_SHARE * ends);
    }
    if (q.port().slot() != null) {
      run.find(SLOT_END_CORRECTION).at("/port/slot");
    }
  }
}
