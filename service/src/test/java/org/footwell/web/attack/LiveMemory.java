package org.footwell.web.attack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.footwell.RunningJar;

/** What a running service holds, counted after everything that is not used was thrown away. */
final class LiveMemory {

  private LiveMemory() {}

  /** Bytes in use; counting them collects garbage first. */
  static long of(RunningJar service) throws IOException {
    Path jcmd = Path.of(System.getProperty("java.home"), "bin", "jcmd");
    Process counting =
        new ProcessBuilder(jcmd.toString(), Long.toString(service.pid()), "GC.class_histogram")
            .redirectErrorStream(true)
            .start();
    String total = "";
    for (String line :
        new String(counting.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
            .lines()
            .toList()) {
      total = line.startsWith("Total") ? line : total;
    }
    return Long.parseLong(total.strip().split("\\s+", -1)[2]);
  }
}
