package org.footwell.vehicle;
import org.junit.jupiter.api.Test;
import org.footwell.Answers;
import org.footwell.vehicle.repair.*;
import java.nio.file.*;
class ScratchRepairTest {
  @Test void go() throws Exception {
    for (Path f : Files.list(Path.of("src/test/resources/codes/plan-review")).sorted().toList()) {
      PlanDraft p = PlanDraft.ofFile(f.toString());
      long t = System.nanoTime();
      try {
      var a = Answers.of(new PlanRepair(), p.read());
      if (a.result().troubles().isEmpty() && a.findings().isEmpty()) continue;
      System.out.println("== " + f.getFileName() + " " + (System.nanoTime() - t) / 1000000 + " ms, reviews " + a.result().reviewCount() + " before " + a.result().troubles().stream().map(x -> x.code() + "@" + x.place()).toList());
      a.result().repairs().stream().limit(2).forEach(r -> System.out.println("   " + r.changes().stream().map(c -> c.change() + " " + c.places() + " " + c.was() + ">" + c.becomes()).toList() + " lost " + r.levelLostDb() + " effort " + r.effort() + " left " + r.left().size() + " caused " + r.caused()));
      a.findings().forEach(x -> System.out.println("   " + x.code()));
      } catch (Throwable e) { System.out.println("== " + f.getFileName() + " FAILED " + e.toString().substring(0, Math.min(200, e.toString().length()))); }
    }
  }
}
