package org.footwell.signal;

import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Names;

/** A section has what its kind has, and nothing else. */
@Check.Of(
    value = {"kind", "q", "gain_db"},
    says = "q and gain_db are required where the kind has them, and have no meaning where not.")
final class SectionMembers implements Check<EqualiserSection> {

  @Override
  public void check(EqualiserSection section, Refusing to) {
    SectionKind kind = section.kind();
    member("q", section.q(), kind.takesQ(), kind, to);
    member("gain_db", section.gainDb(), kind.takesGain(), kind, to);
  }

  private static void member(
      String name, Double value, boolean taken, SectionKind kind, Refusing to) {
    if (taken && value == null) {
      to.refuse(CoreFault.REQUIRED).at("/" + name);
    } else if (!taken && value != null) {
      to.refuse(SectionFault.SECTION_WITHOUT_SUCH)
          .at("/" + name)
          .given(value)
          .field("kind", Names.of(kind))
          .field("what", name);
    }
  }
}
