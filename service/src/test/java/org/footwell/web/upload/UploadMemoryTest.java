package org.footwell.web.upload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.junit.jupiter.api.Test;

class UploadMemoryTest {

  @Test
  void ofTwoThatDoNotFitTogetherOneGoesOnThoughTheOtherIsStillBeingRefused() {
    UploadMemory memory = new UploadMemory(128L << 20, 1);
    UploadMemory.Share first = memory.share(-1);
    UploadMemory.Share second = memory.share(-1);
    first.hold(memory.mostHeld() * 6 / 10);
    ProblemException refused =
        assertThrows(ProblemException.class, () -> second.hold(memory.mostHeld() * 6 / 10));
    assertEquals(ProblemType.BUSY, refused.type());
    first.hold(memory.mostHeld() * 3 / 10);
  }
}
