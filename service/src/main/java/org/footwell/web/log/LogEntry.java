package org.footwell.web.log;

import java.time.Instant;
import java.util.Map;
import org.slf4j.event.Level;

/**
 * What is logged.
 *
 * @param source the class that says it
 * @param details numbers and texts beside the message, by their names, in order
 * @param failure what failed, or null
 */
record LogEntry(
    Instant time,
    Level level,
    String source,
    String message,
    Map<String, Object> details,
    Throwable failure) {}
