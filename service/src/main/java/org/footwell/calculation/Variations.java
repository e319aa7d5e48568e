package org.footwell.calculation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Requests that differ in a few values. What they have in common is read once; with a value put in,
 * a request is the very one that would have been read with this value in its place, defaults that
 * depend on it included. For any number of threads.
 *
 * @param <Q> the record
 */
public final class Variations<Q extends Record> {

  /** A part of the request. */
  private interface Part {
    Object with(Object[] values, Faults faults);
  }

  private final Node.Group root;
  private final List<Place> open;
  private final Part whole;

  /**
   * Reads what the requests have in common.
   *
   * @param open what is put in
   * @param faults takes every fault of form of what they have in common
   */
  Variations(Node.Group root, Map<?, ?> document, List<Place> open, Faults faults) {
    this.root = root;
    this.open = open;
    this.whole = part(root, document, "", new Binder(false, faults));
  }

  /**
   * The request with these values, numbers or texts as they stand in a query.
   *
   * @throws Refused with every fault of form and bounds, if there is any of form
   */
  @SuppressWarnings("unchecked") // the root group constructs Q
  public Q with(Object... values) {
    Faults faults = new Faults();
    Object request = whole.with(values, faults);
    if (!faults.none()) {
      Constraints.check(root, request, faults);
      throw new Refused(faults);
    }
    return (Q) request;
  }

  /**
   * Adds what form, bounds and rules refuse whichever of some values are put in, elsewhere than where
   * they are put in.
   */
  public void refuseWhatNoneMends(List<Object[]> some, Faults into) {
    List<Faults> each = some.stream().map(values -> check(values, into.otherwise())).toList();
    into.addCommon(each, open.stream().map(Place::pointer).toList());
  }

  private Faults check(Object[] values, Faults faults) {
    List<String> places = open.stream().map(Place::pointer).toList();
    Constraints.checkAround(root, whole.with(values, faults), places, faults);
    return faults;
  }

  private Part part(Node node, Object given, String pointer, Binder binder) {
    for (int i = 0; i < open.size(); i++) {
      if (open.get(i).pointer().equals(pointer)) {
        return open(node, i, pointer);
      }
    }
    if (open.stream().noneMatch(place -> place.pointer().startsWith(pointer + "/"))) {
      Object common = binder.bind(node, given, pointer);
      return (values, faults) -> common;
    }
    return node instanceof Node.Group group
        ? group(group, given, pointer, binder)
        : list((Node.Repeated) node, (List<?>) given, pointer, binder);
  }

  private static Part open(Node node, int index, String pointer) {
    return (values, faults) ->
        new Binder(values[index] instanceof String, faults).bind(node, values[index], pointer);
  }

  private Part group(Node.Group group, Object given, String pointer, Binder binder) {
    if (given != null && !(given instanceof Map)) {
      binder.bind(group, given, pointer);
    }
    Map<?, ?> fields = given instanceof Map<?, ?> map ? map : Map.of();
    binder.refuseUnknown(group, fields, pointer);
    Part[] parts =
        group.members().values().stream()
            .map(
                member ->
                    part(
                        member.node(),
                        fields.get(member.name()),
                        pointer + "/" + member.name(),
                        binder))
            .toArray(Part[]::new);
    return (values, faults) -> {
      Object[] made = new Object[parts.length];
      for (int i = 0; i < parts.length; i++) {
        made[i] = parts[i].with(values, faults);
      }
      return group.construct(made);
    };
  }

  /** A list on the way to a place has that entry: otherwise there would be no such place. */
  private Part list(Node.Repeated list, List<?> given, String pointer, Binder binder) {
    if (given.size() > list.most()) {
      binder.bind(list, given, pointer);
      return (values, faults) -> null;
    }
    Part[] parts = new Part[given.size()];
    Arrays.setAll(parts, i -> part(list.element(), given.get(i), pointer + "/" + i, binder));
    return (values, faults) -> {
      List<Object> made = new ArrayList<>(parts.length);
      for (Part part : parts) {
        made.add(part.with(values, faults));
      }
      return made;
    };
  }
}
