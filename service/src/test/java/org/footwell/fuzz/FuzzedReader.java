package org.footwell.fuzz;

import java.util.Locale;
import org.footwell.web.batch.CsvTarget;
import org.footwell.web.upload.UploadTarget;

/** Every reader of what callers send. */
enum FuzzedReader {
  NETWORK,
  CSV,
  JSON,
  WAV,
  UPLOAD,
  PLAN,
  PATHS;

  Target target() {
    return switch (this) {
      case NETWORK -> new NetworkTarget();
      case CSV -> new CsvTarget();
      case JSON -> new JsonTarget();
      case WAV -> new WavTarget();
      case UPLOAD -> new UploadTarget();
      case PLAN -> new PlanTarget();
      case PATHS -> new PathsTarget();
    };
  }

  /** As its folders are called. */
  String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
