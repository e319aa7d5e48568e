package org.footwell.web.limits;

import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Arrays;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.footwell.calculation.text.Phrase;
import org.footwell.web.request.Exchange;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;

/**
 * Lets requests in: with a key where one is wanted, and no more than their caller may make. Whoever has
 * a key counts by its name, anybody else by their address. OPTIONS is asked before a call, without a
 * key, by browsers and spreadsheets, and counts for nothing.
 */
public final class Admission {

  /** How long the service works for a call; a request that takes longer counts for more. */
  public static final long CALL_MS = 20;

  /** RFC 6750, section 2.1. */
  private static final Pattern BEARER =
      Pattern.compile("(?i:bearer) +([A-Za-z0-9._~+/-]+=*) *", Pattern.DOTALL);

  private static final int NET_BYTES = 8;

  private static final String TURN = Turn.class.getName();

  private final CallerRules rules;
  private final LongSupplier nanos;
  private final LimitFields fields;
  private final Callers callers;

  /** A request that was let in. */
  private record Turn(Caller caller, long begun) {}

  /**
   * An admission.
   *
   * @param nanos the time, as {@link System#nanoTime}
   */
  public Admission(CallerRules rules, LongSupplier nanos) {
    this.rules = rules;
    this.nanos = nanos;
    this.fields = new LimitFields(rules);
    this.callers = new Callers(rules, clock(nanos));
  }

  static TimeMeter clock(LongSupplier nanos) {
    return new TimeMeter() {
      @Override
      public long currentTimeNanos() {
        return nanos.getAsLong();
      }

      @Override
      public boolean isWallClockBased() {
        return false;
      }
    };
  }

  /** Lets a request in. */
  public void enter(Context ctx) {
    if (ctx.method().equals(HandlerType.OPTIONS)) {
      return;
    }
    KeyRing keys = rules.keys().current();
    Optional<String> given = bearer(ctx);
    Optional<String> name = given.flatMap(keys::nameOf);
    Caller caller = callers.of(name.map("key "::concat).orElseGet(() -> network(address(ctx))));
    count(ctx, caller);
    if (!keys.isEmpty()) {
      ctx.res().addHeader("Vary", "Authorization");
      if (name.isEmpty()) {
        throw unknown(ctx, given.isPresent());
      }
    }
    if (!caller.begin()) {
      ctx.res().setHeader("Retry-After", "1");
      throw ProblemException.of(
          ProblemType.TOO_MANY_CALLS,
          Phrase.of(ProblemWords.UNDER_WAY).with("most", rules.underWay()));
    }
    ctx.req().setAttribute(TURN, new Turn(caller, nanos.getAsLong()));
    Exchange.onceWorked(ctx, () -> leave(ctx));
  }

  /** Ends what was let in, once: only now is it known how much work it was. */
  public void leave(Context ctx) {
    if (ctx.req().getAttribute(TURN) instanceof Turn turn) {
      ctx.req().removeAttribute(TURN);
      long worked = nanos.getAsLong() - turn.begun() - Exchange.waited(ctx);
      turn.caller().end(Math.max(0, worked) / TimeUnit.MILLISECONDS.toNanos(CALL_MS));
    }
  }

  private void count(Context ctx, Caller caller) {
    if (fields.policy().isEmpty()) {
      return;
    }
    ConsumptionProbe calls = rules.countsCalls() ? caller.call() : ConsumptionProbe.consumed(0, 0);
    boolean allowed = calls.isConsumed();
    long seconds =
        LimitFields.seconds(
            allowed ? calls.getNanosToWaitForReset() : calls.getNanosToWaitForRefill());
    ctx.res().setHeader(LimitFields.POLICY, fields.policy());
    ctx.res()
        .setHeader(
            LimitFields.LEFT,
            fields.left(calls.getRemainingTokens(), seconds, caller.underWay() + 1));
    if (!allowed) {
      ctx.res().setHeader("Retry-After", Long.toString(seconds));
      throw ProblemException.of(
          ProblemType.TOO_MANY_CALLS,
          Phrase.of(ProblemWords.TOO_MANY_CALLS)
              .with("most", rules.callsPerMinute())
              .with("seconds", seconds));
    }
  }

  private static Optional<String> bearer(Context ctx) {
    return Optional.ofNullable(ctx.header("Authorization"))
        .map(BEARER::matcher)
        .filter(Matcher::matches)
        .map(bearer -> bearer.group(1));
  }

  /** RFC 6750, section 3: what was wrong is said only to who has sent a key. */
  private static ProblemException unknown(Context ctx, boolean given) {
    String challenge = "Bearer realm=\"footwell\"";
    ctx.res()
        .setHeader("WWW-Authenticate", given ? challenge + ", error=\"invalid_token\"" : challenge);
    return ProblemException.of(
        ProblemType.KEY_NEEDED, given ? ProblemWords.WRONG_KEY : ProblemWords.NO_KEY);
  }

  private InetAddress address(Context ctx) {
    InetSocketAddress peer =
        (InetSocketAddress)
            ServletContextRequest.getServletContextRequest(ctx.req())
                .getConnectionMetaData()
                .getRemoteSocketAddress();
    List<String> forwarded = Collections.list(ctx.req().getHeaders("X-Forwarded-For"));
    return rules.proxies().caller(peer.getAddress(), forwarded);
  }

  /** An address, of IPv6 the 64 bits that one customer of a provider has to itself (RFC 6177). */
  static String network(InetAddress address) {
    byte[] bytes = address.getAddress();
    return HexFormat.of()
        .formatHex(address instanceof Inet6Address ? Arrays.copyOf(bytes, NET_BYTES) : bytes);
  }
}
