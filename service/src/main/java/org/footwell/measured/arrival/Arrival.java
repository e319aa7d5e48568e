package org.footwell.measured.arrival;

import org.footwell.calculation.Built;
import org.footwell.measured.arrival.ArrivalTimesResult.Method;
import org.footwell.signal.PassBand;

/**
 * What was found in one response.
 *
 * @param timeS arrival from the first sample, s
 * @param uncertaintyS how far it may be off, s
 * @param envelopeS peak of the envelope, s
 * @param polarity 1 or −1
 * @param confidence of the polarity, 0 to 1
 * @param signalToNoiseDb peak of the envelope over the RMS of noise, dB
 * @param reflectionDb strongest later peak over the first, dB, or null
 * @param reflectionS how much later it comes, s, or null
 */
@Built
record Arrival(
    Method method,
    double timeS,
    double uncertaintyS,
    double envelopeS,
    PassBand band,
    int polarity,
    double confidence,
    double signalToNoiseDb,
    Double reflectionDb,
    Double reflectionS) {

  /** How far it may be off against a reference that may be off too, s. */
  double uncertaintyAgainst(double referenceS) {
    return Math.hypot(uncertaintyS, referenceS);
  }

  /** The same with nothing told of polarity. */
  Arrival withoutPolarity() {
    return ArrivalBuilder.builder()
        .method(method)
        .timeS(timeS)
        .uncertaintyS(uncertaintyS)
        .envelopeS(envelopeS)
        .band(band)
        .polarity(polarity)
        .confidence(0)
        .signalToNoiseDb(signalToNoiseDb)
        .reflectionDb(reflectionDb)
        .reflectionS(reflectionS)
        .build();
  }
}
