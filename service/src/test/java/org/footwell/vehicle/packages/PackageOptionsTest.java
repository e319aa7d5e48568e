package org.footwell.vehicle.packages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.junit.jupiter.api.Test;

class PackageOptionsTest {

  @Test
  void theDemoOfferGivesPackages() throws Exception {
    com.fasterxml.jackson.databind.ObjectMapper json =
        new com.fasterxml.jackson.databind.ObjectMapper();
    Engine engine = new Engine();
    PackageOptionsRequest q =
        engine.bind(
            PackageOptionsRequest.class,
            json.readValue(DemoOffer.request(), java.util.Map.class),
            false);
    for (int i = 0; i < 4; i++) {
      long t0 = System.nanoTime();
      Answer<PackageOptionsResult> a =
          engine.answer(new PackageOptions(), q, false, Duration.ofSeconds(60));
      System.out.println((System.nanoTime() - t0) / 1e6 + " ms");
      if (i == 0) {
        System.out.println(a.findings());
        System.out.println(
            a.result().fitting()
                + "\n"
                + a.result().frontCount()
                + " "
                + a.result().proven()
                + " "
                + a.result().relaxed());
        for (PackageOptionsResult.OfferedPackage p : a.result().packages()) {
          System.out.println(
              p.price()
                  + " "
                  + p.massChangeG()
                  + " "
                  + p.lowestHz()
                  + " "
                  + p.levelAtMostDbSpl()
                  + " "
                  + p.levelDbSpl()
                  + " "
                  + p.verdict()
                  + " "
                  + p.codes()
                  + "\n   "
                  + p.amplifiers()
                  + p.slots());
          assertEquals(0, p.price().compareTo(p.review().price()));
          assertEquals(p.massChangeG(), p.review().massChangeG(), 1e-6);
          assertTrue(p.levelDbSpl() <= p.levelAtMostDbSpl());
        }
      }
    }
  }
}
