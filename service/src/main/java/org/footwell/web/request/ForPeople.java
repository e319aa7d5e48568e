package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.footwell.calculation.Called;
import org.footwell.calculation.InUnitOf;
import org.footwell.calculation.Shape;
import org.footwell.calculation.UnknownPath;
import org.footwell.calculation.text.Names;
import org.footwell.web.request.JsonForm.Component;

/**
 * An answer on its way to a page of text: numbers that are copied into a device become texts, which no page
 * rounds, those of whatever quantity the request names are written with its unit, constants become the words
 * for them, and fields have the names they are called by.
 */
final class ForPeople extends RecordWriter {

  private static final String CALCULATION = "calculation";
  private static final String TITLE = "title";

  private final Record request;
  private final Labels labels;
  private final TextCell figures;

  private ForPeople(JsonGenerator out, Record request, Labels labels, TextCell figures) {
    super(out, Digits.ALL);
    this.request = request;
    this.labels = labels;
    this.figures = figures;
  }

  /**
   * An answer with the words of a language in it.
   *
   * @param figures writes the numbers of which the request says what they are
   */
  static JsonNode tree(Answered<?, ?> answered, Labels labels, TextCell figures) {
    JsonNode tree =
        Trees.of(
            out ->
                new ForPeople(out, answered.request(), labels, figures).value(answered.answer()));
    for (JsonNode group : tree.findParents(TITLE)) {
      translateTitle((ObjectNode) group, labels);
    }
    return tree;
  }

  /** Where a calculation is named, its title stands beside its id. */
  private static void translateTitle(ObjectNode group, Labels labels) {
    if (group.has(CALCULATION)) {
      String title = group.get(TITLE).asText();
      group.put(TITLE, labels.title(group.get(CALCULATION).asText(), title));
    }
  }

  @Override
  protected void name(Component component) throws IOException {
    Called called = component.mark(Called.class);
    if (called == null) {
      super.name(component);
    } else {
      out.writeFieldName(called.value());
    }
  }

  @Override
  protected void constant(Enum<?> constant) throws IOException {
    out.writeString(labels.value(Names.of(constant)));
  }

  @Override
  protected void number(Component of, double number) throws IOException {
    InUnitOf field = of == null ? null : of.mark(InUnitOf.class);
    if (field != null) {
      out.writeString(figures.figure(quantity(field.value()), DoubleNode.valueOf(number)));
    } else if (of != null && of.allDigits()) {
      out.writeString(Double.toString(number));
    } else {
      super.number(of, number);
    }
  }

  /** Path of the quantity that a field of the request names. */
  private String quantity(String field) {
    try {
      return (String) Shape.of(request.getClass()).place(field).of(request);
    } catch (UnknownPath wrong) {
      throw new IllegalStateException(request + " has no " + field, wrong);
    }
  }
}
