package org.footwell.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.footwell.catalogue.row.CannotRun;

/** What options say of fields. The parser of the command line would let the last of two win. */
final class Pairs {

  private Pairs() {}

  /** Each {@code FIELD=VALUE}, by field. */
  static Map<String, String> of(String option, List<String> given) throws CannotRun {
    Map<String, String> pairs = new LinkedHashMap<>();
    for (String pair : given) {
      int equals = pair.indexOf('=');
      if (equals < 1) {
        throw new CannotRun(option + " must be like qts=Q, not " + pair + ".");
      }
      String field = pair.substring(0, equals);
      if (pairs.put(field, pair.substring(equals + 1)) != null) {
        throw new CannotRun(option + " is given twice for " + field + ".");
      }
    }
    return pairs;
  }
}
