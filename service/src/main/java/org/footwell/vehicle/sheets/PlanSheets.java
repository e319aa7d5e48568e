package org.footwell.vehicle.sheets;

import java.util.List;
import java.util.function.Function;
import org.footwell.calculation.Shown;
import org.footwell.calculation.View;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.sheet.TemplatePage;
import org.footwell.vehicle.PlanReviewResult;
import org.footwell.vehicle.packages.PackageOptionsRequest;
import org.footwell.vehicle.packages.PackageOptionsResult;

/** The sheets drawn from a plan and its review. */
public final class PlanSheets {

  private static final String HTML = "text/html;charset=utf-8";
  private static final String PDF = "application/pdf";

  /** Each of them for a screen and for paper. */
  public static final List<View<VehiclePlan, PlanReviewResult>> VIEWS =
      List.of(
          view("html", HTML, "the customer's sheet", shown -> customer(shown).html()),
          view("pdf", PDF, "the customer's sheet on paper", shown -> customer(shown).pdf()),
          view("fitter.html", HTML, "the fitter's sheets", shown -> fitter(shown).html()),
          view("fitter.pdf", PDF, "the fitter's sheets on paper", shown -> fitter(shown).pdf()),
          view(
              "setup_csv",
              "text/csv;charset=utf-8",
              "the setup sheet, a row a channel",
              SetupSheet::csv),
          view(
              "setup_text",
              "text/plain;charset=utf-8",
              "the setup sheet to print",
              SetupSheet::text));

  /** Packages to choose from, for a screen and for paper. */
  public static final List<View<PackageOptionsRequest, PackageOptionsResult>> OF_PACKAGES =
      List.of(
          new View<>("html", HTML, "the packages side by side", shown -> packages(shown).html()),
          new View<>("pdf", PDF, "the same on paper", shown -> packages(shown).pdf()));

  private PlanSheets() {}

  private static TemplatePage packages(Shown<PackageOptionsRequest, PackageOptionsResult> shown) {
    return new TemplatePage("vehicle/packages.jte", new PackagesSheet(shown));
  }

  private static View<VehiclePlan, PlanReviewResult> view(
      String format,
      String mediaType,
      String description,
      Function<Shown<VehiclePlan, PlanReviewResult>, byte[]> draw) {
    return new View<>(format, mediaType, description, draw);
  }

  private static TemplatePage customer(Shown<VehiclePlan, PlanReviewResult> shown) {
    return new TemplatePage("vehicle/customer.jte", new CustomerSheet(shown));
  }

  private static TemplatePage fitter(Shown<VehiclePlan, PlanReviewResult> shown) {
    return new TemplatePage("vehicle/fitter.jte", new FitterSheet(shown));
  }
}
