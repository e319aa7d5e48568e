package org.footwell.catalogue;

import java.io.Console;
import java.nio.charset.Charset;

/** The terminal this program was started on, if there is one. */
final class Terminal {

  private Terminal() {}

  /** Whether input and output are a terminal. */
  @SuppressWarnings("SystemConsoleNull") // what Java 22 changed is asked for below
  static boolean there() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      // Since Java 22 there may be a console without a terminal, and a method to ask for one.
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException olderJava) {
      return true;
    }
  }

  static Charset charset() {
    return System.console().charset();
  }
}
