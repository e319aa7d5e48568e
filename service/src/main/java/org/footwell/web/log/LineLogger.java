package org.footwell.web.log;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.slf4j.Marker;
import org.slf4j.event.KeyValuePair;
import org.slf4j.event.Level;
import org.slf4j.event.LoggingEvent;
import org.slf4j.helpers.LegacyAbstractLogger;
import org.slf4j.helpers.MessageFormatter;
import org.slf4j.spi.LoggingEventAware;

/** Says what the service tells, and of its libraries only what is wrong. */
final class LineLogger extends LegacyAbstractLogger implements LoggingEventAware {

  private static final long serialVersionUID = 1L;

  private static final String OURS = "org.footwell.";

  private final Level least;
  private final String source;

  LineLogger(String name) {
    this.name = name;
    this.least = name.startsWith(OURS) ? Level.INFO : Level.WARN;
    this.source = name.substring(name.lastIndexOf('.') + 1);
  }

  @Override
  public void log(LoggingEvent event) {
    Map<String, Object> details = new LinkedHashMap<>();
    List<KeyValuePair> pairs = event.getKeyValuePairs();
    if (pairs != null) {
      pairs.forEach(pair -> details.put(pair.key, pair.value));
    }
    String message =
        MessageFormatter.basicArrayFormat(event.getMessage(), event.getArgumentArray());
    write(event.getLevel(), message, details, event.getThrowable());
  }

  @Override
  protected void handleNormalizedLoggingCall(
      Level level, Marker marker, String pattern, Object[] arguments, Throwable failure) {
    write(level, MessageFormatter.basicArrayFormat(pattern, arguments), Map.of(), failure);
  }

  private void write(Level level, String message, Map<String, Object> details, Throwable failure) {
    LogProvider.write(
        new LogEntry(Instant.now(), level, source, String.valueOf(message), details, failure));
  }

  @Override
  protected String getFullyQualifiedCallerName() {
    return LineLogger.class.getName();
  }

  private boolean says(Level level) {
    return level.toInt() >= least.toInt();
  }

  @Override
  public boolean isTraceEnabled() {
    return says(Level.TRACE);
  }

  @Override
  public boolean isDebugEnabled() {
    return says(Level.DEBUG);
  }

  @Override
  public boolean isInfoEnabled() {
    return says(Level.INFO);
  }

  @Override
  public boolean isWarnEnabled() {
    return says(Level.WARN);
  }

  @Override
  public boolean isErrorEnabled() {
    return says(Level.ERROR);
  }
}
