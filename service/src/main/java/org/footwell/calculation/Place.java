package org.footwell.calculation;

import java.math.BigDecimal;
import java.util.List;

/** One single value of a record: where it stands, what it may be, and how it is read. */
public final class Place {

  /** One step down from a record or a list. */
  interface Step {

    /** What is there, or null. */
    Object from(Object here);
  }

  private final String pointer;
  private final Step[] steps;
  private final Node.Scalar node;
  private final Node.Member field;

  Place(String pointer, List<Step> steps, Node.Scalar node, Node.Member field) {
    this.pointer = pointer;
    this.steps = steps.toArray(Step[]::new);
    this.node = node;
    this.field = field;
  }

  /** Where it stands, as a JSON Pointer; an entry of a result may be named there. */
  public String pointer() {
    return pointer;
  }

  /** The same as a dotted path. */
  public String path() {
    return PathFinder.dotted(pointer);
  }

  /** The field it is, or of which it is an entry. */
  public String name() {
    return field.name();
  }

  /** What the field means. */
  public String description() {
    return field.description();
  }

  public boolean isNumber() {
    return node.isNumber();
  }

  /** Whether it is a whole number. */
  public boolean isWhole() {
    return node.isWhole();
  }

  /** Whether it is a number with any decimals: what can be measured, no count and no money. */
  public boolean isFractional() {
    return node.isFractional();
  }

  /** Smallest number a request may give, included, or null. */
  public BigDecimal least() {
    return node.bounds().least();
  }

  /** Largest, included, or null. */
  public BigDecimal most() {
    return node.bounds().most();
  }

  /** The numbers it may be where it may be no others; else empty. */
  public List<BigDecimal> only() {
    return node.bounds().only();
  }

  /** The value in a record, or null where there is none. */
  public Object of(Record record) {
    Object here = record;
    for (Step step : steps) {
      if (here == null) {
        return null;
      }
      here = step.from(here);
    }
    return here;
  }
}
