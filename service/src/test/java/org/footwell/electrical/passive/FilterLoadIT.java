package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.PassiveFilters.filter;
import static org.footwell.electrical.passive.PassiveFilters.result;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.footwell.parts.Driver;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.LadderElement;
import org.footwell.parts.LadderElement.Place;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lowest load of a filter with its driver, as ngspice finds it for the same parts. */
@Tag("workbench")
class FilterLoadIT {

  /** "low = 1.4585e+00 at= 1.0122e+02". */
  private static final Pattern LOWEST = Pattern.compile("low\\s*=\\s*(\\S+)\\s+at=\\s*(\\S+)");

  @TempDir Path work;

  @Test
  void aLowPassIntoAWoofer() throws IOException, InterruptedException {
    agree(FilterLoadTest.intoTheWoofer().lowPass(filter(Kind.LINKWITZ_RILEY, 4, 300)));
  }

  @Test
  void aHighPassIntoAWoofer() throws IOException, InterruptedException {
    agree(FilterLoadTest.intoTheWoofer().highPass(filter(Kind.BUTTERWORTH, 4, 2500)));
  }

  private void agree(PassiveFilterRequestBuilder draft) throws IOException, InterruptedException {
    PassiveFilterResult ours = result(draft);
    Matcher theirs = LOWEST.matcher(run(deck(ours.elements(), FilterLoadTest.WOOFER)));
    assertTrue(theirs.find());
    double ohm = Double.parseDouble(theirs.group(1));
    assertEquals(ohm, ours.lowestModulusOhm(), 0.001 * ohm);
    double hz = Double.parseDouble(theirs.group(2));
    assertEquals(hz, ours.lowestHz(), 0.001 * hz);
  }

  private String run(List<String> deck) throws IOException, InterruptedException {
    Path circuit = Files.write(work.resolve("load.cir"), deck);
    Path log = work.resolve("log");
    Process ngspice =
        new ProcessBuilder("ngspice", "-b", circuit.toString())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    assertTrue(ngspice.waitFor(60, TimeUnit.SECONDS), "ngspice does not end");
    return Files.readString(log);
  }

  /** The ladder from the amplifier on, and behind it the driver by its motional impedance. */
  private static List<String> deck(List<LadderElement> elements, Driver driver) {
    List<String> deck = new ArrayList<>();
    deck.add("* a filter with its driver");
    deck.add("vamp amp 0 dc 0 ac 1");
    deck.add("vsense amp n0 0");
    int node = 0;
    for (int i = 0; i < elements.size(); i++) {
      LadderElement element = elements.get(i);
      String part =
          element.capacitanceUf() != null
              ? "c%d n%d %s " + element.capacitanceUf() + "u"
              : "l%d n%d %s " + element.inductanceMh() + "m";
      boolean series = element.place() == Place.SERIES;
      deck.add(part.formatted(i, node, series ? "n" + (node + 1) : "0"));
      node += series ? 1 : 0;
    }
    double resonance = 2 * Math.PI * driver.fsHz();
    deck.add("re n%d d1 %s".formatted(node, driver.reOhm()));
    deck.add("le d1 d2 %sm".formatted(driver.leMh()));
    deck.add("rres d2 0 " + driver.reOhm() * driver.qms() / driver.qes());
    deck.add("ccmes d2 0 " + driver.qes() / (resonance * driver.reOhm()));
    deck.add("llces d2 0 " + driver.reOhm() / (resonance * driver.qes()));
    deck.add("rfloat n0 0 1e12");
    deck.addAll(
        List.of(
            ".control",
            "ac dec 20000 20 20000",
            "let m=mag(v(amp)/i(vsense))",
            "meas ac low min m",
            "quit",
            ".endc",
            ".end"));
    return deck;
  }
}
