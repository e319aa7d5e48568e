package org.footwell.contract;

import java.util.List;

/** All codes on one page, for people. */
final class CodePage {

  private static final String HEAD =
      """
      <!DOCTYPE html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <meta name="viewport" content="width=device-width, initial-scale=1">
      <title>Footwell codes</title>
      <link rel="icon" href="/reference/favicon.svg" type="image/svg+xml">
      <style>
      :root { color-scheme: light dark }
      body { font-family: sans-serif; margin: 1rem auto; max-width: 75rem; padding: 0 1rem; line-height: 1.4 }
      table { border-collapse: collapse; width: 100% }
      th, td { border-bottom: 1px solid #888; padding: .4rem; text-align: left; vertical-align: top }
      td:first-child { overflow-wrap: anywhere; min-width: 10rem }
      /* A narrow screen has no room for columns: what belongs to a code stands below it. */
      @media (max-width: 40rem) {
        thead { display: none }
        table, tbody, tr, td { display: block }
        tr { border-bottom: 1px solid #888; padding: .6rem 0 }
        td { border: 0; padding: .1rem 0 }
      }
      </style>
      </head>
      <body>
      <h1>Footwell codes</h1>
      <p>Every code that a finding or a refusal may have, with its sentence, what to do, and who gives
      it. Names in braces stand for what the answer puts there. The same as JSON is at
      <a href="/codes.json">/codes.json</a>; the calculations are explained in the
      <a href="/">reference</a>.</p>
      <table>
      <thead><tr><th>code<th>level<th>sentence and what to do<th>calculations</tr></thead>
      <tbody>
      """;

  private CodePage() {}

  static String of(List<PublishedCode> codes, int calculations) {
    StringBuilder page = new StringBuilder(HEAD);
    for (PublishedCode one : codes) {
      boolean everyone = one.calculations().size() == calculations;
      page.append("<tr><td><code>").append(one.code()).append("</code><td>").append(one.level());
      page.append("<td>").append(escaped(one.text()));
      if (one.advice() != null) {
        page.append(" <strong>").append(escaped(one.advice())).append("</strong>");
      }
      page.append("<td>")
          .append(everyone ? "all" : String.join(", ", one.calculations()))
          .append("</tr>\n");
    }
    return page.append("</tbody>\n</table>\n</body>\n</html>\n").toString();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
