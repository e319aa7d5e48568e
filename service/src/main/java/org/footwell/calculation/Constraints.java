package org.footwell.calculation;

import java.util.ArrayList;
import java.util.List;

/** Checks a record against bounds and rules of its shape and puts what breaks them into words. */
final class Constraints {

  private final Faults faults;

  /** Places where something is given that could not be read. */
  private final List<String> unread;

  /** These, and those that are found faulty here. */
  private final List<String> faulty;

  /** Places of which nothing is known for rules of a record's own. */
  private final List<String> unknown;

  private Constraints(List<String> open, Faults faults) {
    this.unknown = new ArrayList<>(open);
    this.faults = faults;
    this.unread = faults.unread();
    this.faulty = new ArrayList<>(unread);
  }

  /**
   * Adds a fault for everything about a record that its shape does not allow, save where a fault is
   * known already.
   *
   * @param further rules that it is held against as a whole
   */
  static void check(Node.Group group, Object record, Faults faults, DeclaredRules... further) {
    Constraints constraints = new Constraints(List.of(), faults);
    constraints.group(group, record, Where.OUTERMOST);
    for (DeclaredRules rules : further) {
      constraints.hold(rules, record, Where.OUTERMOST);
    }
  }

  /** The same where other values may be put in at some places: of them rules of a record's own know nothing. */
  static void checkAround(Node.Group group, Object record, List<String> open, Faults faults) {
    new Constraints(open, faults).group(group, record, Where.OUTERMOST);
  }

  private void group(Node.Group group, Object record, Where here) {
    Object[] values = group.access().all(record);
    for (int i = 0; i < values.length; i++) {
      Node.Member member = group.inOrder().get(i);
      if (values[i] != null || member.required()) {
        value(member.node(), member.required(), values[i], here, member.name());
      }
    }
    hold(group.rules(), record, here);
  }

  private void hold(DeclaredRules rules, Object record, Where here) {
    if (!faults.full()) {
      rules.check(record, new FaultyPlaces(here, unread, faulty, unknown), faults);
    }
  }

  private void value(Node node, boolean required, Object value, Where above, Object name) {
    if (value == null) {
      if (required) {
        add(CoreFault.REQUIRED, node, above.below(name).pointer());
      }
      return;
    }
    if (node instanceof Node.Group group) {
      group(group, value, above.below(name));
      return;
    }
    if (!node.bounds().permit().test(value)) {
      Remark remark = add(CoreFault.NOT_ALLOWED, node, above.below(name).pointer());
      if (remark != null && value instanceof List<?> list) {
        remark.givenEntries(list.size());
      } else if (remark != null) {
        remark.given(value);
      }
    } else if (node instanceof Node.Scalar text && text.form() != null) {
      meaning(text.form(), (String) value, above.below(name));
    }
    if (node instanceof Node.Repeated repeated) {
      List<?> entries = (List<?>) value;
      Where here = above.below(name);
      for (int i = 0; i < entries.size(); i++) {
        value(repeated.element(), repeated.elementRequired(), entries.get(i), here, i);
      }
    }
  }

  private void meaning(TextForm form, String text, Where where) {
    if (!form.holds(text) && !faults.full()) {
      String pointer = where.pointer();
      faulty.add(pointer);
      faults.add(form.fault()).at(pointer).given(text);
    }
  }

  /** Adds a fault; below a place that is faulty itself it is not told, and yet no rule reads it. */
  private Remark add(CoreFault code, Node node, String pointer) {
    if (faults.full()) {
      return null;
    }
    boolean told = faulty.stream().anyMatch(known -> covers(known, pointer));
    faulty.add(pointer);
    return told ? null : faults.add(code).at(pointer).allowed(node.bounds().allowed());
  }

  /** Whether a faulty place is this one or holds it. */
  static boolean covers(String known, String pointer) {
    return pointer.equals(known) || pointer.startsWith(known + "/");
  }
}
