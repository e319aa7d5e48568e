package org.footwell.web.log;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.Locale;
import java.util.Map;

/** How an entry becomes text. */
public enum LogForm {
  /** A line for people, with the stack of a failure indented below it. */
  PLAIN {
    @Override
    String text(LogEntry entry) {
      StringBuilder text =
          new StringBuilder(TIME.format(entry.time()))
              .append(String.format(Locale.ROOT, " %-5s ", entry.level()))
              .append(entry.source())
              .append(" - ")
              .append(onOneLine(entry.message()));
      entry
          .details()
          .forEach(
              (name, value) ->
                  text.append(' ').append(name).append('=').append(onOneLine(value.toString())));
      if (entry.failure() != null) {
        stack(entry.failure())
            .lines()
            .forEach(line -> text.append("\n\t").append(onOneLine(line.strip())));
      }
      return text.toString();
    }
  },

  /** A JSON object on one line, whatever is in it. */
  JSON {
    @Override
    String text(LogEntry entry) {
      StringWriter text = new StringWriter();
      try (JsonGenerator json = WRITER.createGenerator(text)) {
        json.writeStartObject();
        json.writeStringField("time", TIME.format(entry.time()));
        json.writeStringField("level", entry.level().name().toLowerCase(Locale.ROOT));
        json.writeStringField("source", entry.source());
        json.writeStringField("message", entry.message());
        for (Map.Entry<String, Object> detail : entry.details().entrySet()) {
          json.writeObjectField(detail.getKey(), detail.getValue());
        }
        if (entry.failure() != null) {
          json.writeStringField("failure", stack(entry.failure()));
        }
        json.writeEndObject();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return text.toString();
    }
  };

  private static final DateTimeFormatter TIME =
      new DateTimeFormatterBuilder().appendInstant(3).toFormatter(Locale.ROOT);

  private static final JsonFactory WRITER = new JsonFactory();

  /** The text of an entry, without the end of its line. */
  abstract String text(LogEntry entry);

  private static String stack(Throwable failure) {
    StringWriter stack = new StringWriter();
    failure.printStackTrace(new PrintWriter(stack));
    return stack.toString();
  }

  /** With signs for what would end a line or steer a terminal. */
  private static String onOneLine(String text) {
    StringBuilder line = new StringBuilder(text.length());
    text.chars()
        .forEach(
            c -> {
              if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029') {
                line.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                line.append((char) c);
              }
            });
    return line.toString();
  }
}
