import java.util.Currency;

/** Every currency that sums are rounded in, with how many decimals Java gives it, as the service has them. */
class Currencies {
  public static void main(String[] none) {
    Currency.getAvailableCurrencies().stream()
        .filter(one -> one.getDefaultFractionDigits() >= 0)
        .forEach(one -> System.out.println(one + " " + one.getDefaultFractionDigits()));
  }
}
