package org.footwell.contract;

import java.io.File;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.footwell.Calculations;
import org.footwell.analysis.SweepRequest;
import org.footwell.analysis.registry.Analysis;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.RecordAccess;
import org.footwell.web.batch.SweepTable;
import org.footwell.web.request.Problem;

/**
 * Writes for every record of a request or a result how it is made and read, into the folder given second,
 * and compiles that into the first, where the classes of the service are.
 */
public final class WriteAccess {

  private WriteAccess() {}

  public static void main(String[] arguments) throws IOException {
    Path classes = Path.of(arguments[0]);
    List<Path> sources = new ArrayList<>();
    for (Class<?> record : records()) {
      Path source =
          Path.of(
              arguments[1], RecordAccess.name(record).replace('.', File.separatorChar) + ".java");
      Files.createDirectories(source.getParent());
      sources.add(Files.writeString(source, AccessSource.of(record)));
    }
    compile(sources, classes);
  }

  /** All that requests, answers and problems are made of. */
  static Set<Class<?>> records() {
    Set<Class<?>> records = new LinkedHashSet<>();
    for (Calculation<?, ?> calculation : Calculations.all()) {
      add(calculation.card(), records);
      for (Analysis analysis : Analysis.values()) {
        add(analysis.of(calculation).card(), records);
      }
    }
    add(Calculations.PLAN.type(), records);
    Stream.of(SweepRequest.class, SweepTable.class, Answer.class, Problem.class)
        .forEach(record -> add(record, records));
    return records;
  }

  private static void add(Card<?, ?> card, Set<Class<?>> records) {
    add(card.request(), records);
    add(card.result(), records);
  }

  private static void add(Type type, Set<Class<?>> records) {
    if (type instanceof ParameterizedType list) {
      for (Type element : list.getActualTypeArguments()) {
        add(element, records);
      }
    } else if (type instanceof Class<?> record && record.isRecord() && records.add(record)) {
      for (RecordComponent component : record.getRecordComponents()) {
        add(component.getGenericType(), records);
      }
    }
  }

  /** Of the libraries only annotations are missing, which is no fault. */
  private static void compile(List<Path> sources, Path classes) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    DiagnosticCollector<JavaFileObject> told = new DiagnosticCollector<>();
    String folder = classes.toString();
    List<String> options = List.of("-proc:none", "-nowarn", "-cp", folder, "-d", folder);
    try (StandardJavaFileManager files = compiler.getStandardFileManager(told, null, null)) {
      Iterable<? extends JavaFileObject> units = files.getJavaFileObjectsFromPaths(sources);
      if (!compiler.getTask(null, files, told, options, null, units).call()) {
        throw new IllegalStateException("does not compile: " + told.getDiagnostics());
      }
    }
  }
}
