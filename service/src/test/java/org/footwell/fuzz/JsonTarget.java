package org.footwell.fuzz;

import static org.footwell.fuzz.Refusals.requireEqual;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.footwell.acoustic.enclosure.ClosedBox;
import org.footwell.acoustic.filters.CrossoverFilters;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.acoustic.seats.SeatLevels;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.text.Reader;
import org.footwell.electrical.passive.PassiveNetwork;
import org.footwell.web.request.Answered;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Json;

/**
 * Requests in JSON of calculations that differ in what is in them. The first byte chooses one. The two
 * ways of reading agree, what is read can be written and read again, and is answered or refused.
 */
final class JsonTarget implements Target {

  private static final List<Asked<?, ?>> ALL =
      List.of(
          new Asked<>(new SoundLevel()),
          new Asked<>(new ClosedBox()),
          new Asked<>(new SeatLevels()),
          new Asked<>(new PassiveNetwork()),
          new Asked<>(new CrossoverFilters()));

  private record Asked<Q extends Record, R extends Record>(
      Calculation<Q, R> calculation, Endpoint<Q, R> endpoint) {

    private static final Engine ENGINE = new Engine();

    Asked(Calculation<Q, R> calculation) {
      this(calculation, new Endpoint<>(calculation, ENGINE, Duration.ofSeconds(10)));
    }

    void read(byte[] json) throws Exception {
      BothWays.read(calculation.card().request(), json);
      Answered<Q, R> answered = Refusals.orNull(() -> endpoint.answer(json, true, Reader.ANYONE));
      if (answered != null) {
        byte[] again = Json.bytes(answered.request());
        requireEqual(
            answer(answered),
            answer(endpoint.answer(again, true, Reader.ANYONE)),
            "asked again with what was read");
      }
    }

    private String answer(Answered<Q, R> answered) {
      return new String(endpoint.json(answered.answer(), Digits.ALL), StandardCharsets.UTF_8);
    }
  }

  @Override
  public void read(byte[] given) throws Exception {
    if (given.length > 0) {
      ALL.get((given[0] & 0xFF) % ALL.size()).read(Arrays.copyOfRange(given, 1, given.length));
    }
  }

  @Override
  public List<byte[]> seeds() {
    List<byte[]> seeds = new ArrayList<>();
    for (int i = 0; i < ALL.size(); i++) {
      String example = ALL.get(i).calculation().card().example();
      // The code of '2' is 50, so this chooses the calculation itself.
      seeds.add(((char) ('2' + i) + example).getBytes(StandardCharsets.UTF_8));
    }
    return seeds;
  }
}
