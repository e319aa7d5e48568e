package org.footwell.calculation;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.footwell.calculation.Vocabulary.Quantity;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Form;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;

/** Reads the shape of a record from its components and their annotations. */
final class Reflection {

  private Reflection() {}

  static Node.Group group(Class<?> type) {
    RecordAccess access = RecordAccess.of(type);
    RecordComponent[] components = type.getRecordComponents();
    Object bare = bare(access, components);
    Map<String, Node.Member> members = new LinkedHashMap<>();
    for (int i = 0; i < components.length; i++) {
      Node.Member member = member(components[i], i, access, bare);
      members.put(member.name(), member);
    }
    return new Node.Group(type, access, Collections.unmodifiableMap(members));
  }

  /**
   * The record with nothing given: what its constructor fills in are the stated defaults. Result
   * records, which hold primitives, have none.
   */
  private static Object bare(RecordAccess access, RecordComponent[] components) {
    for (RecordComponent component : components) {
      if (component.getType().isPrimitive()) {
        return null;
      }
    }
    return access.make(new Object[components.length]);
  }

  private static Node.Member member(
      RecordComponent component, int at, RecordAccess access, Object bare) {
    AnnotatedElement marks = component.getAccessor();
    String name = Names.snake(component.getName());
    Optional<Quantity> quantity = Vocabulary.of(name);
    return new Node.Member(
        name,
        inUnitOf(marks),
        node(component.getGenericType(), component.getAnnotatedType(), marks, name),
        marks.isAnnotationPresent(NotNull.class),
        bare == null ? null : access.get(bare, at),
        sentence(component, quantity),
        new Node.Reading(access, at, component.getType() == double.class));
  }

  private static String inUnitOf(AnnotatedElement marks) {
    InUnitOf mark = marks.getAnnotation(InUnitOf.class);
    return mark == null ? null : mark.value();
  }

  /** What a field says of itself, or else what its name stands for. */
  private static String sentence(RecordComponent component, Optional<Quantity> quantity) {
    AnnotatedElement marks = component.getAccessor();
    return Optional.ofNullable(marks.getAnnotation(ArraySchema.class))
        .map(ArraySchema::arraySchema)
        .or(() -> Optional.ofNullable(marks.getAnnotation(Schema.class)))
        .map(Schema::description)
        .or(() -> quantity.map(Quantity::sentence))
        .orElseThrow(() -> new IllegalStateException(component + " says nowhere what it means"));
  }

  private static Node node(
      Type type, AnnotatedType annotated, AnnotatedElement marks, String name) {
    return node(type, annotated, marks, Vocabulary.of(name), name);
  }

  private static Node node(
      Type type,
      AnnotatedType annotated,
      AnnotatedElement marks,
      Optional<Quantity> quantity,
      String name) {
    if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
      AnnotatedType element =
          ((AnnotatedParameterizedType) annotated).getAnnotatedActualTypeArguments()[0];
      Size size = marks.getAnnotation(Size.class);
      return new Node.Repeated(
          node(list.getActualTypeArguments()[0], element, element, Optional.empty(), name),
          element.isAnnotationPresent(NotNull.class),
          size == null ? Integer.MAX_VALUE : size.max(),
          Bounds.list(marks));
    }
    Class<?> single = (Class<?>) (type instanceof ParameterizedType map ? map.getRawType() : type);
    return single.isRecord()
        ? group(single)
        : new Node.Scalar(
            single, bounds(single, marks, quantity, name), constants(single), form(marks));
  }

  private static TextForm form(AnnotatedElement marks) {
    TextForm.Of mark = marks.getAnnotation(TextForm.Of.class);
    try {
      return mark == null ? null : made(mark.value());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(mark + " has no constructor without arguments", e);
    }
  }

  private static TextForm made(Class<? extends TextForm> form) throws ReflectiveOperationException {
    Constructor<? extends TextForm> constructor = form.getDeclaredConstructor();
    constructor.setAccessible(true);
    return constructor.newInstance();
  }

  private static Map<String, Object> constants(Class<?> type) {
    Map<String, Object> constants = new LinkedHashMap<>();
    if (type.isEnum()) {
      for (Object constant : type.getEnumConstants()) {
        constants.put(Names.of((Enum<?>) constant), constant);
      }
    }
    return Collections.unmodifiableMap(constants);
  }

  private static Bounds bounds(
      Class<?> type, AnnotatedElement marks, Optional<Quantity> quantity, String name) {
    if (type.isEnum()) {
      return Bounds.any(Allowed.oneOf(constants(type).keySet()));
    }
    if (type == Series.class) {
      return Bounds.any(Phrase.of(Form.NUMBERS));
    }
    if (type == Map.class) {
      return Bounds.any(Phrase.of(Form.GROUP));
    }
    if (type == Boolean.class || type == boolean.class) {
      return Bounds.any(Phrase.of(Form.TRUE_OR_FALSE));
    }
    return type == String.class ? Bounds.text(marks) : Bounds.number(type, marks, quantity, name);
  }
}
