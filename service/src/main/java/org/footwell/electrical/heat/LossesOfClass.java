package org.footwell.electrical.heat;

import static org.footwell.parts.OutputClass.CLASS_AB;
import static org.footwell.parts.OutputClass.CLASS_D;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Given;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.heat.AmplifierHeatRequest.ChannelStage;

/** What a stage loses is told as its class asks. */
@Check.Of(
    value = {"output_class", "quiescent_current_a", "class_d"},
    says = "quiescent_current_a with class_ab and no other class, class_d likewise with class_d.")
final class LossesOfClass implements Check<ChannelStage> {

  @Override
  public void check(ChannelStage channel, Refusing to) {
    quiescent(channel.outputClass() == CLASS_AB, channel.quiescentCurrentA(), to);
    switching(channel.outputClass() == CLASS_D, channel.classD() != null, to);
  }

  private static void quiescent(boolean classAb, Double quiescent, Refusing to) {
    if (classAb && quiescent == null) {
      to.refuse(HeatFault.NEEDED_FOR_CLASS)
          .at("/quiescent_current_a")
          .allowed(Phrase.of(HeatWords.QUIESCENT_CURRENT))
          .field("class", "class_ab");
    } else if (!classAb && quiescent != null) {
      to.refuse(HeatFault.NOT_FOR_CLASS)
          .at("/quiescent_current_a")
          .given(quiescent)
          .field("class", "class_ab");
    }
  }

  private static void switching(boolean classD, boolean given, Refusing to) {
    if (classD && !given) {
      to.refuse(HeatFault.NEEDED_FOR_CLASS)
          .at("/class_d")
          .allowed(
              Phrase.of(HeatWords.CLASS_D_LOSSES)
                  .field("idle", "idle_loss_w")
                  .field("on", "on_ohm")
                  .field("efficiency", "full_power_efficiency"))
          .field("class", "class_d");
    } else if (!classD && given) {
      to.refuse(HeatFault.NOT_FOR_CLASS)
          .at("/class_d")
          .given(Given.GROUP)
          .field("class", "class_d");
    }
  }
}
