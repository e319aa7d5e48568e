package org.footwell;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Random properties draw the same numbers in every build: a build that failed fails again, and one
 * that passed says something about the change and not about the draw. {@code -Dfootwell.seed} takes
 * another seed, or {@code random} for one of each property's own, which jqwik prints when it fails.
 */
public final class FixedSeed implements AroundPropertyHook {

  private static final String SEED = System.getProperty("footwell.seed", "1");

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    if (!SEED.equals("random") && context.attributes().seed().isEmpty()) {
      context.attributes().setSeed(SEED);
    }
    return property.execute();
  }

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }
}
