package org.footwell.client;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.StringJoiner;

/** Parameters by their names in the contract; what is not given stays away. */
abstract class Query {

  private final Map<String, String> given = new LinkedHashMap<>();

  /** Takes a value, or several that carry their own names. */
  final void put(String name, Object value) {
    if (value instanceof Map<?, ?> named) {
      named.forEach((own, one) -> put((String) own, one));
    } else if (value != null) {
      given.put(name, ApiClient.valueToString(value));
    }
  }

  @Override
  public final String toString() {
    StringJoiner query = new StringJoiner("&", "?", "").setEmptyValue("");
    given.forEach(
        (name, value) -> query.add(ApiClient.urlEncode(name) + "=" + ApiClient.urlEncode(value)));
    return query.toString();
  }
}
