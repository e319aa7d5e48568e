package org.footwell.recording;

import java.nio.ByteBuffer;
import java.util.HexFormat;
import java.util.List;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class RecordingOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("arrival-times", "sample of a WAV file", "scipy-wav-samples.csv")
            .printed("value")
            .computed(RecordingOutsideChecks::sample)
            .within(1e-7),
        OutsideCheck.of("arrival-times", "rate of a WAV file, Hz", "scipy-wav-samples.csv")
            .printed("rate_hz")
            .computed(row -> read(row).rateHz())
            .within(0));
  }

  private static double sample(Row row) {
    int channel = (int) row.number("channel");
    return read(row).channels().get(channel).at((int) row.number("frame"));
  }

  private static Wav read(Row row) {
    WavReader reader = new WavReader();
    reader.accept(ByteBuffer.wrap(HexFormat.of().parseHex(row.text("file_hex"))));
    try {
      return reader.finish();
    } catch (Wav.Unreadable unreadable) {
      throw new AssertionError(row.text("format"), unreadable);
    }
  }
}
