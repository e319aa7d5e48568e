package org.footwell.vehicle.faults;
import org.junit.jupiter.api.Test;
import java.util.*;
import java.nio.file.*;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.footwell.vehicle.RandomPlans;
class ScratchStudyTest {
  @Test void study() throws Exception {
    long from = Long.getLong("from", 1), to = Long.getLong("to", 10); int each = Integer.getInteger("each", 3);
    for (var kind : List.of(MeasuredVehicle.Kind.MEASURED, MeasuredVehicle.Kind.WITH_TOLERANCES)) {
      System.out.println(kind + " " + new PlantedStudy(kind).random(from, to, each));
      int n = 0, named = 0, unfit = 0; double sound = 0;
      for (long s = from; s <= to; s++) {
        ObjectNode p = RandomPlans.of(s);
        FaultFinderResult r = PlantedStudy.answer(new MeasuredVehicle(p, PlantedFault.none(p), s, kind).measured());
        n++; sound += r.soundConfidence(); unfit += r.fits() ? 0 : 1;
        if (!r.explanations().get(0).faults().isEmpty() && r.explanations().get(0).confidence() >= 0.9 && r.fits()) { named++; System.out.println("FALSE ALARM " + s + r.explanations().get(0)); }
      }
      System.out.println("sound " + n + " named " + named + " unfit " + unfit + " mean sound " + sound / n);
      int pairs = 0, both = 0, one = 0, wrong = 0, sureBoth = 0;
      for (long s = from; s <= to; s++) {
        ObjectNode p = RandomPlans.of(s);
        PlantedFault a = PlantedFault.in(p, new Random(s)).stream().filter(PlantedFault::planned).findFirst().get();
        PlantedFault b = PlantedFault.in(a.vehicle(), new Random(s + 7)).stream().filter(f -> f.planned() && Collections.disjoint(f.channels(), a.channels())).findFirst().orElse(null);
        if (b == null) continue;
        pairs++;
        FaultFinderResult r = PlantedStudy.answer(new MeasuredVehicle(p, b, s, kind).measured());
        var e = r.explanations().get(0);
        boolean ha = e.faults().stream().anyMatch(a::is), hb = e.faults().stream().anyMatch(b::is);
        both += ha && hb ? 1 : 0; one += ha != hb ? 1 : 0;
        boolean sure = e.confidence() >= 0.9 && r.fits();
        if (sure && e.faults().stream().anyMatch(f -> !a.is(f) && !b.is(f))) { wrong++; System.out.println("PAIR WRONG " + s + a.kinds() + a.channels() + b.kinds() + b.channels() + e); }
        sureBoth += sure && ha && hb ? 1 : 0;
      }
      System.out.println("pairs " + pairs + " both " + both + " one " + one + " sure both " + sureBoth + " sure wrong " + wrong);
    }
  }
}
