package org.footwell.calculation;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a record of many components, which is put together by name: the build writes its builder. What
 * is not given is nothing, so that the defaults of its constructor hold.
 */
@RecordBuilder.Template(
    options =
        @RecordBuilder.Options(
            inheritComponentAnnotations = false,
            enableWither = false,
            enableGetters = false,
            addStaticBuilder = false))
@Retention(RetentionPolicy.SOURCE)
@Target(ElementType.TYPE)
public @interface Built {}
