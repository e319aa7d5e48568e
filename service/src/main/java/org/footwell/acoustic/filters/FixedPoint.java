package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FiltersFault.FRACTION_LONGER_THAN_WORD;
import static org.footwell.calculation.CoreFault.REQUIRED;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.signal.CoefficientFormat;

/** A fixed point stands somewhere in a word of so many bits. */
@Check.Of(
    value = {"kind", "word_bits", "fraction_bits"},
    says = "Of kind fixed word_bits is required, and fraction_bits, which is smaller.")
final class FixedPoint implements Check<CoefficientFormat> {

  @Override
  public void check(CoefficientFormat format, Refusing to) {
    if (format.kind() != CoefficientFormat.Kind.FIXED) {
      return;
    }
    if (format.wordBits() == null) {
      to.refuse(REQUIRED).at("/word_bits");
    }
    if (format.fractionBits() == null) {
      to.refuse(REQUIRED).at("/fraction_bits");
    } else if (format.wordBits() != null && format.fractionBits() >= format.wordBits()) {
      to.refuse(FRACTION_LONGER_THAN_WORD)
          .at("/fraction_bits")
          .given(format.fractionBits())
          .allowed(Allowed.atMost(format.wordBits() - 1, ""));
    }
  }
}
