package org.footwell;

import java.util.List;
import java.util.Map;
import org.footwell.web.Server;
import org.footwell.web.Settings;

/** Starts the service, or says how. */
public final class Main {

  private static final int WRONG = 2;

  private static final String USAGE =
      """
      usage: java -jar footwell.jar [--help | --check]
        --help   says this
        --check  looks whether the settings can be used and starts nothing: status 0 if so, else 2

      Settings are environment variables:
      """;

  private Main() {}

  public static void main(String[] arguments) {
    int status = run(List.of(arguments), System.getenv());
    if (status != 0) {
      System.exit(status);
    }
  }

  private static int run(List<String> arguments, Map<String, String> environment) {
    if (arguments.equals(List.of("--help"))) {
      System.out.print(
          "Footwell "
              + Version.NUMBER
              + ", calculations for vehicle-audio fitters over HTTP\n\n"
              + USAGE
              + Settings.help());
      return 0;
    }
    if (!arguments.isEmpty() && !arguments.equals(List.of("--check"))) {
      System.err.print(USAGE.lines().findFirst().orElseThrow() + "\n");
      return WRONG;
    }
    try {
      Settings settings = Settings.from(environment);
      if (arguments.isEmpty()) {
        start(settings);
      } else {
        System.out.println("the settings can be used");
      }
      return 0;
    } catch (IllegalArgumentException badSetting) {
      System.err.println(badSetting.getMessage());
      return WRONG;
    }
  }

  private static void start(Settings settings) {
    Server server =
        new Server(Calculations.BY_ID, Calculations.PLAN, settings, Version.NUMBER).start();
    Runtime.getRuntime().addShutdownHook(new Thread(server::close, "stop"));
  }
}
