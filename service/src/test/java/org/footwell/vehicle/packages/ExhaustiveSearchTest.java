package org.footwell.vehicle.packages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.footwell.Answers;
import org.footwell.vehicle.ScreenedPlan;
import org.footwell.vehicle.packages.PackageOptionsResult.OfferedPackage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The front against an exhaustive search: every package of a small offer is put together and reviewed by
 * other code, and those that another beats are thrown out by comparing all with all.
 */
@Tag("long")
class ExhaustiveSearchTest {

  /** Of a package by the other way: price and mass of its review, reach and level of its channels. */
  private record Found(double price, double mass, double reach, double level, double reviewed) {

    boolean beats(Found other) {
      boolean noWorse =
          price <= other.price + 1e-9
              && mass <= other.mass + 1e-6
              && reach <= other.reach + 1e-9
              && level >= other.level - 1e-9;
      boolean better =
          price < other.price - 1e-9
              || mass < other.mass - 1e-6
              || reach < other.reach - 1e-9
              || level > other.level + 1e-9;
      return noWorse && better;
    }

    String shown(double togetherDb) {
      return String.format(
          Locale.ROOT, "%.2f %.3f g %.6f Hz %.6f dB", price, mass, reach, level + togetherDb);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void theFrontIsThatOfAnExhaustiveSearch(long seed) {
    PackageOptionsRequest q = SmallJob.drawn(seed, 2, 3);
    List<BruteForce.Whole> all = new BruteForce(q).all();
    List<List<ScreenedLine>> lines = all.stream().map(ExhaustiveSearchTest::lines).toList();
    double togetherDb = together(lines);
    List<Found> found = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      found.add(found(all.get(i), lines.get(i)));
    }
    List<String> expected =
        found.stream()
            .filter(one -> found.stream().noneMatch(other -> other.beats(one)))
            .map(one -> one.shown(togetherDb))
            .distinct()
            .sorted()
            .toList();
    PackageOptionsResult result = Answers.of(new PackageOptions(), q).result();
    List<String> listed =
        result.packages().stream().map(ExhaustiveSearchTest::shown).sorted().toList();
    assertEquals(String.join("\n", expected), String.join("\n", listed));
    assertTrue(result.proven().frontComplete() && result.proven().allListed());
    // The bound holds for every package, and so does what is proven of those left out.
    for (Found one : found) {
      assertTrue(one.reviewed <= one.level + togetherDb + 1e-9, () -> one.shown(togetherDb));
      assertTrue(
          result.packages().stream().anyMatch(p -> reaches(p, one, result.proven().gapDb())),
          () -> one.shown(togetherDb));
    }
  }

  /** Whether a package listed is as cheap, as light and as low, and hardly less loud. */
  private static boolean reaches(OfferedPackage listed, Found one, double gapDb) {
    return listed.price().doubleValue() <= one.price + 1e-9
        && listed.massChangeG() <= one.mass + 1e-6
        && listed.lowestHz() <= one.reach + 1e-9
        && listed.levelDbSpl() + gapDb >= one.reviewed - 1e-9;
  }

  private static String shown(OfferedPackage one) {
    return new Found(
            one.price().doubleValue(), one.massChangeG(), one.lowestHz(), one.levelAtMostDbSpl(), 0)
        .shown(0);
  }

  /** What a channel of a whole package is. */
  private record ScreenedLine(double level, double adding, double apart, double reach) {}

  private static List<ScreenedLine> lines(BruteForce.Whole whole) {
    return ScreenedPlan.of(whole.plan()).stream()
        .map(one -> new ScreenedLine(one.level(), one.adding(), one.apart(), one.reach()))
        .toList();
  }

  /** The largest of every channel over all packages, added as the method page says. */
  private static double together(List<List<ScreenedLine>> all) {
    double sum = 0;
    double apart = 0;
    for (int c = 0; c < 3; c++) {
      int channel = c;
      sum +=
          all.stream().mapToDouble(one -> Math.sqrt(one.get(channel).adding)).max().orElseThrow();
      apart += all.stream().mapToDouble(one -> one.get(channel).apart).max().orElseThrow();
    }
    return 10 * Math.log10((sum * sum + apart) / (20e-6 * 20e-6));
  }

  private static Found found(BruteForce.Whole whole, List<ScreenedLine> lines) {
    return new Found(
        whole.review().price().doubleValue(),
        whole.review().massChangeG(),
        Math.ceil(2 * lines.stream().mapToDouble(ScreenedLine::reach).min().orElseThrow()) / 2,
        Math.ceil(10 * lines.stream().mapToDouble(ScreenedLine::level).min().orElseThrow()) / 10,
        whole.review().levelDbSpl());
  }
}
