package org.footwell.web.limits;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Keys as an operator writes them down. */
class KeyRingTest {

  /** One-block message sample of FIPS 180-2, appendix B.1: the SHA-256 of "abc". */
  private static final String HASH_OF_ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  /** Of the empty message, NIST's example of SHA-256 with no input. */
  private static final String HASH_OF_NOTHING =
      "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

  private static KeyRing ring(String... lines) {
    return KeyRing.of(List.of(lines), "line");
  }

  private static String fault(String... lines) {
    return assertThrows(IllegalArgumentException.class, () -> ring(lines)).getMessage();
  }

  @Test
  void aKeyIsKnownByItsHash() {
    KeyRing keys = ring("# the shop", "", "shop:" + HASH_OF_ABC, " stock:" + HASH_OF_NOTHING + " ");
    assertEquals(Optional.of("shop"), keys.nameOf("abc"));
    assertEquals(Optional.of("stock"), keys.nameOf(""));
    assertEquals(Optional.empty(), keys.nameOf("abd"));
    assertEquals(Optional.empty(), keys.nameOf(HASH_OF_ABC));
  }

  @Test
  void aNameMayHaveTwoKeysWhileOneFollowsTheOther() {
    KeyRing keys = ring("shop:" + HASH_OF_ABC, "shop:" + HASH_OF_NOTHING.toUpperCase(Locale.ROOT));
    assertEquals(keys.nameOf("abc"), keys.nameOf(""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "shop | must be a name and a hash with a colon between them",
        ":HASH | the name must be of at most 64 letters, digits, dots, dashes and underscores, and begin with a letter or a digit",
        "a b:HASH | the name must be of at most 64 letters, digits, dots, dashes and underscores, and begin with a letter or a digit",
        "shop:abc | the hash must be of 64 hex digits, the SHA-256 of the key",
        "shop:HASH0 | the hash must be of 64 hex digits, the SHA-256 of the key",
        "shop: HASH | the hash must be of 64 hex digits, the SHA-256 of the key",
        "shop:xHASH | the hash must be of 64 hex digits, the SHA-256 of the key"
      })
  void whatCannotBeUsedIsToldWithoutRepeatingIt(String line, String told) {
    assertEquals("line 2: " + told, fault("# keys", line.replace("HASH", HASH_OF_ABC)));
  }

  @Test
  void everyFaultIsToldAtOnce() {
    assertEquals(
        """
        line 1: must be a name and a hash with a colon between them
        line 3: the same key stands there twice
        line 4: the hash must be of 64 hex digits, the SHA-256 of the key""",
        fault(
            "secret",
            "shop:" + HASH_OF_ABC,
            "stock:" + HASH_OF_ABC.toUpperCase(Locale.ROOT),
            "x:y"));
  }

  @Test
  void keysWithoutAnyWouldLetNobodyIn() {
    assertEquals("must name a key, as name:hash", fault("# none yet", ""));
  }

  @Test
  void thereIsAMost() {
    List<String> most =
        IntStream.range(0, KeyRing.MOST)
            .mapToObj(n -> "shop:%064x".formatted(n))
            .collect(Collectors.toList());
    assertFalse(KeyRing.of(most, "line").isEmpty());
    most.add("shop:" + "f".repeat(64));
    assertEquals(
        "must hold at most 1000 keys, not 1001",
        assertThrows(IllegalArgumentException.class, () -> KeyRing.of(most, "line")).getMessage());
  }

  /** The library's comparison looks at every byte; the others end at the first that differs. */
  @Test
  void hashesAreComparedInConstantTime() {
    JavaClasses keys = new ClassFileImporter().importClasses(KeyRing.class);
    long compared =
        keys.get(KeyRing.class).getMethod("nameOf", String.class).getMethodCallsFromSelf().stream()
            .filter(call -> call.getTargetOwner().isEquivalentTo(MessageDigest.class))
            .filter(call -> call.getName().equals("isEqual"))
            .count();
    assertEquals(1, compared);
    noClasses().should().callMethod(Arrays.class, "equals", byte[].class, byte[].class).check(keys);
  }
}
