package org.footwell;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.footwell.acoustic.loudness.EqualLoudness;
import org.footwell.calculation.Engine;
import org.footwell.web.Server;
import org.footwell.web.Settings;
import org.footwell.web.request.Endpoint;

/** Starts the service, or says how. */
public final class Main {

  private static final int WRONG = 2;

  private static final String USAGE =
      """
      usage: java -jar footwell.jar [--help | --check | --rehearse]
        --help      says this
        --check     looks whether the settings can be used and starts nothing: status 0 if so, else 2
        --rehearse  answers every example once on a port of its own, so that Java can keep what it loaded
      """;

  static {
    // The server lists all languages that Java has data of, a fifth of the time to the first
    // answer. What ours take stands in their texts, so that Java need not look for any.
    System.setProperty("java.locale.providers", System.getProperty("java.locale.providers", "SPI"));
  }

  private Main() {}

  public static void main(String[] arguments) {
    int status = run(List.of(arguments), System.getenv());
    if (status != 0) {
      System.exit(status);
    }
  }

  private static int run(List<String> arguments, Map<String, String> environment) {
    String wanted = String.join(" ", arguments);
    try {
      switch (wanted) {
        case "" -> start(Settings.from(environment));
        case "--help" -> System.out.print(help());
        case "--check" -> check(environment);
        case "--rehearse" -> Rehearsal.run();
        default -> throw new IllegalArgumentException(wanted + " is no option\n\n" + USAGE);
      }
      return 0;
    } catch (IllegalArgumentException wrong) {
      System.err.println(wrong.getMessage());
      return WRONG;
    }
  }

  private static String help() {
    return "Footwell "
        + Version.NUMBER
        + ", calculations for vehicle-audio fitters over HTTP\n\n"
        + USAGE
        + "\nSettings are environment variables:\n"
        + Settings.help();
  }

  /** Reads the settings, which finds all that is wrong with them. */
  private static void check(Map<String, String> environment) {
    Settings.from(environment);
    System.out.println("The settings can be used.");
  }

  /** What any answer takes and opening the port does not; equal-loudness takes little besides. */
  private static void prepare() {
    new Endpoint<>(new EqualLoudness(), new Engine(), Duration.ofMinutes(1)).rehearse();
  }

  private static void start(Settings settings) {
    // On another processor, while this one opens the port.
    new Thread(Main::prepare, "prepare").start();
    Server server =
        new Server(Calculations.BY_ID, Calculations.PLAN, settings, Version.NUMBER).start();
    Runtime.getRuntime().addShutdownHook(new Thread(server::close, "stop"));
  }
}
