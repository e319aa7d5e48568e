package org.footwell.acoustic.alignment;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Channels and seats by their names. */
final class Roster {

  private final Map<String, Integer> channels = new LinkedHashMap<>();
  private final Map<String, Integer> seats = new LinkedHashMap<>();

  Roster(SeatDelaysRequest q) {
    for (SeatDelaysRequest.PlacedChannel channel : orNone(q.channels())) {
      channels.putIfAbsent(channel.name(), channels.size());
    }
    // Of a request that is only held against its rules not every seat need be there.
    orNone(q.seats()).stream()
        .filter(Objects::nonNull)
        .forEach(seat -> seats.putIfAbsent(seat.name(), seats.size()));
  }

  /** Place of a channel in the list, or null if there is none of that name. */
  Integer channel(String name) {
    return channels.get(name);
  }

  /** Place of a seat in the list, or null if there is none of that name. */
  Integer seat(String name) {
    return seats.get(name);
  }

  Set<String> channelNames() {
    return channels.keySet();
  }

  Set<String> seatNames() {
    return seats.keySet();
  }

  /** A list that may be absent. */
  static <T> List<T> orNone(List<T> list) {
    return list == null ? List.of() : list;
  }
}
