package org.footwell.web;

import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;

/** How callers are connected with. Thousands of them must neither wait at the door nor take all memory. */
final class Connections {

  /**
   * Callers that may wait to be let in. The system lets in no more of them at once than this, and the others try again
   * after a second; it takes less where it has a limit of its own.
   */
  private static final int AT_THE_DOOR = 4_096;

  /** Characters of headers that a connection remembers, to know them again: room for 1,024 of them takes 48 kB. */
  private static final int HEADERS_KNOWN_AGAIN = 0;

  private Connections() {}

  /** Where they connect, not open yet. */
  static ServerConnector at(String host, int port, Server server, HttpConfiguration http) {
    http.addCustomizer(Safeguards::apply);
    http.setHeaderCacheSize(HEADERS_KNOWN_AGAIN);
    ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
    connector.setHost(host);
    connector.setPort(port);
    connector.setAcceptQueueSize(AT_THE_DOOR);
    return connector;
  }
}
