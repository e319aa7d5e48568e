package org.footwell.contract;

import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import java.util.Arrays;
import org.footwell.calculation.text.Names;

/** Constants of enums become JSON names by the one rule of the house. */
final class DeclaredConstants extends JacksonAnnotationIntrospector {

  private static final long serialVersionUID = 1L;

  @Override
  public String[] findEnumValues(
      MapperConfig<?> config, AnnotatedClass type, Enum<?>[] constants, String[] names) {
    return named(constants, names);
  }

  /** A reader of annotations that is older than the mapper asks in this way. */
  @Override
  @Deprecated
  public String[] findEnumValues(Class<?> type, Enum<?>[] constants, String[] names) {
    return named(constants, names);
  }

  private static String[] named(Enum<?>[] constants, String[] names) {
    Arrays.setAll(names, i -> Names.of(constants[i]));
    return names;
  }
}
