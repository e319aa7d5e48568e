package org.footwell.calculation;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * Where the parts of a request come from. Every record and list of a document is known by itself: what
 * a request takes from it as it is needs no word.
 */
public final class Provenance {

  private final IdentityHashMap<Object, List<String>> places = new IdentityHashMap<>();

  /** Knows every part of a document. */
  public Provenance(Record document) {
    parts(document, (pointer, part) -> places.putIfAbsent(part, List.of(pointer)));
  }

  /**
   * Notes what a part was put together from.
   *
   * @param from JSON Pointers into the document: a field stands under its name in the first that has it
   */
  public <T> T made(T part, String... from) {
    places.put(part, List.of(from));
    return part;
  }

  /** Tells a rebase of the parts of a request that are known here. */
  public void tell(Record request, Rebase rebase) {
    parts(
        request,
        (pointer, part) -> {
          List<String> from = places.get(part);
          if (from != null) {
            rebase.from(pointer, from.toArray(String[]::new));
          }
        });
  }

  private static void parts(Record record, BiConsumer<String, Object> visitor) {
    within(Shape.of(record.getClass()).root(), record, "", visitor);
  }

  private static void within(
      Node node, Object value, String pointer, BiConsumer<String, Object> visitor) {
    if (value == null || node instanceof Node.Scalar) {
      return;
    }
    boolean shared = value instanceof List<?> list && list.isEmpty();
    if (!pointer.isEmpty() && !shared) {
      visitor.accept(pointer, value);
    }
    if (node instanceof Node.Repeated repeated) {
      List<?> entries = (List<?>) value;
      for (int i = 0; i < entries.size(); i++) {
        within(repeated.element(), entries.get(i), pointer + "/" + i, visitor);
      }
    } else {
      ((Node.Group) node)
          .members()
          .forEach(
              (name, member) ->
                  within(member.node(), member.of(value), pointer + "/" + name, visitor));
    }
  }
}
