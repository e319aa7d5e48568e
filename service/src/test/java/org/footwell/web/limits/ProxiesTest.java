package org.footwell.web.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whose word is taken on where a request came from. Addresses are those of RFC 5737 and RFC 3849. */
class ProxiesTest {

  private static final Proxies NAMED = Proxies.of("192.0.2.0/24, 2001:db8:1::/48, 127.0.0.1");

  private static String caller(Proxies proxies, String peer, String... forwarded) {
    return proxies.caller(Proxies.address(peer), List.of(forwarded)).getHostAddress();
  }

  @Test
  void whatAStrangerSaysIsNotLookedAt() {
    assertEquals("198.51.100.7", caller(NAMED, "198.51.100.7", "203.0.113.9"));
    assertEquals("192.0.2.1", caller(Proxies.NONE, "192.0.2.1", "203.0.113.9"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "203.0.113.9                            | 203.0.113.9",
        "8.8.8.8, 203.0.113.9                   | 203.0.113.9",
        "8.8.8.8, 203.0.113.9, 192.0.2.8        | 203.0.113.9",
        "8.8.8.8,203.0.113.9 ,2001:db8:1::5     | 203.0.113.9",
        "192.0.2.7, 192.0.2.8                   | 192.0.2.7",
        "203.0.113.9:4711                       | 203.0.113.9",
        "2001:db8:2::9                          | 2001:db8:2:0:0:0:0:9",
        "[2001:db8:2::9]                        | 2001:db8:2:0:0:0:0:9",
        "[2001:db8:2::9]:4711                   | 2001:db8:2:0:0:0:0:9",
        "::ffff:203.0.113.9                     | 203.0.113.9"
      })
  void ofANamedProxyTheLastStrangerInTheChainIsTheCaller(String forwarded, String caller) {
    assertEquals(caller, caller(NAMED, "192.0.2.1", forwarded));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "unknown",
        "_hidden",
        "localhost",
        "proxy.example",
        "203.0.113.9.example",
        "203.0.113.256",
        "1.2.3",
        "cafe",
        "a:b:c",
        ":",
        "",
        "[]",
        "203.0.113.9, ",
        "203.0.113.9, nonsense"
      })
  void whatCannotBeReadCountsForWhoeverSaidIt(String forwarded) {
    assertEquals("192.0.2.1", caller(NAMED, "192.0.2.1", forwarded));
  }

  @Test
  void severalHeadersAreOneChain() {
    assertEquals("203.0.113.9", caller(NAMED, "192.0.2.1", "8.8.8.8, 203.0.113.9", "192.0.2.4"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "proxy.example",
        "10.0.0.0/33",
        "10.0.0.0/-1",
        "10.0.0.0/x",
        "10.0.0.256",
        "fd00::/129",
        "10.0.0.1/8",
        "10.0.0.0/8,",
        "*"
      })
  void whatIsNoAddressAndNoBlockIsRefused(String list) {
    String told = assertThrows(IllegalArgumentException.class, () -> Proxies.of(list)).getMessage();
    assertTrue(told.startsWith("must be addresses, or blocks such as 10.0.0.0/8"), told);
  }

  @Test
  void anAddressOfTheSixthVersionCountsWithItsNetwork() {
    String one = Admission.network(Proxies.address("2001:db8:1:2:3:4:5:6"));
    assertEquals("20010db800010002", one);
    assertEquals(one, Admission.network(Proxies.address("2001:db8:1:2::1")));
    assertEquals("cb007109", Admission.network(Proxies.address("203.0.113.9")));
    assertEquals("cb007109", Admission.network(Proxies.address("::ffff:203.0.113.9")));
  }
}
