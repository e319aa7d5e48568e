package org.footwell.measured.response;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.recording.Recording;

/** What one microphone position heard of one channel, without a loopback. */
public record ChannelTake(
    @Schema(description = "Id of the channel that played") @NotNull @Size(min = 1, max = 60)
        String channel,
    @Schema(description = "Id of the microphone position") @NotNull @Size(min = 1, max = 60)
        String microphone,
    @Schema(description = "What was recorded") @NotNull Recording recording)
    implements Taken {}
