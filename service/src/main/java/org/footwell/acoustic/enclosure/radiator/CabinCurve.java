package org.footwell.acoustic.enclosure.radiator;

import java.util.List;
import org.footwell.parts.Cabin;
import org.footwell.parts.Cabin.TransferPoint;
import org.footwell.physics.Air;
import org.footwell.physics.CabinGain;

/** The gain of a cabin over frequency, ready to be asked often. */
public final class CabinCurve {

  private final double corner;
  private final double cap;
  private final Double pressureCorner;
  private final double[] logarithms;
  private final double[] gains;

  /** The curve of a cabin whose frequencies rise, in air of a temperature in °C. */
  public CabinCurve(Cabin cabin, double temperatureC) {
    boolean measured = cabin.transfer() != null;
    double c = Air.SPEED_OF_SOUND.at(temperatureC);
    List<TransferPoint> points = measured ? cabin.transfer() : List.of();
    corner = measured ? 0 : CabinGain.CORNER.at(c, cabin.lengthM());
    pressureCorner =
        cabin.volumeM3() == null ? null : (Double) CabinGain.VOLUME_CORNER.at(c, cabin.volumeM3());
    cap = cabin.gainCapDb();
    logarithms = points.stream().mapToDouble(p -> Math.log(p.frequencyHz())).toArray();
    gains = points.stream().mapToDouble(TransferPoint::gainDb).toArray();
  }

  /** The frequency in Hz below which the model rises; 0 for a table. */
  public double cornerHz() {
    return corner;
  }

  /** Where a closed rigid cabin of the volume given begins to add, Hz; null without a volume. */
  public Double pressureCornerHz() {
    return pressureCorner;
  }

  /** What a closed rigid cabin adds at a frequency in Hz, dB; null above its corner or without one. */
  public Double sealedGainDb(double f) {
    return pressureCorner == null || f > pressureCorner
        ? null
        : (Double) CabinGain.RISE.at(pressureCorner, f, Double.POSITIVE_INFINITY);
  }

  /** Gain in dB at a frequency in Hz. */
  public double gainDb(double f) {
    return gains.length == 0 ? CabinGain.RISE.at(corner, f, cap) : fromTable(Math.log(f));
  }

  private double fromTable(double logarithm) {
    int last = gains.length - 1;
    if (logarithm <= logarithms[0]) {
      return gains[0];
    }
    for (int i = 1; i <= last; i++) {
      if (logarithm <= logarithms[i]) {
        double share = (logarithm - logarithms[i - 1]) / (logarithms[i] - logarithms[i - 1]);
        return gains[i - 1] + share * (gains[i] - gains[i - 1]);
      }
    }
    return gains[last];
  }
}
