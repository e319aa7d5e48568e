package org.footwell.contract;

import java.util.Locale;
import java.util.Map;
import org.footwell.analysis.Sweep;
import org.footwell.calculation.Faults;
import org.footwell.web.Settings;
import org.footwell.web.request.Json;
import org.footwell.web.request.Query;
import org.footwell.web.upload.Intake;

/** The limits of a service as it is shipped, in sentences, each from the place where it holds. */
final class ShippedLimits {

  private static final Settings SHIPPED = Settings.from(Map.of());

  private ShippedLimits() {}

  static String ofRequests() {
    return String.format(
        Locale.ROOT,
        "Limits: a body or a row of a batch holds at most %s, a sweep at most %,d rows, a request with"
            + " recordings %s, JSON nests at most %d deep, a query has at most %,d parameters, an"
            + " answer lists at most %d faults. A calculation may take %d s. A body may keep the"
            + " service waiting for %d s in all, apart from which it comes with at least %,d bytes a"
            + " second, within %d s. The operator of a service may have set other sizes and times.",
        mebibytes(SHIPPED.bodyBytes()),
        Sweep.MOST_POINTS,
        mebibytes(SHIPPED.uploadBytes()),
        Json.DEEPEST,
        Query.MOST_PARAMETERS,
        Faults.MOST,
        SHIPPED.deadline().toSeconds(),
        SHIPPED.pace().patience().toSeconds(),
        SHIPPED.pace().bytesPerS(),
        SHIPPED.pace().longest().toSeconds());
  }

  static String ofUploads() {
    return String.format(
        Locale.ROOT,
        "at most %d parts, %s and %,d samples in all, the request itself at most %s",
        Intake.MOST_PARTS,
        mebibytes(SHIPPED.uploadBytes()),
        Intake.MOST_SAMPLES,
        mebibytes(SHIPPED.bodyBytes()));
  }

  private static String mebibytes(int bytes) {
    return (bytes >> 20) + " MiB";
  }
}
