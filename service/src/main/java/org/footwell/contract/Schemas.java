package org.footwell.contract;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverters;
import io.swagger.v3.core.jackson.ModelResolver;
import io.swagger.v3.core.jackson.TypeNameResolver;
import io.swagger.v3.core.util.ObjectMapperFactory;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.SpecVersion;
import io.swagger.v3.oas.models.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.footwell.calculation.Shape;
import org.footwell.calculation.rule.Rule;
import org.footwell.calculation.text.Names;

/** Schemas of records: swagger-core reads them, and what it overlooks is put right here. */
final class Schemas {

  private static final String REFERENCE = "#/components/schemas/";

  private final boolean v31;
  private final ModelConverters converters;
  private final Map<String, Class<?>> records = new HashMap<>();
  private final Components components;

  /** Of which the schema is there, for results and for requests: reading one takes milliseconds, and many are asked for again. */
  private final Map<Boolean, Set<Class<?>>> known =
      Map.of(false, new HashSet<>(), true, new HashSet<>());

  /** What is part of a request stays as strict, though a result may hold it too. */
  private final Set<String> ofRequests = new HashSet<>();

  Schemas(Components components, boolean v31) {
    this.v31 = v31;
    this.components = components;
    ObjectMapper mapper =
        v31 ? ObjectMapperFactory.createJson31() : ObjectMapperFactory.createJson();
    mapper.setPropertyNamingStrategy(new SnakeCase());
    mapper.setAnnotationIntrospector(new DeclaredConstants());
    converters = new ModelConverters(v31);
    converters.addConverter(new ModelResolver(mapper, new NestedNames()).openapi31(v31));
  }

  /** Records within a record carry its name, since others may have one of the same name. */
  private final class NestedNames extends TypeNameResolver {
    @Override
    protected String nameForClass(Class<?> type, Set<Options> options) {
      String name =
          type.getEnclosingClass() == null
              ? type.getSimpleName()
              : nameForClass(type.getEnclosingClass(), options) + type.getSimpleName();
      records.put(name, type);
      return name;
    }
  }

  /** Adds the schema of a record and all below it; returns a reference to it. */
  Schema<?> of(Class<?> type, boolean request) {
    if (known.get(request).add(type)) {
      read(type, request);
    }
    return reference(name(type));
  }

  private void read(Class<?> type, boolean request) {
    Map<String, Schema<?>> resolved = new HashMap<>();
    converters
        .readAll(new AnnotatedType(type))
        .forEach((name, schema) -> resolved.put(name, (Schema<?>) schema));
    resolved.forEach(
        (name, schema) -> {
          Class<?> record = records.get(name);
          if (record != null && record.isRecord() && !ofRequests.contains(name)) {
            complete(schema, record, request);
            components.addSchemas(name, schema);
          }
          if (request) {
            ofRequests.add(name);
          }
        });
  }

  /** The name of a record in the contract. */
  String name(Class<?> type) {
    return new NestedNames().nameForClass(type, Set.of());
  }

  private void complete(Schema<?> schema, Class<?> record, boolean request) {
    declarations(schema, record.asSubclass(Record.class), request);
    List<String> required = new ArrayList<>();
    for (RecordComponent component : record.getRecordComponents()) {
      if (component.getType().isPrimitive()
          || component.getAccessor().isAnnotationPresent(NotNull.class)) {
        required.add(Names.snake(component.getName()));
      }
    }
    schema.setRequired(required.isEmpty() ? null : required);
    if (request) {
      schema.setAdditionalProperties(false);
      defaults(schema, record.asSubclass(Record.class));
    }
  }

  /** What a field means and may be, where the vocabulary says it, and the rules between fields. */
  private void declarations(Schema<?> schema, Class<? extends Record> record, boolean request) {
    Shape<?> shape = Shape.of(record);
    for (Shape.Field field : shape.fields()) {
      Schema<?> property = schema.getProperties().get(field.name());
      if (property.get$ref() != null && !v31) {
        schema.addProperty(field.name(), besideReference(property, field.description()));
        continue;
      }
      property.setDescription(field.description());
      // A document within the record: what stands in it is told elsewhere.
      if (property.getAdditionalProperties() instanceof Schema<?> any
          && "object".equals(any.getType())) {
        property.setAdditionalProperties(true);
      }
      if (request) {
        property.setMinimum(field.least() == null ? property.getMinimum() : field.least());
        property.setMaximum(field.most() == null ? property.getMaximum() : field.most());
        numbers(property, field.only());
        if (field.form() != null) {
          property.addExtension("x-form", field.form());
        }
      }
    }
    if (request && !shape.rules().isEmpty()) {
      schema.setDescription(
          shape.rules().stream().map(Rule::sentence).collect(Collectors.joining(" ")));
      schema.addExtension("x-rules", rules(shape.rules()));
    }
  }

  @SuppressWarnings("unchecked") // of numbers there are no others
  private static void numbers(Schema<?> property, List<BigDecimal> only) {
    if (!only.isEmpty()) {
      ((Schema<Object>) property).setEnum(List.copyOf(only));
    }
  }

  /** Rules for programs: which kind of rule, over which fields. */
  static List<Map<String, Object>> rules(List<Rule> rules) {
    return rules.stream().map(Schemas::rule).toList();
  }

  private static Map<String, Object> rule(Rule rule) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("rule", rule.kind());
    written.put("fields", rule.fields());
    return written;
  }

  /** Version 3.0 drops a description beside a reference; within allOf it survives. */
  private Schema<?> besideReference(Schema<?> reference, String description) {
    Schema<?> described = allOf(List.of(reference));
    described.setDescription(description);
    return described;
  }

  private static void defaults(Schema<?> schema, Class<? extends Record> record) {
    for (Shape.Column column : Shape.of(record).columns()) {
      Schema<?> property = schema.getProperties().get(column.path());
      if (property != null && column.standard() != null) {
        property.setDefault(value(column.standard()));
      }
    }
  }

  /** A default as it stands in JSON. */
  static Object value(Object standard) {
    return standard instanceof Enum<?> constant ? Names.of(constant) : standard;
  }

  /** The schema of a leaf by its dotted path below a record. */
  Schema<?> leaf(Class<?> record, String path) {
    Schema<?> here = reference(name(record));
    for (String part : path.split("\\.", -1)) {
      if (here.getAllOf() != null) {
        here = here.getAllOf().get(0);
      }
      if (here.get$ref() != null) {
        here = target(here);
      }
      here = part.equals("*") ? here.getItems() : here.getProperties().get(part);
    }
    return here;
  }

  /** What a reference leads to. */
  Schema<?> target(Schema<?> reference) {
    return components.getSchemas().get(reference.get$ref().substring(REFERENCE.length()));
  }

  Schema<?> reference(String name) {
    return new Schema<>(v31 ? SpecVersion.V31 : SpecVersion.V30).$ref(REFERENCE + name);
  }

  /** A schema of a plain type. */
  Schema<?> plain(String type) {
    Schema<?> schema = new Schema<>(v31 ? SpecVersion.V31 : SpecVersion.V30);
    schema.setType(type);
    schema.setTypes(Set.of(type));
    return schema;
  }

  @SuppressWarnings("rawtypes") // the model's own type
  Schema<?> allOf(List<Schema> parts) {
    Schema<?> schema = new Schema<>(v31 ? SpecVersion.V31 : SpecVersion.V30);
    schema.setAllOf(parts);
    return schema;
  }

  Schema<?> list(Schema<?> items) {
    Schema<?> schema = plain("array");
    schema.setItems(items);
    return schema;
  }

  Schema<?> between(int least, int most) {
    Schema<?> schema = plain("integer");
    schema.setMinimum(BigDecimal.valueOf(least));
    schema.setMaximum(BigDecimal.valueOf(most));
    return schema;
  }

  Schema<?> oneOf(List<String> names) {
    Schema<Object> schema = cast(plain("string"));
    schema.setEnum(List.copyOf(names));
    return schema;
  }

  @SuppressWarnings("unchecked") // an enumeration of texts
  private static Schema<Object> cast(Schema<?> schema) {
    return (Schema<Object>) schema;
  }
}
