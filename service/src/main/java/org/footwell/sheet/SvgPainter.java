package org.footwell.sheet;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;

/** Puts drawings onto paper; the toolkit of the JDK, which needs fonts installed, is not asked. */
final class SvgPainter implements SVGDrawer {

  @Override
  public SVGImage buildSVGImage(
      Element svg, Box box, CssContext context, double width, double height, double dotsPerPixel) {
    String[] seen = svg.getAttribute("viewBox").split(" ", -1);
    double unitsWide = Double.parseDouble(seen[2]);
    double unitsHigh = Double.parseDouble(seen[3]);
    double wide = width > 0 ? width : unitsWide * dotsPerPixel;
    return new Image(svg, wide, wide * unitsHigh / unitsWide, wide / unitsWide);
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {}

  @Override
  public void addFontFile(File file, String family, Integer weight, FontStyle style) {}

  @Override
  public void close() {}

  private record Image(Element svg, double width, double height, double scale) implements SVGImage {

    @Override
    public int getIntrinsicWidth() {
      return (int) Math.round(width);
    }

    @Override
    public int getIntrinsicHeight() {
      return (int) Math.round(height);
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
      new PaperDrawing(device, x, y, scale).draw(svg);
    }
  }
}
