package org.footwell.calculation;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Access to a record for which the build has written none. */
final class Reflecting extends RecordAccess {

  private final Class<?> type;
  private final Constructor<?> constructor;
  private final RecordComponent[] components;

  Reflecting(Class<?> type) {
    this.type = type;
    components = type.getRecordComponents();
    try {
      constructor =
          type.getDeclaredConstructor(
              Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
      constructor.setAccessible(true);
      for (RecordComponent component : components) {
        component.getAccessor().setAccessible(true);
      }
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException("record " + type, e);
    }
  }

  @Override
  public Object make(Object[] values) {
    try {
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("constructor of " + type, e);
    }
  }

  @Override
  public Object get(Object record, int component) {
    try {
      return components[component].getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("accessor of " + components[component], e);
    }
  }

  @Override
  public Object[] all(Object record) {
    Object[] values = new Object[components.length];
    Arrays.setAll(values, component -> get(record, component));
    return values;
  }

  @Override
  public double number(Object record, int component) {
    return (double) get(record, component);
  }
}
