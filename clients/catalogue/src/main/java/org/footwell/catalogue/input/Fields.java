package org.footwell.catalogue.input;

import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.introspect.BeanPropertyDefinition;
import java.util.Map;
import java.util.TreeMap;

/** The fields of a request of the contract, by dotted name, and which of them take text. */
final class Fields {

  private final Map<String, Boolean> text = new TreeMap<>();
  private final ObjectMapper mapper;
  private final Package model;

  /**
   * Reads the fields of a type.
   *
   * @param request a type generated from the contract
   */
  Fields(ObjectMapper mapper, Class<?> request) {
    this.mapper = mapper;
    this.model = request.getPackage();
    add("", mapper.constructType(request));
  }

  private void add(String prefix, JavaType type) {
    for (BeanPropertyDefinition property :
        mapper.getSerializationConfig().introspect(type).findProperties()) {
      JavaType of = property.getPrimaryType();
      if (of.getRawClass().getPackage() == model && !of.isEnumType()) {
        add(prefix + property.getName() + ".", of);
      } else {
        text.put(prefix + property.getName(), of.isEnumType() || of.hasRawClass(String.class));
      }
    }
  }

  boolean has(String name) {
    return text.containsKey(name);
  }

  boolean takesText(String name) {
    return text.get(name);
  }

  String names() {
    return String.join(", ", text.keySet());
  }
}
