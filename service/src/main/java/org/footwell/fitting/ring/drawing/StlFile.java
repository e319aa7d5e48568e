package org.footwell.fitting.ring.drawing;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.footwell.calculation.Source;
import org.footwell.fitting.ring.drawing.RingSolid.Corner;
import org.footwell.fitting.ring.drawing.RingSolid.Triangle;

/** A ring as a binary STL file in mm: 80 bytes of text, a count, 50 bytes for each triangle. */
public final class StlFile {

  public static final Source FORMAT =
      Source.of(
          "StereoLithography Interface Specification, October 1989, as reprinted in M. Burns,"
              + " Automated Fabrication, section 6.5: the STL format");

  static final int HEADER_BYTES = 80;
  static final int TRIANGLE_BYTES = 50;

  /** Must not begin with "solid", which would announce the text form. */
  private static final String HEADER = "Adapter ring, binary STL, units mm, panel side at z = 0";

  private static final String DOES_NOT_FIT = "DOES NOT FIT: ";

  private StlFile() {}

  /** The file; its text, which hardly any program shows, names what forbids the ring. */
  public static byte[] of(DrawnRing ring) {
    RingSolid solid = RingSolid.of(ring);
    if (!solid.closed()) {
      throw new IllegalStateException("the ring's mesh is not closed");
    }
    String text = ring.fits() ? HEADER : DOES_NOT_FIT + String.join(", ", ring.reasons());
    return written(solid, text.substring(0, Math.min(HEADER_BYTES, text.length())));
  }

  private static byte[] written(RingSolid solid, String text) {
    ByteBuffer out =
        ByteBuffer.allocate(
                HEADER_BYTES + Integer.BYTES + TRIANGLE_BYTES * solid.triangles().size())
            .order(ByteOrder.LITTLE_ENDIAN);
    out.put(text.getBytes(StandardCharsets.US_ASCII));
    out.position(HEADER_BYTES);
    out.putInt(solid.triangles().size());
    for (Triangle triangle : solid.triangles()) {
      Corner a = solid.corner(triangle.a());
      Corner b = solid.corner(triangle.b());
      Corner c = solid.corner(triangle.c());
      put(normal(a, b, c), out);
      put(a, out);
      put(b, out);
      put(c, out);
      out.putShort((short) 0);
    }
    return out.array();
  }

  private static void put(Corner corner, ByteBuffer out) {
    out.putFloat((float) corner.x()).putFloat((float) corner.y()).putFloat((float) corner.z());
  }

  /** Outward, of length 1. */
  private static Corner normal(Corner a, Corner b, Corner c) {
    double ux = b.x() - a.x();
    double uy = b.y() - a.y();
    double uz = b.z() - a.z();
    double vx = c.x() - a.x();
    double vy = c.y() - a.y();
    double vz = c.z() - a.z();
    double x = uy * vz - uz * vy;
    double y = uz * vx - ux * vz;
    double z = ux * vy - uy * vx;
    double length = Math.sqrt(x * x + y * y + z * z);
    return length == 0 ? new Corner(0, 0, 0) : new Corner(x / length, y / length, z / length);
  }
}
