package org.footwell.plot;

import java.util.List;

/** Several drawings one below the other as a single drawing. */
public final class PlotSheet {

  private static final int TITLE = 28;
  private static final int WIDTH = Drawing.Size.WIDE.width();

  private PlotSheet() {}

  /** The drawing; black on white, or the other way round where the reader's screen is dark. */
  public static String svg(List<? extends Drawing> drawings) {
    int height = drawings.stream().mapToInt(PlotSheet::height).sum();
    StringBuilder out = new StringBuilder();
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
        .append(WIDTH)
        .append("\" height=\"")
        .append(height)
        .append("\" viewBox=\"0 0 ")
        .append(WIDTH + " " + height)
        .append("\" font-family=\"sans-serif\" color=\"#222\">\n")
        .append("<style>svg{color:#222;background:#fff}")
        .append("@media(prefers-color-scheme:dark){svg{color:#eee;background:#111}}</style>\n");
    int y = 0;
    for (Drawing drawing : drawings) {
      out.append("<text x=\"16\" y=\"" + (y + 20))
          .append("\" font-size=\"15\" font-weight=\"bold\" fill=\"currentColor\">")
          .append(Svg.escaped(drawing.title()))
          .append("</text>\n<svg y=\"" + (y + TITLE) + "\" width=\"" + WIDTH)
          .append("\" height=\"" + drawing.height(Drawing.Size.WIDE) + "\">\n")
          .append(drawing.svg())
          .append("</svg>\n");
      y += height(drawing);
    }
    return out.append("</svg>\n").toString();
  }

  private static int height(Drawing drawing) {
    return drawing.height(Drawing.Size.WIDE) + TITLE;
  }
}
