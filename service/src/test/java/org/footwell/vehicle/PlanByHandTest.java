package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.footwell.physics.Phasor;
import org.footwell.vehicle.PlanReviewResult.ChannelLine;
import org.footwell.vehicle.PlanReviewResult.DriverLine;
import org.junit.jupiter.api.Test;

/** The arithmetic of docs/method/plan-review.md, repeated with nothing of the model in it. */
class PlanByHandTest {

  private static final double DB_CLOSE = 0.005;
  private static final double CLOSE = 5e-4;

  private static double db(double ratio) {
    return 20 * Math.log10(ratio);
  }

  @Test
  void oneChannelCanBeFollowedFromFullScaleToTheSeat() throws IOException {
    PlanReviewResult result = PlanDraft.van().review().result();
    ChannelLine channel = PlanDraft.channel(result, "rear_left");
    double cable = 2 * 5 * 13.3 / 1000;
    double load = 4 + cable;
    double intoFour = Math.sqrt(75 * 4);
    double intoTwo = Math.sqrt(120 * 2);
    double sag = (intoFour - intoTwo) / (intoTwo / 2 - intoFour / 4);
    double rated = intoFour + sag * intoFour / 4;
    double left = result.supply().get(0).amplifiers().get(0).voltageV();
    double clean = rated * load / (load + sag) * left / 14.4;
    written("4.133 ohm", load, load);
    written("0.5353 ohm", sag, sag);
    written("19.64 V", rated, rated);
    written("14.12 V", left, left);
    written("17.05 V", clean, clean);
    written("70.31 W", clean * clean / load, channel.cleanPowerW());
    double source = clean * (load + 0.04) / load;
    written("17.21 V", source, source);
    written("12.19 V", source * Math.pow(10, -3.0 / 20), channel.gainTargetV());

    double reactance = 2 * Math.PI * 0.28;
    Phasor coil = new Phasor(3.4 + reactance / Math.tan(Math.toRadians(63)), reactance);
    Phasor cone = new Phasor(3.4 * 4.4 / 0.66, 0).over(new Phasor(1, 4.4 * (1000 / 84.0 - 0.084)));
    Phasor driver = coil.plus(cone);
    Phasor all = driver.plus(new Phasor(cable + 0.04, 0));
    written("4.504 ohm", driver.modulus(), driver.modulus());
    double volts =
        source * Math.pow(10, channel.trimDb() / 20) * 0.9999 * driver.modulus() / all.modulus();
    written("16.55 V", volts, volts);
    double atOne = 89 + db(volts / 2.83);
    written("104.34 dB SPL", atOne, atOne);
    double x = 1000 / 84.0;
    double qts = 1 / (1 / 4.4 + 1 / 0.66);
    double own = db(x * x / Math.hypot(x * x - 1, x / qts));
    double seat = atOne + own - db(0.4);
    written("112.27 dB SPL", seat, seat);
    double band = seat - (12 - 10 * Math.log10(2)) + 10 * Math.log10(share());
    written("5.423 %", 100 * share(), 100 * share());
    written("90.62 dB SPL", band, band);
    written("102.0 dB SPL", channel.levelDbSpl(), channel.levelDbSpl());
    assertEquals(alone(result), band, DB_CLOSE, "level of the third octave at 1 kHz");
  }

  @Test
  void aSineGivesTheDriverWhatItsImpedanceAndTheCableLeave() {
    DriverLine driver = PlanDraft.driver(PlanDraft.van().review().result(), "rear_left_coaxial");
    ChannelLine channel = PlanDraft.channel(PlanDraft.van().review().result(), "rear_left");
    // Where the impedance is highest cable and output impedance take next to nothing.
    double most = channel.cleanPowerW() * 4.133 / 4 * Math.pow(4.173 / 4.133, 2);
    assertTrue(driver.cleanPowerW() > channel.cleanPowerW() * 4 / 4.133);
    assertTrue(driver.cleanPowerW() < most, driver.cleanPowerW() + " below " + most);
  }

  /** Share of the third octave at 1 kHz: −0.1 dB in IEC 60268-1:1985, Table II, 20 Hz to 20 kHz. */
  private static double share() {
    double[] table = {
      -13.5, -10.2, -7.4, -5.2, -3.5, -2.3, -1.4, -0.9, -0.5, -0.2, -0.1, 0, 0, 0, 0, 0, 0, -0.1,
      -0.3, -0.6, -1.0, -1.6, -2.5, -3.7, -5.1, -7.0, -9.4, -11.9, -14.8, -18.2, -21.6
    };
    double sum = 0;
    for (double level : table) {
      sum += Math.pow(10, level / 10);
    }
    return Math.pow(10, table[17] / 10) / sum;
  }

  /** The same third octave of the model: this channel's gain as it was, all others trimmed away. */
  private static double alone(PlanReviewResult reviewed) {
    StringBuilder settings = new StringBuilder("[");
    for (ChannelLine line : reviewed.channels()) {
      boolean own = line.id().equals("rear_left");
      settings
          .append(settings.length() > 1 ? "," : "")
          .append("{\"channel\": \"" + line.id() + "\", \"trim_db\": ")
          .append(own ? line.trimDb() + ", \"gain_v\": " + line.gainTargetV() : "-80")
          .append('}');
    }
    PlanReviewResult quiet =
        PlanDraft.van().with("/settings", settings.append(']').toString()).review().result();
    int band = 0;
    while (quiet.bandsHz().get(band) < 999) {
      band++;
    }
    return quiet.seats().get(0).bandsDbSpl().get(band);
  }

  /** Holds a figure of the page against the one worked by hand, and that against the model's. */
  private static void written(String figure, double byHand, double ofModel) throws IOException {
    String page = Files.readString(Path.of("../docs/method/plan-review.md"));
    assertTrue(page.contains(figure), figure + " is not on the page");
    String digits = figure.substring(0, figure.indexOf(' '));
    int places = digits.length() - digits.indexOf('.') - 1;
    assertEquals(Double.parseDouble(digits), byHand, 0.5 * Math.pow(10, -places) * 1.001, figure);
    assertEquals(ofModel, byHand, Math.abs(byHand) * CLOSE, figure);
  }
}
