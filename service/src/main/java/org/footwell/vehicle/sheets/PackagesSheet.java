package org.footwell.vehicle.sheets;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.calculation.Shown;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.sheet.SpokenPage;
import org.footwell.sheet.WrittenFigure;
import org.footwell.vehicle.packages.PackageOptionsRequest;
import org.footwell.vehicle.packages.PackageOptionsResult;
import org.footwell.vehicle.packages.PackageOptionsResult.FilledSlot;
import org.footwell.vehicle.packages.PackageOptionsResult.OfferedPackage;

/** Packages side by side, for a customer to choose from. */
public final class PackagesSheet extends SpokenPage {

  private final VehiclePlan plan;
  private final PackageOptionsResult result;

  PackagesSheet(Shown<PackageOptionsRequest, PackageOptionsResult> shown) {
    super(shown.reader());
    plan = shown.request().plan();
    result = shown.answer().result();
  }

  /**
   * A package.
   *
   * @param parts what is in it, place by place
   */
  public record Choice(
      int number,
      List<String> parts,
      WrittenFigure level,
      WrittenFigure lowest,
      WrittenFigure heavier,
      WrittenFigure price) {}

  public String vehicle() {
    return plan.vehicle().name();
  }

  public List<Choice> choices() {
    return IntStream.range(0, result.packages().size())
        .mapToObj(i -> choice(i + 1, result.packages().get(i)))
        .toList();
  }

  private Choice choice(int number, OfferedPackage found) {
    return new Choice(
        number,
        Stream.concat(
                found.slots().stream().map(slot -> part(slot, found.plan())),
                found.plan().amplifiers().stream().map(PlannedAmplifier::calledName))
            .toList(),
        figures().of(Measure.DB_SPL, found.levelDbSpl()),
        figures().of(Measure.HZ, found.lowestHz()),
        figures().massChange(found.massChangeG()),
        figures().money(price(found), currency()));
  }

  private String part(FilledSlot slot, VehiclePlan whole) {
    return say(
        Phrase.of(slot.stays() ? PackagesWords.STAYS_IN : PackagesWords.GOES_IN)
            .own("part", whole.newPart(slot.part()).calledName())
            .own("slot", Names.spelt(slot.slot())));
  }

  /** What the customer pays where the plan says enough for that, else the price of all parts. */
  private BigDecimal price(OfferedPackage found) {
    return isQuoted() ? found.review().quote().total() : found.price();
  }

  private boolean isQuoted() {
    return plan.quote() != null;
  }

  /** What the price is of. */
  public String priceOf() {
    return say(isQuoted() ? PackagesWords.PRICE_WITH_TAX : PackagesWords.PRICE_OF_PARTS);
  }

  private Currency currency() {
    return plan.quote() == null ? null : plan.quote().inCurrency();
  }
}
