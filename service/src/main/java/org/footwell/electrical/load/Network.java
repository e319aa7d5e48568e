package org.footwell.electrical.load;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A network of coils in series and in parallel.
 *
 * <p>Series and parallel groups alternate on the way down: {@link #series} and {@link #parallel}
 * see to it, so that the same wiring is the same tree up to the order of its parts.
 *
 * @param <C> what stands for a coil
 */
public sealed interface Network<C> {

  /** Works the network out from the coils upwards. */
  <T> T fold(
      Function<? super C, ? extends T> coil,
      Function<List<T>, ? extends T> series,
      Function<List<T>, ? extends T> parallel);

  /** A single coil. */
  record Leaf<C>(C coil) implements Network<C> {
    @Override
    public <T> T fold(
        Function<? super C, ? extends T> coilOf,
        Function<List<T>, ? extends T> series,
        Function<List<T>, ? extends T> parallel) {
      return coilOf.apply(coil);
    }
  }

  /** One after another; made by {@link #series}. */
  record Series<C>(List<Network<C>> parts) implements Network<C> {
    @Override
    public <T> T fold(
        Function<? super C, ? extends T> coil,
        Function<List<T>, ? extends T> series,
        Function<List<T>, ? extends T> parallel) {
      return series.apply(folded(parts, coil, series, parallel));
    }
  }

  /** Side by side; made by {@link #parallel}. */
  record Parallel<C>(List<Network<C>> parts) implements Network<C> {
    @Override
    public <T> T fold(
        Function<? super C, ? extends T> coil,
        Function<List<T>, ? extends T> series,
        Function<List<T>, ? extends T> parallel) {
      return parallel.apply(folded(parts, coil, series, parallel));
    }
  }

  private static <C, T> List<T> folded(
      List<Network<C>> parts,
      Function<? super C, ? extends T> coil,
      Function<List<T>, ? extends T> series,
      Function<List<T>, ? extends T> parallel) {
    return parts.stream().<T>map(part -> part.fold(coil, series, parallel)).toList();
  }

  static <C> Network<C> leaf(C coil) {
    return new Leaf<>(coil);
  }

  /** The parts in series, at least one; groups in series among them dissolve in the new one. */
  static <C> Network<C> series(List<Network<C>> parts) {
    List<Network<C>> flat =
        parts.stream()
            .flatMap(part -> part instanceof Series<C> s ? s.parts().stream() : Stream.of(part))
            .toList();
    return flat.size() == 1 ? flat.get(0) : new Series<>(flat);
  }

  /** The parts in parallel, at least one; groups in parallel among them dissolve in the new one. */
  static <C> Network<C> parallel(List<Network<C>> parts) {
    List<Network<C>> flat =
        parts.stream()
            .flatMap(part -> part instanceof Parallel<C> p ? p.parts().stream() : Stream.of(part))
            .toList();
    return flat.size() == 1 ? flat.get(0) : new Parallel<>(flat);
  }

  /** The coils from left to right. */
  default List<C> coils() {
    return this.<List<C>>fold(List::of, Network::joined, Network::joined);
  }

  private static <C> List<C> joined(List<List<C>> lists) {
    return lists.stream().flatMap(List::stream).toList();
  }

  /**
   * What still carries current when all other coils are open: an open part leaves a parallel group,
   * but interrupts a series group.
   */
  default Optional<Network<C>> only(Predicate<? super C> connected) {
    return this.<Optional<Network<C>>>fold(
        coil -> connected.test(coil) ? Optional.of(leaf(coil)) : Optional.empty(),
        parts ->
            parts.stream().allMatch(Optional::isPresent)
                ? Optional.of(series(present(parts)))
                : Optional.empty(),
        parts ->
            parts.stream().anyMatch(Optional::isPresent)
                ? Optional.of(parallel(present(parts)))
                : Optional.empty());
  }

  private static <C> List<Network<C>> present(List<Optional<Network<C>>> parts) {
    return parts.stream().flatMap(Optional::stream).toList();
  }

  /** The network in circuit notation, which {@link NetworkParser} reads back as the same tree. */
  default String text(Function<? super C, String> name) {
    return fold(
            coil -> new Written(name.apply(coil), false),
            parts -> new Written(between(" + ", parts.stream().map(Written::text)), true),
            parts -> new Written(between(" || ", parts.stream().map(Written::inParallel)), false))
        .text();
  }

  private static String between(String operator, Stream<String> parts) {
    return String.join(operator, parts.toList());
  }

  /** A part in circuit notation. Parallel binds tighter, so only series needs parentheses. */
  record Written(String text, boolean series) {
    String inParallel() {
      return series ? "(" + text + ")" : text;
    }
  }
}
