package org.footwell.loudspeaker;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.loudspeaker.Radiator.State;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;

/**
 * The model in fs and Qs against the mechanics it stands for, put together here from mass, spring,
 * resistance, force factor and area: m·dv/dt + r·v + x/c + p·sd = bl·i, U = Ze·i + bl·v.
 */
class RadiatorProperties {

  private static final double RHO = 1.2041;
  private static final double STIFFNESS = RHO * 343.2 * 343.2;
  private static final double CMS = 0.28e-3;
  private static final double BL = 9.5;
  private static final double RE = 3.4;
  private static final double LE_MH = 1.2;
  private static final double SOURCE = 0.3;
  private static final double SD = 0.033;
  private static final double AREA = 0.006;

  private static Driver driver(double mms, double rms) {
    double ws = 1 / Math.sqrt(mms * CMS);
    return DriverBuilder.builder()
        .reOhm(RE)
        .leMh(LE_MH)
        .fsHz(ws / (2 * Math.PI))
        .qms(ws * mms / rms)
        .qes(RE * ws * mms / (BL * BL))
        .vasL(1000 * STIFFNESS * SD * SD * CMS)
        .sdCm2(1e4 * SD)
        .build();
  }

  private static Phasor im(double value) {
    return new Phasor(0, value);
  }

  private static Phasor re(double value) {
    return new Phasor(value, 0);
  }

  @Property
  void theModelIsTheMechanicsItStandsFor(
      @ForAll @DoubleRange(min = 0.02, max = 0.2) double mms,
      @ForAll @DoubleRange(min = 0.5, max = 6) double rms,
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double volume,
      @ForAll @DoubleRange(min = 20, max = 80) double fb,
      @ForAll @DoubleRange(min = 3, max = 50) double q,
      @ForAll @DoubleRange(min = 5, max = 1000) double f) {
    double w = 2 * Math.PI * f;
    double wb = 2 * Math.PI * fb;
    double compliance = volume / STIFFNESS;
    Phasor intoVolume =
        Phasor.ONE.over(re(1 / (q * wb * compliance)).plus(Phasor.ONE.over(im(w * compliance))));
    double portMass = 1 / (wb * wb * compliance);
    Phasor port = Phasor.ONE.over(re(1 / (q * wb * compliance)).plus(im(w * portMass)));
    Phasor acoustic = Phasor.ONE.over(intoVolume.plus(port).plus(re(wb * compliance / q)));
    Phasor mechanical = re(rms).plus(im(w * mms - 1 / (w * CMS))).plus(acoustic.times(SD * SD));
    Phasor electrical = re(RE).plus(im(w * LE_MH / 1000));
    Phasor velocity = re(BL).over(electrical.plus(re(SOURCE)).times(mechanical).plus(re(BL * BL)));
    Phasor inBox = velocity.times(acoustic).times(SD);
    double pressure = inBox.times(intoVolume).modulus() * w * RHO / (2 * Math.PI);

    Driver driver = driver(mms, rms);
    AirBehind air = AirBehind.vented(volume, wb, q, q, q, AREA);
    Phasor terminals = electrical.plus(re(BL * BL).over(mechanical));
    Phasor shown = DriverCircuit.of(driver).before(air).at(f);
    assertEquals(terminals.re(), shown.re(), 1e-9 * terminals.modulus());
    assertEquals(terminals.im(), shown.im(), 1e-9 * terminals.modulus());
    State state = Radiator.of(driver, SOURCE, air, 20).at(f);
    double displacement = 1000 * Math.sqrt(2) * velocity.modulus() / w;
    assertEquals(displacement, state.displacementMm(), 1e-9 * displacement);
    double speed = Math.sqrt(2) * inBox.times(port).modulus() / AREA;
    assertEquals(speed, state.portVelocity(), 1e-9 * speed);
    assertEquals(Decibels.ofAmplitude(pressure / 20e-6), state.levelDbSpl(), 1e-8);
  }

  @Property
  void inABaffleAllTheConeMovesIsHeardAsInAnEndlessBox(
      @ForAll @DoubleRange(min = 5, max = 500) double f) {
    Driver driver = driver(0.06, 2);
    State free = Radiator.of(driver, 0, AirBehind.FREE, 20).at(f);
    State endless = Radiator.of(driver, 0, AirBehind.closed(1e7, 200, null, null), 20).at(f);
    assertEquals(endless.levelDbSpl(), free.levelDbSpl(), 1e-4);
    assertEquals(endless.displacementMm(), free.displacementMm(), 1e-4 * free.displacementMm());
    assertEquals(0, free.portVelocity(), 1e-15);
  }
}
