package org.footwell.calculation;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.footwell.calculation.rule.Rule;
import org.footwell.calculation.text.Phrase;

/**
 * The shape of a request or result record, reflected once: its columns with types, bounds and
 * defaults. Binds untyped input with every fault collected.
 *
 * @param <T> the record
 */
public final class Shape<T extends Record> {

  private static final ClassValue<Shape<?>> SHAPES =
      new ClassValue<>() {
        @Override
        protected Shape<?> computeValue(Class<?> type) {
          return new Shape<>(type);
        }
      };

  /** An index, or what stands for any. */
  private static final Pattern AN_INDEX = Pattern.compile("\\d{1,9}|\\*");

  private final Node.Group root;
  private final RowValues values;
  private final List<Column> columns;
  private final boolean flat;
  private final boolean holdsRequest;
  private final boolean holdsSeries;

  /** By the calculations and kinds of document beside which they stand. */
  private final Map<Class<?>, DeclaredRules> further = new ConcurrentHashMap<>();

  private Shape(Class<?> type) {
    this.root = Reflection.group(type);
    this.values = new RowValues(root);
    this.columns = new ArrayList<>();
    columns(root, "", 1, true, new HashSet<>(), columns);
    this.flat = flat(root, false);
    this.holdsRequest = columns.stream().anyMatch(column -> column.type() == Map.class);
    this.holdsSeries = columns.stream().anyMatch(column -> column.type() == Series.class);
  }

  @SuppressWarnings("unchecked") // one shape per class, made of that very class
  public static <T extends Record> Shape<T> of(Class<T> type) {
    return (Shape<T>) SHAPES.get(type);
  }

  /**
   * One leaf of the record.
   *
   * @param path dotted, {@code *} standing for the index in a repeated group
   * @param type Java type of the value
   * @param required whether it must be given, whatever else is
   * @param standard the value taken when it is not given, or null
   * @param most largest number of entries when the path has an index, otherwise 1
   * @param allowed what is allowed, in words
   * @param description what it means
   */
  public record Column(
      String path,
      Class<?> type,
      boolean required,
      Object standard,
      int most,
      Phrase allowed,
      String description) {}

  /**
   * One component of the record itself.
   *
   * @param description what it means
   * @param least smallest number a request may give, or null
   * @param most largest, or null
   * @param only the numbers it may be where it may be no others; else empty
   * @param form what a text must stand for by its name in the contract, or null
   */
  public record Field(
      String name,
      String description,
      BigDecimal least,
      BigDecimal most,
      List<BigDecimal> only,
      String form) {}

  Node.Group root() {
    return root;
  }

  /** The components in order of declaration. */
  public List<Field> fields() {
    return root.members().values().stream()
        .map(
            member -> {
              Bounds bounds = member.node().bounds();
              return new Field(
                  member.name(),
                  member.description(),
                  bounds.least(),
                  bounds.most(),
                  bounds.only(),
                  member.node() instanceof Node.Scalar text && text.form() != null
                      ? text.form().name()
                      : null);
            })
        .toList();
  }

  /** The rules between the components and what is below them. */
  public List<Rule> rules() {
    return root.rules().list();
  }

  /** The leaves in order of declaration. */
  public List<Column> columns() {
    return columns;
  }

  /** Dotted paths of the single values that stand in no list. */
  public List<String> singles() {
    return columns.stream()
        .filter(column -> !column.path().contains("*"))
        .filter(column -> Node.Scalar.isSingle(column.type()))
        .map(Column::path)
        .toList();
  }

  /** Names of what fits into the cells of a row: values, and lists of names or texts. */
  public List<String> cells() {
    return values.names();
  }

  /**
   * Whether every field can be written as one dotted name: no repeated group within another and no
   * long row of numbers.
   */
  public boolean flat() {
    return flat;
  }

  /** Whether it holds a request of another shape as it was sent. */
  public boolean holdsRequest() {
    return holdsRequest;
  }

  /** Whether it holds long rows of numbers: recordings, which may also come as files. */
  public boolean holdsSeries() {
    return holdsSeries;
  }

  /**
   * Makes the record straight from a text.
   *
   * @return the record, or null where anything in the text is not as it should be
   * @throws IOException if the text is not well-formed
   */
  @SuppressWarnings("unchecked") // the root group constructs T
  public T read(Tokens from) throws IOException {
    return (T) StraightReader.read(root, from);
  }

  /**
   * Makes the record from untyped maps, lists, texts, numbers and truth values.
   *
   * @param given what the caller sent
   * @param cells whether every value came as text, as in a query or a CSV row
   * @param faults takes every fault of form; bounds are checked later, by the {@link Engine}
   * @return the record, with nothing where something was faulty
   */
  @SuppressWarnings("unchecked") // the root group constructs T
  public T bind(Object given, boolean cells, Faults faults) {
    return (T) new Binder(cells, faults).bind(root, given, "");
  }

  /** A tree of texts, as a query makes one, with the numbers, truth values and lists that JSON would have. */
  public Object typed(Object cells) {
    return CellTree.typed(root, cells);
  }

  /**
   * Prepares to read the record from rows.
   *
   * @param paths for each column of the rows the parts of its dotted path, an index from 0 in a
   *     repeated group, or null where the column is not read
   */
  public RowReader<T> rows(List<List<String>> paths) {
    return new RowReader<>(root, paths);
  }

  /**
   * The place of a single value in a request.
   *
   * @param path dotted or a JSON Pointer; entries of lists by index, or by id or name
   * @param document the request as it was sent
   * @throws UnknownPath if it leads to none
   */
  public Place place(String path, Map<?, ?> document) throws UnknownPath {
    return PathFinder.inRequest(root, path, document);
  }

  /** The same in a result, whose lists may be of any length. */
  public Place place(String path) throws UnknownPath {
    return PathFinder.inResult(root, path);
  }

  /**
   * Dotted paths to the numbers that a request states, entries of lists by what names them or else by
   * their index.
   *
   * @param document the request as it was sent
   */
  public List<String> numbers(Map<?, ?> document) {
    return PathFinder.numbers(root, document);
  }

  /** Reads requests that differ in the values at some places. */
  public Variations<T> variations(Map<?, ?> document, List<Place> open, Faults faults) {
    return new Variations<>(root, document, open, faults);
  }

  /** Whether the record can have a value at this dotted path, an index standing for any. */
  public boolean has(String path) {
    return leadsTo("/" + path.replace('.', '/'));
  }

  /** Those that stand beside a calculation asked by this record, and hold for it alone. */
  public List<Rule> rules(Class<?> declaring) {
    return rulesOf(declaring).list();
  }

  /** Adds a fault for everything about a record that its bounds and rules do not allow. */
  void check(Object record, Faults faults) {
    Constraints.check(root, record, faults);
  }

  /** The same with the rules that stand beside a calculation asked by it, or a kind of document. */
  void check(Object record, Class<?> declaring, Faults faults) {
    Constraints.check(root, record, faults, rulesOf(declaring));
  }

  /** Holds a record whose own bounds and rules are kept against those further rules alone. */
  void hold(Object record, Class<?> declaring, Faults faults) {
    rulesOf(declaring)
        .check(
            record,
            new FaultyPlaces(Where.OUTERMOST, List.of(), List.of(), new ArrayList<>()),
            faults);
  }

  /** The rules that stand beside a calculation asked by this record, or a kind of document. */
  private DeclaredRules rulesOf(Class<?> declaring) {
    DeclaredRules known = further.get(declaring);
    return known != null
        ? known
        : further.computeIfAbsent(declaring, one -> new DeclaredRules(one, root.members()));
  }

  /** Whether the record can have something at a JSON Pointer, whatever the index in a list. */
  boolean leadsTo(String pointer) {
    return pointer.isEmpty() || leadsTo(root, pointer.substring(1).split("/", -1));
  }

  /** As much of a way as there is, from a place in the record that exists. */
  String deepest(String place, String way) {
    String found = place;
    if (way.isEmpty()) {
      return found;
    }
    for (String part : way.substring(1).split("/", -1)) {
      String next = found + "/" + part;
      if (!leadsTo(next)) {
        break;
      }
      found = next;
    }
    return found;
  }

  private static boolean leadsTo(Node from, String... parts) {
    Node here = from;
    for (String part : parts) {
      boolean index = AN_INDEX.matcher(part).matches();
      if (index && here instanceof Node.Repeated list) {
        here = list.element();
      } else if (index && here instanceof Node.Scalar row && row.type() == Series.class) {
        return true;
      } else if (here instanceof Node.Scalar document && document.type() == Map.class) {
        return true;
      } else if (here instanceof Node.Group group && group.members().containsKey(part)) {
        here = group.members().get(part).node();
      } else {
        return false;
      }
    }
    return true;
  }

  /** The single values of a record; adds a fault for each number in it that is not finite. */
  Object[] values(Record record, Faults faults) {
    return values.of(record, faults);
  }

  /** Adds a fault for the first number of the record that is not finite. */
  void requireFinite(Object record, Faults faults) {
    requireFinite(root, record, faults);
  }

  private static void requireFinite(Node.Group group, Object record, Faults faults) {
    for (Node.Member member : group.numeric()) {
      if (member.isNumber()) {
        requireFinite(member, member.number(record), faults);
        continue;
      }
      Object value = member.of(record);
      if (value instanceof Double number) {
        requireFinite(member, number, faults);
      } else if (value != null && member.node() instanceof Node.Group inner) {
        requireFinite(inner, value, faults);
      } else if (value instanceof List<?> list && member.node() instanceof Node.Repeated repeated) {
        requireFinite(member, repeated.element(), list, faults);
      }
    }
  }

  static void requireFinite(Node.Member member, Node element, List<?> list, Faults faults) {
    for (Object entry : list) {
      if (element instanceof Node.Group inner) {
        requireFinite(inner, entry, faults);
      } else if (entry instanceof Double number) {
        requireFinite(member, number, faults);
      }
    }
  }

  static void requireFinite(Node.Member member, double number, Faults faults) {
    if (!Double.isFinite(number)) {
      faults
          .add(CoreFault.NOT_FINITE)
          .field("quantity", member.name())
          .with("how", Phrase.nothing());
    }
  }

  /**
   * Adds the leaves of a group.
   *
   * @param around whether all that holds the group must be given
   * @param needed dotted paths that the rules around say must be given
   */
  private static void columns(
      Node.Group group,
      String prefix,
      int most,
      boolean around,
      Set<String> needed,
      List<Column> into) {
    group.rules().needed().forEach(path -> needed.add(prefix + path));
    for (Node.Member member : group.members().values()) {
      String path = prefix + member.name();
      boolean required = around && (member.required() || needed.contains(path));
      if (member.node() instanceof Node.Repeated repeated) {
        column(member, repeated.element(), path + ".*", repeated.most(), false, needed, into);
      } else {
        column(member, member.node(), path, most, required, needed, into);
      }
    }
  }

  private static void column(
      Node.Member member,
      Node node,
      String path,
      int most,
      boolean required,
      Set<String> needed,
      List<Column> into) {
    if (node instanceof Node.Group inner) {
      columns(inner, path + ".", most, required, needed, into);
    } else {
      into.add(
          new Column(
              path,
              ((Node.Scalar) node).type(),
              required,
              member.standard(),
              most,
              node.allowed(),
              member.description()));
    }
  }

  private static boolean flat(Node node, boolean repeated) {
    if (node instanceof Node.Group group) {
      return group.members().values().stream().allMatch(m -> flat(m.node(), repeated));
    }
    if (node instanceof Node.Repeated list) {
      return list.element() instanceof Node.Scalar || (!repeated && flat(list.element(), true));
    }
    return ((Node.Scalar) node).type() != Series.class;
  }
}
