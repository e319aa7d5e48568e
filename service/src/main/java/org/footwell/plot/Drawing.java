package org.footwell.plot;

import org.footwell.sheet.FigureTable;

/** Something drawn, with its figures as a table. */
public interface Drawing {

  /** How wide it is drawn; letters are of one size, so that a narrow one can be read on a telephone. */
  enum Size {
    /** For paper and for screens as wide as a hand is long. */
    WIDE(720, ""),
    /** For a telephone held upright. */
    NARROW(360, "-narrow");

    private final int width;
    private final String ending;

    Size(int width, String ending) {
      this.width = width;
      this.ending = ending;
    }

    /** In units of the drawing; letters are 12 of them high. */
    int width() {
      return width;
    }
  }

  /** Begins the ids within it; of letters, digits and hyphens, its own on a page. */
  String id();

  /** What it shows, in a line. */
  String title();

  /** What it shows, for those who do not see it. */
  String description();

  /** How high it is drawn, in its own units. */
  int height(Size size);

  /** Draws it, elements one after the other. */
  void draw(Svg svg, Size size);

  /** What it shows as figures. */
  FigureTable table();

  /** Its id at a size, so that both can stand on one page. */
  default String id(Size size) {
    return id() + size.ending;
  }

  /** The drawing, to stand in a page or by itself. */
  default String svg() {
    return svg(Size.WIDE);
  }

  /** The same at a size. */
  default String svg(Size size) {
    return Svg.of(this, size);
  }
}
