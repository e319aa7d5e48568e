package org.footwell.measured.correction;

import org.footwell.measured.response.MadeUpResponse;
import org.footwell.signal.Biquad;
import org.footwell.signal.SectionDesign;

/** Responses with bells in them. */
final class Bells {

  private Bells() {}

  static MadeUpResponse flat() {
    return MadeUpResponse.click(24_000, 2000, 0.5);
  }

  /** Through bells, three numbers each: frequency, q, gain. */
  static MadeUpResponse with(MadeUpResponse response, double... bells) {
    MadeUpResponse through = response;
    for (int k = 0; k < bells.length; k += 3) {
      Biquad b = SectionDesign.peak(bells[k], bells[k + 1], bells[k + 2], MadeUpResponse.RATE_HZ);
      through = through.through(b.b0(), b.b1(), b.b2(), 1, b.a1(), b.a2());
    }
    return through;
  }
}
