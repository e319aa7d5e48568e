package org.footwell.electrical.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.footwell.electrical.amplifier.SineSource.Delivery;
import org.footwell.electrical.amplifier.StatedAmplifier;
import org.footwell.electrical.load.Solved.Share;
import org.footwell.electrical.load.WiringOptionsResult.CoilPower;
import org.footwell.electrical.load.WiringOptionsResult.Option;

/**
 * A network that the channel accepts.
 *
 * @param wiring its coils stand for their kind and have no names yet
 * @param delivery clean power into it, or null without an amplifier
 */
record Candidate(Solved wiring, Evenness evenness, Delivery delivery, Rank rank) {

  static final Comparator<Candidate> BEST_FIRST =
      Comparator.comparing(Candidate::rank, Rank.BEST_FIRST);

  /** The most even first, whatever power it gets. */
  static final Comparator<Candidate> EVENEST_FIRST =
      Comparator.comparing(Candidate::rank, Comparator.comparingLong(Rank::evenness).reversed());

  /**
   * A network with its sharing and its power.
   *
   * @param amplifier or null
   */
  static Candidate of(Solved wiring, StatedAmplifier amplifier) {
    Evenness evenness = Evenness.ofCoils(wiring.shares());
    Delivery delivery = amplifier == null ? null : amplifier.into(wiring.ohm());
    Double power = delivery == null ? null : (Double) delivery.powerW();
    return new Candidate(wiring, evenness, delivery, Rank.of(wiring, evenness, power));
  }

  double loadOhm() {
    return wiring.ohm();
  }

  /** Whether it gets more power than another one, beyond what is lost in the last digits. */
  boolean strongerThan(Candidate other) {
    return rank.strength() > other.rank.strength();
  }

  /** The network with named coils, as the caller meets it. */
  Option option(CoilKinds kinds) {
    Network<Coil> named = kinds.named(wiring);
    List<Coil> coils = named.coils();
    List<Share> shares = wiring.shares();
    List<CoilPower> powers = new ArrayList<>();
    for (int i = 0; i < coils.size(); i++) {
      Share share = shares.get(i);
      powers.add(
          new CoilPower(
              coils.get(i).name().isEmpty() ? "coil " + (i + 1) : coils.get(i).name(),
              coils.get(i).ratedOhm(),
              share.power(),
              share.voltage(),
              delivery == null ? null : (Double) (share.power() * delivery.powerW())));
    }
    return new Option(
        named.text(CoilKinds::written),
        loadOhm(),
        evenness.even(),
        evenness.ratio(),
        delivery == null ? null : (Double) delivery.powerW(),
        delivery == null ? null : (Double) delivery.lowW(),
        delivery == null ? null : (Double) delivery.highW(),
        powers);
  }
}
