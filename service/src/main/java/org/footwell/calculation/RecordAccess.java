package org.footwell.calculation;

/**
 * Makes and reads records of one type, whose components are counted from 0 in order of declaration.
 *
 * <p>The build writes one for every record of a shape, so that a running service needs no reflection for
 * them and makes no code of its own; records made otherwise, such as those of tests, are reflected upon.
 */
public abstract class RecordAccess {

  /** Behind the name of a record: the class that reads it. */
  private static final String WRITTEN = "Access";

  /** A new record of its components. */
  public abstract Object make(Object[] components);

  /** A component of a record. */
  public abstract Object get(Object record, int component);

  /** All components of a record, which takes less than each for itself. */
  public abstract Object[] all(Object record);

  /** A component that is a plain double. */
  public abstract double number(Object record, int component);

  /** The full name of the class that the build writes for a record. */
  public static String name(Class<?> record) {
    return record.getName().replace('$', '_') + WRITTEN;
  }

  /** The access to a record, written by the build or made here. */
  public static RecordAccess of(Class<?> record) {
    try {
      return Class.forName(name(record), true, record.getClassLoader())
          .asSubclass(RecordAccess.class)
          .getConstructor()
          .newInstance();
    } catch (ClassNotFoundException notWritten) {
      return new Reflecting(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("access to " + record, e);
    }
  }
}
