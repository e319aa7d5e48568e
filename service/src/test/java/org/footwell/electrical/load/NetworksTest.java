package org.footwell.electrical.load;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NetworksTest {

  private static Set<String> canonical(List<? extends Network<?>> networks) {
    Set<String> texts = new HashSet<>();
    networks.forEach(network -> texts.add(AllNetworks.canonical(network)));
    return texts;
  }

  @Test
  void threeLikeCoilsMakeFourNetworks() {
    assertEquals(
        Set.of("s[a, a, a]", "s[a, p[a, a]]", "p[a, s[a, a]]", "p[a, a, a]"),
        canonical(AllNetworks.of(List.of("a"), List.of(3))));
  }

  @Test
  void twoLikeCoilsAndAnotherMakeSix() {
    assertEquals(
        Set.of(
            "s[a, a, b]",
            "p[a, a, b]",
            "s[a, p[a, b]]",
            "s[b, p[a, a]]",
            "p[a, s[a, b]]",
            "p[b, s[a, a]]"),
        canonical(AllNetworks.of(List.of("a", "b"), List.of(2, 1))));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void noNetworkOfLikeCoilsComesTwice(int coils) {
    List<? extends Network<?>> networks = AllNetworks.alike(coils);
    assertEquals(networks.size(), canonical(networks).size());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void noNetworkOfUnlikeCoilsComesTwice(int coils) {
    List<? extends Network<?>> networks = AllNetworks.unlike(coils);
    assertEquals(networks.size(), canonical(networks).size());
  }

  /** Giving unlike coils that stand for the same kind the same name leaves the networks of kinds. */
  @ParameterizedTest
  @CsvSource({
    "2, 1, 0", "2, 2, 0", "3, 1, 0", "3, 2, 0", "2, 2, 1", "4, 2, 0", "3, 3, 0", "2, 2, 2"
  })
  void coilsOfSeveralKindsMakeTheNetworksOfUnlikeOnesWithEqualsSwapped(int a, int b, int c) {
    List<String> kinds = c == 0 ? List.of("a", "b") : List.of("a", "b", "c");
    List<Integer> counts = c == 0 ? List.of(a, b) : List.of(a, b, c);
    Set<String> merged = new HashSet<>();
    for (Network<Integer> unlike : AllNetworks.unlike(a + b + c)) {
      Network<String> ofKinds =
          unlike.fold(
              coil -> Network.leaf(coil <= a ? "a" : coil <= a + b ? "b" : "c"),
              Network::series,
              Network::parallel);
      merged.add(AllNetworks.canonical(ofKinds));
    }
    List<Network<String>> networks = AllNetworks.of(kinds, counts);
    assertEquals(merged, canonical(networks));
    assertEquals(merged.size(), networks.size());
  }

  @Test
  void oneCoilMoreThanTheLimitsMakesAsManyNetworksAsTheRefusalSays() {
    assertEquals(1532, AllNetworks.alike(9).size());
    assertEquals(78416, AllNetworks.unlike(7).size());
  }
}
