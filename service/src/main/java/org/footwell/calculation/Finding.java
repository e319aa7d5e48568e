package org.footwell.calculation;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;

/** Something a fitter should know about the answer. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Finding(
    @Schema(description = "How bad it is") Verdict level,
    @Schema(description = "Stable code") String code,
    @Schema(description = "The sentence a fitter would say") String text,
    @Schema(description = "In a plan, the part of it that the finding is about") String subject,
    @Schema(description = "JSON Pointer to the field of the request it is about") String pointer,
    @Schema(description = "The value found, in the unit of the sentence") Double value,
    @Schema(description = "The limit it is held against, in the same unit") Double limit) {}
