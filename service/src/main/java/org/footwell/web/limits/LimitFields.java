package org.footwell.web.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * The headers RateLimit-Policy and RateLimit, as draft-ietf-httpapi-ratelimit-headers-11 (May 2026) has
 * them: lists of items by RFC 9651, a policy's name with its parameters.
 */
final class LimitFields {

  static final String POLICY = "RateLimit-Policy";
  static final String LEFT = "RateLimit";

  private static final String CALLS = "\"calls\"";
  private static final String UNDER_WAY = "\"under-way\"";

  private final CallerRules rules;
  private final String policy;

  LimitFields(CallerRules rules) {
    this.rules = rules;
    List<String> items = new ArrayList<>();
    if (rules.countsCalls()) {
      long window = ceil(60L * rules.callsAtOnce(), rules.callsPerMinute());
      items.add(CALLS + ";q=" + rules.callsAtOnce() + ";w=" + window);
    }
    if (rules.countsUnderWay()) {
      items.add(UNDER_WAY + ";q=" + rules.underWay() + ";qu=\"concurrent-requests\"");
    }
    policy = String.join(", ", items);
  }

  String policy() {
    return policy;
  }

  /**
   * What is left.
   *
   * @param calls that may still be made
   * @param seconds until there are more, after a refusal, or as many as there can be
   * @param underWay requests that are under way
   */
  String left(long calls, long seconds, int underWay) {
    List<String> items = new ArrayList<>();
    if (rules.countsCalls()) {
      items.add(CALLS + ";r=" + Math.max(0, calls) + ";t=" + seconds);
    }
    if (rules.countsUnderWay()) {
      items.add(UNDER_WAY + ";r=" + Math.max(0, rules.underWay() - underWay));
    }
    return String.join(", ", items);
  }

  /** Whole seconds, so that nobody comes back too early. */
  static long seconds(long nanos) {
    return ceil(nanos, TimeUnit.SECONDS.toNanos(1));
  }

  private static long ceil(long part, long unit) {
    return (part + unit - 1) / unit;
  }
}
