package org.footwell.catalogue;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import org.footwell.catalogue.row.CannotRun;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program. Its exit code is 0 for clean, 1 for findings, 2 when it could not check. */
public final class Main {

  private static final int CANNOT_RUN = 2;

  private Main() {}

  public static void main(String[] arguments) {
    Charset charset = Terminal.there() ? Terminal.charset() : StandardCharsets.UTF_8;
    int code = CANNOT_RUN;
    PrintWriter errors = writer(FileDescriptor.err, charset);
    try {
      code =
          new CommandLine(new CheckCommand())
              .setCaseInsensitiveEnumValuesAllowed(true)
              .setOut(writer(FileDescriptor.out, charset))
              .setErr(errors)
              .setParameterExceptionHandler(Main::misused)
              .setExecutionExceptionHandler((failure, line, parsed) -> told(failure, line.getErr()))
              .execute(arguments);
    } catch (Error broken) {
      errors.println(
          broken instanceof OutOfMemoryError
              ? "Out of memory: give fewer --chunk-rows, or more with java -Xmx."
              : "footwell-catalogue failed: " + broken);
    }
    System.exit(code);
  }

  private static PrintWriter writer(FileDescriptor to, Charset charset) {
    return new PrintWriter(
        new PrintStream(new FileOutputStream(to), false, charset), true, charset);
  }

  private static int misused(ParameterException fault, String... arguments) {
    PrintWriter errors = fault.getCommandLine().getErr();
    errors.println(fault.getMessage());
    UnmatchedArgumentException.printSuggestions(fault, errors);
    errors.println("See --help.");
    return CANNOT_RUN;
  }

  private static int told(Exception failure, PrintWriter errors) {
    if (failure instanceof CannotRun) {
      errors.println(failure.getMessage());
    } else if (failure instanceof FileSystemException file) {
      errors.println(file.getFile() + " cannot be read or written.");
    } else if (failure instanceof IOException) {
      errors.println("Reading or writing failed: " + failure.getMessage());
    } else {
      errors.println("footwell-catalogue failed: " + failure);
    }
    return CANNOT_RUN;
  }
}
