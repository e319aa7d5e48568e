package org.footwell.web;

import org.eclipse.jetty.ee10.servlet.SessionHandler;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** No request has a session, so none is looked for. */
final class NoSessions extends SessionHandler {

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws Exception {
    Handler next = getHandler();
    return next != null && next.handle(request, response, callback);
  }
}
