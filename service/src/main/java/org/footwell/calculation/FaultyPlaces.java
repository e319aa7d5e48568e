package org.footwell.calculation;

import java.util.List;
import java.util.stream.Stream;
import org.footwell.calculation.rule.Rule;

/**
 * What is known to be faulty when a record is held against its rules, as pointers from the outermost.
 *
 * @param here where the record stands
 * @param unread places where something is given that could not be read
 * @param all these, and those that bounds do not allow or where something is missing
 * @param unknown further places of which nothing is known for rules of a record's own: what such a rule
 *     needs is missing there, or other values may be put in
 */
record FaultyPlaces(Where here, List<String> unread, List<String> all, List<String> unknown) {

  /** The same with all places of which nothing is known. */
  FaultyPlaces forOwnRules() {
    return unknown.isEmpty()
        ? this
        : new FaultyPlaces(
            here, unread, Stream.concat(all.stream(), unknown.stream()).toList(), unknown);
  }

  /** Of a part that stands at a place, from the record. */
  FaultyPlaces in(String pointer) {
    return new FaultyPlaces(here.below(pointer.substring(1)), unread, all, unknown);
  }

  String above() {
    return here.pointer();
  }

  boolean none() {
    return all.isEmpty();
  }

  /** Those below the record, as pointers from there. */
  List<String> below() {
    String above = above();
    return all.stream()
        .filter(pointer -> pointer.startsWith(above + "/"))
        .map(pointer -> pointer.substring(above.length()))
        .toList();
  }

  /** Whether this place, from the record, is one of them. */
  boolean at(String pointer) {
    return all.contains(above() + pointer);
  }

  /** Notes one where something is missing, from the record. */
  void miss(String pointer) {
    unknown.add(above() + pointer);
  }

  /** What was given but not read is nothing in the record: here it is marked as given. */
  List<List<Rule.Place>> markUnread(List<List<Rule.Place>> places) {
    return unread.isEmpty()
        ? places
        : places.stream().map(field -> field.stream().map(this::marked).toList()).toList();
  }

  private Rule.Place marked(Rule.Place place) {
    return unread.contains(above() + place.pointer()) ? place.unread() : place;
  }
}
