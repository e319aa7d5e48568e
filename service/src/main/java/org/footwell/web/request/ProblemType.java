package org.footwell.web.request;

import org.footwell.calculation.text.Words;

/** Every kind of problem answer, with its status; its title and what to do are words. */
public enum ProblemType implements Words {
  UNREADABLE(400),
  KEY_NEEDED(401),
  NOT_FOUND(404),
  WRONG_METHOD(405),
  NOT_ACCEPTABLE(406),
  TOO_LARGE(413),
  WRONG_CONTENT_TYPE(415),
  INVALID(422),
  TOO_MANY_CALLS(429),
  INTERNAL(500),
  BUSY(503),
  STOPPING(503),
  TOO_SLOW(503);

  private final int status;

  ProblemType(int status) {
    this.status = status;
  }

  public int status() {
    return status;
  }

  /** Reference that identifies the type, and the page that explains it. */
  public String uri() {
    return "/problems/" + code();
  }
}
