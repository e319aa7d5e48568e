package org.footwell.web.request;

import org.footwell.calculation.text.Words;

/** Words in the sentences about addresses, headers and tables. */
public enum WebWords implements Words {
  FIGURE_NAME,
  TEXT_FOR_A_FIELD,
  ONLY_WITH,
  VALUE_OR_GROUP,
  INDEX_BELOW,
  COLUMN_OF_THIS_NAME,
  SEVERAL_FAULTS,
  MANY_FAULTS,
  AT_LINE,
  SAME_KIND
}
