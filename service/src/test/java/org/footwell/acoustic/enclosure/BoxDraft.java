package org.footwell.acoustic.enclosure;

import java.util.Arrays;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.enclosure.ClosedBoxRequest.ClosedVolume;
import org.footwell.acoustic.enclosure.ClosedBoxRequest.LeakyBaffle;
import org.footwell.acoustic.enclosure.radiator.BoxDriver;
import org.footwell.acoustic.enclosure.radiator.BoxDriverBuilder;
import org.footwell.acoustic.enclosure.radiator.CabinResponse;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter;

/**
 * A request to be changed. The driver: re 3.2 ohm, 4 ohm rated, fs 40 Hz, qms 4, qes 0.5714… so that
 * qts is 0.5, vas 30 l, sd 200 cm², no inductance; 1 V.
 */
final class BoxDraft {
  double re = 3.2;
  double rated = 4;
  double fs = 40;
  double qms = 4;
  double qes = 4.0 / 7;
  double vas = 30;
  double sd = 200;
  Double xmax;
  Double le;
  Double leExponent;
  Double continuousPower;

  Double volume = 10.0;
  Double qtc;
  Double ripple;
  Double fill;
  Double ql;
  Double qa;
  Double qp;
  Double driverDisplacement;
  Double bracing;
  Double space;
  Double longestInside;
  LeakyBaffle baffle;

  Double fb;
  Double diameter;
  BoxPort.Slot slot;
  Double portLength;
  Integer portCount;
  BoxPort.End outerEnd;
  BoxPort.End innerEnd;
  Double wall;

  Double voltage = 1.0;
  Double power;
  Double source;
  Double temperature;
  Integer order;
  Filter highPass;
  Filter lowPass;
  CabinResponse cabin;
  CurveFrequencies frequencies;

  /** A vented box of a volume in litre with a port of 100 mm, tuned to some Hz. */
  BoxDraft tuned(double volumeL, double tuningHz) {
    volume = volumeL;
    fb = tuningHz;
    diameter = 100.0;
    return this;
  }

  /** A vented box to be found, with a port of 100 mm. */
  BoxDraft untuned() {
    volume = null;
    fb = null;
    diameter = 100.0;
    return this;
  }

  BoxDraft qts(double qts) {
    qes = 1 / (1 / qts - 1 / qms);
    return this;
  }

  BoxDraft at(double... hz) {
    frequencies = new CurveFrequencies(null, null, null, Arrays.stream(hz).boxed().toList());
    return this;
  }

  BoxDraft range(double from, double to) {
    frequencies = new CurveFrequencies(null, from, to, null);
    return this;
  }

  BoxDriver driver() {
    return BoxDriverBuilder.builder()
        .reOhm(re)
        .ratedOhm(rated)
        .fsHz(fs)
        .qms(qms)
        .qes(qes)
        .vasL(vas)
        .sdCm2(sd)
        .xmaxMm(xmax)
        .leMh(le)
        .leExponent(leExponent)
        .continuousPowerW(continuousPower)
        .build();
  }

  ClosedBoxRequest closedRequest() {
    ClosedVolume box =
        baffle != null
            ? null
            : ClosedBoxRequestClosedVolumeBuilder.builder()
                .volumeL(qtc == null && ripple == null ? volume : null)
                .qtc(qtc)
                .rippleDb(ripple)
                .fillFactor(fill)
                .ql(ql)
                .qa(qa)
                .driverDisplacementL(driverDisplacement)
                .bracingL(bracing)
                .spaceL(space)
                .longestInsideMm(longestInside)
                .build();
    return ClosedBoxRequestBuilder.builder()
        .driver(driver())
        .box(box)
        .baffle(baffle)
        .voltageV(voltage)
        .powerW(power)
        .sourceOhm(source)
        .temperatureC(temperature)
        .subsonicOrder(order)
        .highPass(highPass)
        .lowPass(lowPass)
        .cabin(cabin)
        .frequencies(frequencies)
        .build();
  }

  VentedBoxRequest ventedRequest() {
    return VentedBoxRequestBuilder.builder()
        .driver(driver())
        .box(
            VentedBoxRequestVentedVolumeBuilder.builder()
                .volumeL(volume)
                .fbHz(fb)
                .ql(ql)
                .qa(qa)
                .qp(qp)
                .driverDisplacementL(driverDisplacement)
                .bracingL(bracing)
                .spaceL(space)
                .longestInsideMm(longestInside)
                .build())
        .port(new BoxPort(portCount, diameter, slot, portLength, wall, outerEnd, innerEnd))
        .voltageV(voltage)
        .powerW(power)
        .sourceOhm(source)
        .temperatureC(temperature)
        .subsonicOrder(order)
        .highPass(highPass)
        .lowPass(lowPass)
        .cabin(cabin)
        .frequencies(frequencies)
        .build();
  }

  Answer<ClosedBoxResult> closedAnswer() {
    return Answers.of(new ClosedBox(), closedRequest());
  }

  ClosedBoxResult closed() {
    return closedAnswer().result();
  }

  Answer<VentedBoxResult> ventedAnswer() {
    return Answers.of(new VentedBox(), ventedRequest());
  }

  VentedBoxResult vented() {
    return ventedAnswer().result();
  }

  /** The sentence of the one finding of a closed box with a code. */
  String closedSays(String code) {
    return said(closedAnswer(), code);
  }

  String ventedSays(String code) {
    return said(ventedAnswer(), code);
  }

  private static String said(Answer<?> answer, String code) {
    List<String> texts =
        answer.findings().stream()
            .filter(finding -> finding.code().equals(code))
            .map(finding -> finding.text())
            .toList();
    if (texts.size() != 1) {
      throw new AssertionError(texts.size() + " are " + code + " of " + Answers.codes(answer));
    }
    return texts.get(0);
  }

  List<Fault> closedFaults() {
    return Answers.faults(new ClosedBox(), closedRequest());
  }

  List<Fault> ventedFaults() {
    return Answers.faults(new VentedBox(), ventedRequest());
  }
}
