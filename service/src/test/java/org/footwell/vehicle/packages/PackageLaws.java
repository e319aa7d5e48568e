package org.footwell.vehicle.packages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.footwell.Answers;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.offer.Offer;
import org.footwell.parts.offer.OfferedAmplifier;
import org.footwell.parts.offer.OfferedCable;
import org.footwell.parts.offer.OfferedDriver;
import org.footwell.parts.plan.PlannedAmplifierBuilder;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.vehicle.packages.PackageOptionsResult.OfferedPackage;

/** What holds for every offer. */
class PackageLaws {

  private static final int TRIES = 6;

  private static List<String> front(PackageOptionsRequest q) {
    PackageOptionsResult result = Answers.of(new PackageOptions(), q).result();
    assertTrue(result.proven().frontComplete() && result.frontCount() <= 50);
    return result.packages().stream().map(PackageLaws::shown).toList();
  }

  private static String shown(OfferedPackage one) {
    return one.slots()
        + " "
        + one.amplifiers()
        + " "
        + one.price()
        + " "
        + one.massChangeG()
        + " "
        + one.lowestHz()
        + " "
        + one.levelAtMostDbSpl();
  }

  @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
  void theOrderOfTheOfferDoesNotMatter(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
    PackageOptionsRequest q = SmallJob.drawn(seed, 3, 3);
    List<OfferedDriver> drivers = new ArrayList<>(q.offer().drivers());
    List<OfferedAmplifier> amplifiers = new ArrayList<>(q.offer().amplifiers());
    List<OfferedCable> cables = new ArrayList<>(q.offer().cables());
    Random random = new Random(seed);
    Collections.shuffle(drivers, random);
    Collections.shuffle(amplifiers, random);
    Collections.shuffle(cables, random);
    assertEquals(
        front(q), front(SmallJob.with(new Offer(drivers, amplifiers, null, cables, null))));
  }

  @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
  void aBeatenPartChangesNothing(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
    PackageOptionsRequest q = SmallJob.drawn(seed, 2, 3);
    List<OfferedDriver> drivers = new ArrayList<>(q.offer().drivers());
    List<OfferedAmplifier> amplifiers = new ArrayList<>(q.offer().amplifiers());
    OfferedDriver driver = drivers.get((int) (seed % drivers.size()));
    drivers.add(
        0,
        new OfferedDriver(
            new PlannedPart(
                "a_" + driver.id(),
                driver.part().role(),
                driver.part().coilCount(),
                DriverBuilder.builder(driver.part().driver())
                    .price(driver.part().driver().price().add(BigDecimal.ONE))
                    .massG(driver.part().driver().massG() + 10)
                    .continuousPowerW(driver.part().driver().continuousPowerW() * 0.9)
                    .build(),
                null,
                null,
                null)));
    OfferedAmplifier amplifier = amplifiers.get((int) (seed % amplifiers.size()));
    amplifiers.add(
        0,
        new OfferedAmplifier(
            PlannedAmplifierBuilder.builder(amplifier.amplifier())
                .id("a_" + amplifier.id())
                .price(amplifier.amplifier().price().add(BigDecimal.TEN))
                .build(),
            null));
    assertEquals(
        front(q),
        front(SmallJob.with(new Offer(drivers, amplifiers, null, q.offer().cables(), null))));
  }

  @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
  void aLargerBudgetLosesNoPackage(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
    PackageOptionsRequest q = SmallJob.drawn(seed, 3, 3);
    List<String> small = front(wishing(q, WishesBuilder.builder().budget(new BigDecimal(400))));
    List<String> large = front(wishing(q, WishesBuilder.builder().budget(new BigDecimal(700))));
    List<String> any = front(q);
    assertTrue(large.containsAll(small));
    assertTrue(any.containsAll(large));
  }

  @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
  void wishesOnlyTakeAway(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
    PackageOptionsRequest q = SmallJob.drawn(seed, 3, 3);
    List<OfferedPackage> all = Answers.of(new PackageOptions(), q).result().packages();
    OfferedPackage middle = all.get(all.size() / 2);
    List<String> met =
        all.stream()
            .filter(one -> one.levelAtMostDbSpl() >= middle.levelAtMostDbSpl() - 1e-9)
            .filter(one -> one.massChangeG() <= middle.massChangeG())
            .filter(one -> one.lowestHz() <= middle.lowestHz())
            .map(PackageLaws::shown)
            .sorted()
            .toList();
    WishesBuilder wishes =
        WishesBuilder.builder()
            .levelDbSpl(middle.levelAtMostDbSpl() - 1e-9)
            .massChangeG(middle.massChangeG())
            .lowestHz(middle.lowestHz());
    assertEquals(met, front(wishing(q, wishes)).stream().sorted().toList());
  }

  private static PackageOptionsRequest wishing(PackageOptionsRequest q, WishesBuilder wishes) {
    return PackageOptionsRequestBuilder.builder(q).wishes(wishes.build()).build();
  }
}
