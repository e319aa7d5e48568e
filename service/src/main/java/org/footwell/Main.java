package org.footwell;

import org.footwell.web.Server;
import org.footwell.web.Settings;

/** Starts the service. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    Server server;
    try {
      server =
          new Server(
                  Calculations.BY_ID,
                  Calculations.PLAN,
                  Settings.from(System.getenv()),
                  Version.NUMBER)
              .start();
    } catch (IllegalArgumentException badSetting) {
      System.err.println(badSetting.getMessage());
      System.exit(2);
      return;
    }
    Runtime.getRuntime().addShutdownHook(new Thread(server::close, "stop"));
  }
}
