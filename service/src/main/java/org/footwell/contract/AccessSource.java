package org.footwell.contract;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.footwell.calculation.RecordAccess;

/** The source of the class that makes and reads one record. */
final class AccessSource {

  private static final Map<Class<?>, Class<?>> BOXES =
      Map.of(double.class, Double.class, int.class, Integer.class, boolean.class, Boolean.class);

  private AccessSource() {}

  static String of(Class<?> record) {
    String name = RecordAccess.name(record);
    return """
        package %s;

        /** Written by the build. */
        public final class %s extends %s {

          @Override
          public Object make(Object[] components) {
            return new %s(%s);
          }

          @Override
          public Object get(Object of, int component) {
        %s  }

          @Override
          public Object[] all(Object of) {
            %s record = (%s) of;
            return new Object[] {%s};
          }

          @Override
          public double number(Object of, int component) {
        %s  }
        }
        """
        .formatted(
            record.getPackageName(),
            name.substring(record.getPackageName().length() + 1),
            RecordAccess.class.getName(),
            record.getCanonicalName(),
            given(record.getRecordComponents()),
            reading(record, any -> true),
            record.getCanonicalName(),
            record.getCanonicalName(),
            read(record.getRecordComponents()),
            reading(record, component -> component.getType() == double.class));
  }

  private static String given(RecordComponent[] components) {
    return IntStream.range(0, components.length)
        .mapToObj(i -> "(" + box(components[i].getType()) + ") components[" + i + "]")
        .collect(Collectors.joining(", "));
  }

  private static String read(RecordComponent[] components) {
    return Arrays.stream(components)
        .map(component -> "record." + component.getName() + "()")
        .collect(Collectors.joining(", "));
  }

  private static String box(Class<?> type) {
    return BOXES.getOrDefault(type, type).getCanonicalName();
  }

  /** What reads those of the components that can be asked for. */
  private static String reading(Class<?> record, Predicate<RecordComponent> asked) {
    RecordComponent[] components = record.getRecordComponents();
    if (Arrays.stream(components).noneMatch(asked)) {
      return "    throw new IndexOutOfBoundsException(component);\n";
    }
    String cases =
        IntStream.range(0, components.length)
            .filter(i -> asked.test(components[i]))
            .mapToObj(i -> "      case %d -> record.%s();\n".formatted(i, components[i].getName()))
            .collect(Collectors.joining());
    return """
            %s record = (%s) of;
            return switch (component) {
        %s      default -> throw new IndexOutOfBoundsException(component);
            };
        """
        .formatted(record.getCanonicalName(), record.getCanonicalName(), cases);
  }
}
