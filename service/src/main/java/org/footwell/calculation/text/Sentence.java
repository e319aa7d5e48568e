package org.footwell.calculation.text;

import java.util.List;
import java.util.stream.Stream;

/**
 * What is said under a code in one language.
 *
 * @param advice what to do about it, or null
 */
record Sentence(Template text, Template advice) {

  /** The placeholders of both. */
  List<Template.Slot> slots() {
    return advice == null
        ? text.slots()
        : Stream.of(text, advice).flatMap(template -> template.slots().stream()).toList();
  }
}
