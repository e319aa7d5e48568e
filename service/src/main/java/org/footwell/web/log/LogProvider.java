package org.footwell.web.log;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.ILoggerFactory;
import org.slf4j.IMarkerFactory;
import org.slf4j.helpers.BasicMarkerFactory;
import org.slf4j.helpers.NOPMDCAdapter;
import org.slf4j.spi.MDCAdapter;
import org.slf4j.spi.SLF4JServiceProvider;

/** Logs what this service and its libraries say; found by its entry below {@code META-INF/services}. */
public final class LogProvider implements SLF4JServiceProvider {

  private static volatile LogForm form = LogForm.PLAIN;

  private final Map<String, LineLogger> loggers = new ConcurrentHashMap<>();
  private final IMarkerFactory markers = new BasicMarkerFactory();
  private final MDCAdapter nothingByThread = new NOPMDCAdapter();

  /** From now on all is written in this form. */
  public static void writeAs(LogForm chosen) {
    form = chosen;
  }

  static void write(LogEntry entry) {
    byte[] line = (form.text(entry) + "\n").getBytes(StandardCharsets.UTF_8);
    System.out.write(line, 0, line.length);
    System.out.flush();
  }

  @Override
  public ILoggerFactory getLoggerFactory() {
    return name -> loggers.computeIfAbsent(name, LineLogger::new);
  }

  @Override
  public IMarkerFactory getMarkerFactory() {
    return markers;
  }

  @Override
  public MDCAdapter getMDCAdapter() {
    return nothingByThread;
  }

  @Override
  public String getRequestedApiVersion() {
    return "2.0.99";
  }

  @Override
  public void initialize() {}
}
