package org.footwell.measured.correction;

import org.footwell.signal.Biquad;
import org.footwell.signal.CirclePoint;
import org.footwell.signal.Response;
import org.footwell.signal.SectionDesign;

/** One filter: a bell. */
record PeakFilter(double frequencyHz, double q, double gainDb) {

  Biquad section(double rateHz) {
    return SectionDesign.peak(frequencyHz, q, gainDb, rateHz);
  }

  PeakFilter withGain(double db) {
    return new PeakFilter(frequencyHz, q, db);
  }

  /** Adds what it does at every point, in dB, times a factor. */
  void add(double[] sum, CirclePoint[] points, double rateHz, double factor) {
    Biquad section = section(rateHz);
    for (int i = 0; i < sum.length; i++) {
      sum[i] += factor * Response.levelDb(section.power(points[i]));
    }
  }
}
