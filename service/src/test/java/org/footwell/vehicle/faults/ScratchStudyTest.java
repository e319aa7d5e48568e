package org.footwell.vehicle.faults;
import org.junit.jupiter.api.Test;
class ScratchStudyTest {
  @Test void study() {
    long t = System.nanoTime();
    PlantedStudy s = PlantedStudy.random(Long.getLong("from", 1), Long.getLong("to", 10), Integer.getInteger("each", 3));
    System.out.println(s.told());
    System.out.println((System.nanoTime() - t) / 1e6 / (2 * s.all) + " ms each");
  }
}
