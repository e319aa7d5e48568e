package org.footwell.sheet;

import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.extend.OutputDevice;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Iterator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The few elements of SVG that the plots and diagrams of this house are made of, in black on white:
 * svg, g, path (M, L, H, V, h, v, Z), rect, circle, text, clipPath, title. Anything else is an error, so that
 * nothing is left out unseen.
 */
final class PaperDrawing {

  private static final Pattern STEP = Pattern.compile("([MLHVhvZ])|(-?[0-9.]+)");
  private static final Pattern MOVED =
      Pattern.compile("translate\\((-?[0-9.]+) (-?[0-9.]+)\\)(?: rotate\\((-?[0-9.]+)\\))?");
  private static final float FULL_DASH = 1;

  /** Ink of the page, 0 to 255. */
  private static final int INK = 0x22;

  private static final int PAPER = 0xff;

  private final OutputDevice device;
  private final AffineTransform page;

  PaperDrawing(OutputDevice device, double x, double y, double scale) {
    this.device = device;
    page = AffineTransform.getTranslateInstance(x, y);
    page.scale(scale, scale);
  }

  void draw(Element svg) {
    children(svg, page);
  }

  private void children(Element parent, AffineTransform at) {
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        element(element, moved(element, at));
      }
    }
  }

  private void element(Element element, AffineTransform at) {
    switch (element.getTagName()) {
      case "title", "desc", "clipPath", "style" -> {}
      case "svg", "g" -> group(element, at);
      case "path" -> shape(element, path(element.getAttribute("d")), at);
      case "rect" -> shape(element, rectangle(element), at);
      case "circle" -> shape(element, circle(element), at);
      case "text" -> text(element, at);
      default -> throw new IllegalArgumentException("not drawn on paper: " + element.getTagName());
    }
  }

  private static AffineTransform moved(Element element, AffineTransform at) {
    AffineTransform moved = new AffineTransform(at);
    if (element.getTagName().equals("svg")) {
      moved.translate(number(element, "x", 0), number(element, "y", 0));
    }
    String transform = element.getAttribute("transform");
    if (!transform.isEmpty()) {
      Matcher parts = MOVED.matcher(transform);
      if (!parts.matches()) {
        throw new IllegalArgumentException("not drawn on paper: " + transform);
      }
      moved.translate(Double.parseDouble(parts.group(1)), Double.parseDouble(parts.group(2)));
      if (parts.group(3) != null) {
        moved.rotate(Math.toRadians(Double.parseDouble(parts.group(3))));
      }
    }
    return moved;
  }

  private void group(Element element, AffineTransform at) {
    Shape clip = clip(element, at);
    if (clip != null) {
      device.pushClip(clip);
    }
    children(element, at);
    if (clip != null) {
      device.popClip();
    }
  }

  private static Shape clip(Element element, AffineTransform at) {
    String reference = element.getAttribute("clip-path");
    if (reference.isEmpty()) {
      return null;
    }
    String id = reference.substring("url(#".length(), reference.length() - 1);
    Element top = element.getOwnerDocument().getDocumentElement();
    for (Node node = element.getParentNode(); node instanceof Element above && above != top; ) {
      for (Node child = above.getFirstChild(); child != null; child = child.getNextSibling()) {
        if (child instanceof Element found && found.getAttribute("id").equals(id)) {
          return at.createTransformedShape(
              rectangle((Element) found.getElementsByTagName("rect").item(0)));
        }
      }
      node = above.getParentNode();
    }
    throw new IllegalArgumentException("no such area: " + id);
  }

  private void shape(Element element, Shape shape, AffineTransform at) {
    Shape placed = at.createTransformedShape(shape);
    if (!said(element, "fill", "currentColor").equals("none")) {
      ink(element);
      device.fill(placed);
    }
    if (!said(element, "stroke", "none").equals("none")) {
      ink(element);
      device.setStroke(stroke(element, (float) at.getScaleX()));
      device.draw(placed);
    }
  }

  private static BasicStroke stroke(Element element, float scale) {
    float width = Float.parseFloat(said(element, "stroke-width", "1")) * scale;
    String dashes = said(element, "stroke-dasharray", "none");
    if (dashes.equals("none")) {
      return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    String[] lengths = dashes.split(" ", -1);
    float[] pattern = new float[lengths.length];
    for (int i = 0; i < lengths.length; i++) {
      pattern[i] = Float.parseFloat(lengths[i]) * scale;
    }
    return new BasicStroke(
        width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, FULL_DASH, pattern, 0);
  }

  /** What lets the paper through becomes lighter. */
  private void ink(Element element) {
    double opacity = 1;
    for (Node node = element; node instanceof Element above; node = node.getParentNode()) {
      opacity *= number(above, "opacity", 1);
    }
    int shade = (int) Math.round(PAPER + (INK - PAPER) * opacity);
    device.setColor(new FSRGBColor(shade, shade, shade));
  }

  private void text(Element element, AffineTransform at) {
    double size = Double.parseDouble(said(element, "font-size", "12"));
    boolean bold = said(element, "font-weight", "normal").equals("bold");
    Outlines.Line line = Outlines.of(bold).line(element.getTextContent(), size);
    double start =
        switch (said(element, "text-anchor", "start")) {
          case "middle" -> -line.width() / 2;
          case "end" -> -line.width();
          default -> 0;
        };
    AffineTransform placed = new AffineTransform(at);
    placed.translate(number(element, "x", 0) + start, number(element, "y", 0));
    ink(element);
    device.fill(placed.createTransformedShape(line.shape()));
  }

  private static Rectangle2D rectangle(Element element) {
    return new Rectangle2D.Double(
        number(element, "x", 0),
        number(element, "y", 0),
        number(element, "width", 0),
        number(element, "height", 0));
  }

  private static Ellipse2D circle(Element element) {
    double r = number(element, "r", 0);
    return new Ellipse2D.Double(
        number(element, "cx", 0) - r, number(element, "cy", 0) - r, 2 * r, 2 * r);
  }

  private static Path2D path(String steps) {
    if (!STEP.matcher(steps).replaceAll("").isBlank()) {
      throw new IllegalArgumentException("not drawn on paper: " + steps);
    }
    Path2D path = new Path2D.Double();
    Iterator<String> pieces = STEP.matcher(steps).results().map(MatchResult::group).iterator();
    double x = 0;
    double y = 0;
    char command = 'M';
    while (pieces.hasNext()) {
      String piece = pieces.next();
      if (Character.isLetter(piece.charAt(0))) {
        command = piece.charAt(0);
        if (command == 'Z') {
          path.closePath();
          continue;
        }
        piece = pieces.next();
      }
      double number = Double.parseDouble(piece);
      x = command == 'h' ? x + number : "HML".indexOf(command) >= 0 ? number : x;
      y = command == 'v' ? y + number : command == 'V' ? number : y;
      y = command == 'M' || command == 'L' ? Double.parseDouble(pieces.next()) : y;
      if (command == 'M') {
        path.moveTo(x, y);
        command = 'L';
      } else {
        path.lineTo(x, y);
      }
    }
    return path;
  }

  /** An attribute of an element, or of the nearest around it that has one. */
  private static String said(Element element, String attribute, String otherwise) {
    for (Node node = element; node instanceof Element above; node = node.getParentNode()) {
      if (above.hasAttribute(attribute)) {
        return above.getAttribute(attribute);
      }
      if (above.getTagName().equals("svg") && !above.hasAttribute("y")) {
        break;
      }
    }
    return otherwise;
  }

  private static double number(Element element, String attribute, double otherwise) {
    String text = element.getAttribute(attribute);
    return text.isEmpty() ? otherwise : Double.parseDouble(text);
  }
}
