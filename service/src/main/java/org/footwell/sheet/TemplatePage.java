package org.footwell.sheet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.footwell.calculation.text.Texts;

/**
 * A page made by a template from what it shows.
 *
 * @param template its file, such as {@code vehicle/customer.jte}
 * @param shows the parameter of that name
 */
public record TemplatePage(String template, Object shows) {

  /** Made when first asked for. */
  private static final class Engine {
    private static final TemplateEngine TEMPLATES =
        TemplateEngine.createPrecompiled(ContentType.Html);
  }

  /** For a screen, light or dark, and for its printer; who sees it may want it on paper next. */
  public byte[] html() {
    Paper.prepareAside();
    return markup(false).getBytes(StandardCharsets.UTF_8);
  }

  /** For paper: the same bytes for the same page. */
  public byte[] pdf() {
    return Paper.pdf(markup(true));
  }

  private String markup(boolean paper) {
    StringOutput out = new StringOutput(32_768);
    Engine.TEMPLATES.render(template, Map.of("shows", shows, "paper", paper), out);
    return Texts.shown(out.toString());
  }
}
