package org.footwell.vehicle.packages;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.footwell.parts.CableBuilder;
import org.footwell.parts.ConductorMaterial;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Ratings;
import org.footwell.parts.ReturnPath;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.WayRole;
import org.footwell.parts.offer.Offer;
import org.footwell.parts.offer.OfferedAmplifier;
import org.footwell.parts.offer.OfferedDriver;
import org.footwell.parts.plan.AmplifierFeedBuilder;
import org.footwell.parts.plan.PlannedAmplifierBuilder;
import org.footwell.parts.plan.PlannedAmplifierDrawBuilder;
import org.footwell.parts.plan.PlannedAmplifierOutputsBuilder;
import org.footwell.parts.plan.PlannedPart;

/** Offers drawn at random around what shops have. */
final class RandomOffers {

  private final Random random;

  RandomOffers(long seed) {
    random = new Random(seed);
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  OfferedDriver driver(String id, WayRole role, double fs, double sd, double xmax, int coils) {
    double steps = Math.round(between(20, 220) * 4);
    return new OfferedDriver(
        new PlannedPart(
            id,
            role,
            coils,
            DriverBuilder.builder()
                .ratedOhm(random.nextInt(3) == 0 ? 2.0 : 4.0)
                .reOhm(between(1.7, 1.95))
                .leMh(between(0.05, 0.5))
                .fsHz(fs * between(0.7, 1.4))
                .qms(between(3, 6))
                .qes(between(0.45, 0.8))
                .vasL(sd * between(0.08, 0.13))
                .sdCm2(sd)
                .xmaxMm(xmax * between(0.6, 1.5))
                .sensitivity(
                    new Sensitivity(between(86, 93), Sensitivity.Basis.TWO_POINT_EIGHT_THREE_VOLT))
                .continuousPowerW(between(30, 150))
                .massG((double) Math.round(between(300, 2500)))
                .price(BigDecimal.valueOf(steps / 4))
                .build(),
            null,
            null,
            null));
  }

  OfferedAmplifier amplifier(String id, int outputs) {
    double power = between(30, 120);
    return new OfferedAmplifier(
        PlannedAmplifierBuilder.builder()
            .id(id)
            .outputs(
                List.of(
                    PlannedAmplifierOutputsBuilder.builder()
                        .id("out")
                        .outputCount(outputs)
                        .minimumOhm(2.0)
                        .minimumBridgedOhm(outputs > 1 ? 4.0 : null)
                        .outputOhm(random.nextBoolean() ? 0.03 : 0.05)
                        .ratings(
                            new Ratings(
                                14.4,
                                Ratings.Basis.CLEAN,
                                List.of(
                                    new Ratings.Point(4.0, power),
                                    new Ratings.Point(2.0, power * between(1.4, 1.8))),
                                null,
                                null))
                        .build()))
            .draw(
                PlannedAmplifierDrawBuilder.builder()
                    .idleA(between(0.5, 1.5))
                    .fullEfficiency(0.78)
                    .averageEfficiency(0.6)
                    .build())
            .massG((double) Math.round(between(1000, 4000)))
            .price(BigDecimal.valueOf(Math.round(power * outputs * between(0.6, 1.4))))
            .build(),
        null);
  }

  /** As many drivers of each of some roles, and amplifiers. */
  Offer offer(int drivers, int amplifiers) {
    List<OfferedDriver> all = new ArrayList<>();
    for (int i = 0; i < drivers; i++) {
      int coils = random.nextInt(3) == 0 ? 2 : 1;
      all.add(
          switch (i % 4) {
            case 0 -> driver("o_woofer_" + i, WayRole.WOOFER, 62, 132, 4.5, 1);
            case 1 -> driver("o_tweeter_" + i, WayRole.TWEETER, 1200, 7, 0.4, 1);
            case 2 -> driver("o_coaxial_" + i, WayRole.FULL_RANGE, 84, 86, 3.2, 1);
            default -> driver("o_sub_" + i, WayRole.SUBWOOFER, 33, 320, 10, coils);
          });
    }
    List<OfferedAmplifier> fours = new ArrayList<>();
    for (int i = 0; i < amplifiers; i++) {
      fours.add(amplifier("amplifier_" + i, List.of(4, 2, 6, 1, 5).get(i % 5)));
    }
    return new Offer(all, fours, null, null, null);
  }

  /** The way to where amplifiers go. */
  static PackageOptionsRequest.AmplifierPlace place() {
    return new PackageOptionsRequest.AmplifierPlace(
        AmplifierFeedBuilder.builder()
            .cable(
                CableBuilder.builder()
                    .oneWayM(4.0)
                    .material(ConductorMaterial.COPPER)
                    .insulationTemperatureC(105.0)
                    .engineSpace(true)
                    .build())
            .returnPath(ReturnPath.BODY)
            .permittedDropV(0.5)
            .build(),
        null);
  }
}
