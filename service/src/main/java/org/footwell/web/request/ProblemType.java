package org.footwell.web.request;

import java.util.Locale;

/** Every kind of problem answer, with its status. */
public enum ProblemType {
  UNREADABLE(400, "The request cannot be read", "The body or the address is not well formed."),
  NOT_FOUND(404, "There is nothing at this address", "See /openapi.json for what there is."),
  WRONG_METHOD(405, "This address does not take this method", "The Allow header says which."),
  NOT_ACCEPTABLE(406, "None of the formats asked for can be given", "See the operation's answers."),
  TOO_LARGE(413, "The request is too large", "The contract states the limit."),
  WRONG_CONTENT_TYPE(415, "This content type is not read here", "Name the type of what is sent."),
  INVALID(422, "The request can be read but not answered", "Every fault is in errors."),
  INTERNAL(500, "The service failed", "It was logged; the same request will fail again."),
  BUSY(503, "The service is busy", "Try again in a moment."),
  STOPPING(503, "The service is stopping", "Another copy will answer; try again."),
  TOO_SLOW(503, "The calculation ran past its deadline", "Ask for less at once.");

  private final int status;
  private final String title;
  private final String help;

  ProblemType(int status, String title, String help) {
    this.status = status;
    this.title = title;
    this.help = help;
  }

  public int status() {
    return status;
  }

  public String title() {
    return title;
  }

  public String help() {
    return help;
  }

  /** Reference that identifies the type, and the page that explains it. */
  public String uri() {
    return "/problems/" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
