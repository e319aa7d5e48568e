package org.footwell.calculation;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.text.Form;
import org.footwell.calculation.text.Phrase;

/** A part of a record's shape: a single value, a record, or a list. */
sealed interface Node {

  /** What may stand here. */
  Bounds bounds();

  /** The same in words that follow "must be". */
  default Phrase allowed() {
    return bounds().allowed();
  }

  /**
   * A number, a text, a truth value or one of a set of names.
   *
   * @param constants the set by its names; empty for the others
   * @param form what a text must stand for, or null
   */
  record Scalar(Class<?> type, Bounds bounds, Map<String, Object> constants, TextForm form)
      implements Node {

    /** Whether it is one value: no long row of numbers and no document within the record. */
    boolean isSingle() {
      return isSingle(type);
    }

    static boolean isSingle(Class<?> type) {
      return type != Series.class && type != Map.class;
    }

    boolean isNumber() {
      return isWhole() || isFractional() || type == BigDecimal.class;
    }

    boolean isFractional() {
      return type == Double.class || type == double.class;
    }

    boolean isWhole() {
      return type == Integer.class || type == int.class;
    }
  }

  /**
   * A record, by its components' snake_case names in order of declaration.
   *
   * @param access makes and reads it
   * @param inOrder the same, to go through them often
   * @param numeric those components that are fractional numbers or may have such in them
   * @param rules between the components and what is below them
   */
  record Group(
      Class<?> type,
      RecordAccess access,
      Map<String, Member> members,
      List<Member> inOrder,
      List<Member> numeric,
      DeclaredRules rules)
      implements Node {

    private static final Bounds ANY = Bounds.any(Phrase.of(Form.GROUP));

    Group(Class<?> type, RecordAccess access, Map<String, Member> members) {
      this(
          type,
          access,
          members,
          List.copyOf(members.values()),
          members.values().stream().filter(member -> isNumeric(member.node())).toList(),
          new DeclaredRules(type, members));
    }

    /** Whether it is a fractional number or may have such in it. */
    static boolean isNumeric(Node node) {
      if (node instanceof Repeated list) {
        return isNumeric(list.element());
      }
      return node instanceof Group group
          ? !group.numeric().isEmpty()
          : ((Scalar) node).isFractional();
    }

    /** Builds the record from one value per component. */
    Object construct(Object[] values) {
      return access.make(values);
    }

    @Override
    public Bounds bounds() {
      return ANY;
    }
  }

  /**
   * A list with its largest size.
   *
   * @param elementRequired whether an entry must not be nothing
   */
  record Repeated(Node element, boolean elementRequired, int most, Bounds bounds) implements Node {}

  /**
   * A component of a record.
   *
   * @param inUnitOf the component beside it that names the quantity it is one of, or null
   * @param read how it is read from a record
   */
  record Member(
      String name,
      String inUnitOf,
      Node node,
      boolean required,
      Object standard,
      String description,
      Reading read) {

    boolean isNumber() {
      return read.isNumber();
    }

    double number(Object group) {
      return read.access().number(group, read.at());
    }

    Object of(Object group) {
      return read.access().get(group, read.at());
    }
  }

  /**
   * How a component is read.
   *
   * @param at which of the record's it is
   * @param isNumber whether it is a plain double, which is read without a box
   */
  record Reading(RecordAccess access, int at, boolean isNumber) {}
}
