package org.footwell.vehicle.sheets;

import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.plan.Enclosure;
import org.footwell.sheet.FigureWriter;

/** What is behind a driver, in a few words. */
record EnclosureText(FigureWriter figures, Reader reader) {

  String of(Enclosure enclosure) {
    return phrase(enclosure).said(reader);
  }

  private Phrase phrase(Enclosure enclosure) {
    if (enclosure == null) {
      return Phrase.of(FitterWords.FREE_AIR);
    }
    if (enclosure.closed() != null) {
      return Phrase.of(FitterWords.CLOSED_BOX).own("volume", litres(enclosure.closed().volumeL()));
    }
    if (enclosure.vented() == null) {
      return Phrase.of(FitterWords.LEAKY);
    }
    String volume = litres(enclosure.vented().box().volumeL());
    Double fb = enclosure.vented().box().fbHz();
    return fb == null
        ? Phrase.of(FitterWords.VENTED_BY_PORT)
            .own("volume", volume)
            .own("length", figures.of(Measure.MM, enclosure.vented().port().lengthMm()).text())
        : Phrase.of(FitterWords.VENTED_BOX)
            .own("volume", volume)
            .own("tuning", figures.of(Measure.HZ, fb).text());
  }

  private String litres(Double volume) {
    return figures.of(Measure.L, volume).text();
  }
}
