package org.footwell.vehicle.faults;
import org.junit.jupiter.api.Test;
import java.util.*;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.footwell.vehicle.RandomPlans;
class ScratchOneTest {
  @Test void study() throws Exception {
    long s = Long.getLong("from", 52);
        ObjectNode p = RandomPlans.of(s);
        PlantedFault a = PlantedFault.in(p, new Random(s)).stream().filter(PlantedFault::planned).findFirst().get();
        PlantedFault b = PlantedFault.in(a.vehicle(), new Random(s + 7)).stream().filter(f -> f.planned() && Collections.disjoint(f.channels(), a.channels())).findFirst().orElse(null);
        ObjectNode m = new MeasuredVehicle(p, b, s, MeasuredVehicle.Kind.MEASURED).measured();
        System.out.println(m.get("measured"));
        System.out.println(p.get("channels"));
        System.out.println(b.vehicle().get("channels"));
        FaultFinderResult r = PlantedStudy.answer(m);
        r.explanations().forEach(System.out::println);
  }
}
