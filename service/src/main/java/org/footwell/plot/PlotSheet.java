package org.footwell.plot;

import java.util.List;

/** Several plots one below the other as a single drawing. */
public final class PlotSheet {

  private static final int TITLE = 28;

  private PlotSheet() {}

  /** The drawing; black on white, or the other way round where the reader's screen is dark. */
  public static String svg(List<Plot> plots) {
    int height = plots.stream().mapToInt(plot -> plot.height() + TITLE).sum();
    StringBuilder out = new StringBuilder();
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
        .append(Plot.WIDTH)
        .append("\" height=\"")
        .append(height)
        .append("\" viewBox=\"0 0 ")
        .append(Plot.WIDTH + " " + height)
        .append("\" font-family=\"sans-serif\" color=\"#222\">\n")
        .append("<style>svg{color:#222;background:#fff}")
        .append("@media(prefers-color-scheme:dark){svg{color:#eee;background:#111}}</style>\n");
    int y = 0;
    for (Plot plot : plots) {
      out.append("<text x=\"16\" y=\"" + (y + 20))
          .append("\" font-size=\"15\" font-weight=\"bold\" fill=\"currentColor\">")
          .append(Plot.escaped(plot.title()))
          .append("</text>\n<svg y=\"" + (y + TITLE) + "\" width=\"" + Plot.WIDTH)
          .append("\" height=\"" + plot.height() + "\">\n")
          .append(plot.svg())
          .append("</svg>\n");
      y += plot.height() + TITLE;
    }
    return out.append("</svg>\n").toString();
  }
}
