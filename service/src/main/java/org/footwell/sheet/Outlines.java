package org.footwell.sheet;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** Letters of the font as shapes, for drawings on paper. */
final class Outlines {

  private static final Map<String, Outlines> READ = new ConcurrentHashMap<>();

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;
  private final Map<Integer, Path2D> known = new ConcurrentHashMap<>();

  private Outlines(String resource) {
    try {
      font = new TTFParser().parse(new RandomAccessReadBuffer(Paper.resource(resource)));
      glyphs = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Outlines of(boolean bold) {
    return READ.computeIfAbsent(bold ? Paper.BOLD : Paper.FONT, Outlines::new);
  }

  /** Letters in a line from its start on the base line, y downward. */
  record Line(Shape shape, double width) {}

  Line line(String text, double size) {
    double scale = size / unitsPerEm;
    Path2D all = new Path2D.Double();
    double x = 0;
    for (int c : text.codePoints().toArray()) {
      int glyph = glyphs.getGlyphId(c);
      AffineTransform at = AffineTransform.getTranslateInstance(x, 0);
      at.scale(scale, -scale);
      all.append(at.createTransformedShape(outline(glyph)), false);
      x += width(glyph) * scale;
    }
    return new Line(all, x);
  }

  private Path2D outline(int glyph) {
    return known.computeIfAbsent(glyph, this::read);
  }

  /** One at a time: the font is read from one place in a file. */
  private synchronized Path2D read(int glyph) {
    try {
      GlyphData data = font.getGlyph().getGlyph(glyph);
      return data == null ? new Path2D.Double() : data.getPath();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private synchronized double width(int glyph) {
    try {
      return font.getAdvanceWidth(glyph);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
