package org.footwell.parts.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;

/** What a channel hangs on: outputs that its amplifier has, and that no other hangs on. */
@Check.Of(
    value = {
      "amplifiers.*.id",
      "amplifiers.*.outputs.*.id",
      "amplifiers.*.outputs.*.output_count",
      "channels.*.amplifier",
      "channels.*.outputs"
    },
    says =
        "channels.*.outputs are outputs of the amplifier, each used once; those of a bridge are two"
            + " of the same entry.")
final class FreeOutputs implements Check<VehiclePlan> {

  @Override
  public void check(VehiclePlan plan, Refusing to) {
    Set<String> used = new HashSet<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      check(plan, plan.channels().get(c), "/channels/" + c, used, to);
    }
  }

  private static void check(
      VehiclePlan plan, PlannedChannel channel, String at, Set<String> used, Refusing to) {
    PlannedAmplifier amplifier =
        plan.amplifiers().stream()
            .filter(one -> one.id().equals(channel.amplifier()))
            .findFirst()
            .orElse(null);
    if (amplifier == null) {
      return; // told by the rule already
    }
    List<String> known = amplifier.outputs().stream().flatMap(o -> o.ids().stream()).toList();
    for (int o = 0; o < channel.outputs().size(); o++) {
      String output = channel.outputs().get(o);
      String pointer = at + "/outputs/" + o;
      if (!known.contains(output)) {
        to.refuse(CoreFault.DANGLING_REFERENCE)
            .at(pointer)
            .given(output)
            .with("nearest", Names.didYouMean(output, known))
            .allowed(Phrase.of(OutputsOf.OF_AMPLIFIER).own("amplifier", channel.amplifier()));
      } else if (o == 1 && output.equals(channel.outputs().get(0))) {
        to.refuse(PlanFault.BRIDGE_OF_ONE).at(pointer).given(output);
      } else if (o == 1 && !alike(amplifier, channel.outputs())) {
        to.refuse(PlanFault.BRIDGE_OF_UNLIKE).at(pointer).given(output);
      } else if (!used.add(channel.amplifier() + "/" + output)) {
        to.refuse(PlanFault.OUTPUT_USED_TWICE)
            .at(pointer)
            .given(channel.amplifier() + "/" + output);
      }
    }
  }

  private static boolean alike(PlannedAmplifier amplifier, List<String> pair) {
    return amplifier.outputs().stream().anyMatch(group -> group.ids().containsAll(pair));
  }
}
