package org.footwell.web;

import org.footwell.web.request.Json;

import io.avaje.validation.Validator;
import jakarta.validation.Validation;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.acoustic.level.SoundLevelRequest;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The two engines for the constraints on records, on a valid sound-level request. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ValidationBenchmark {

  private final Validator generated = Validator.builder().build();
  private final jakarta.validation.Validator reflective =
      Validation.byDefaultProvider()
          .configure()
          .messageInterpolator(new ParameterMessageInterpolator())
          .buildValidatorFactory()
          .getValidator();
  private SoundLevelRequest request;

  @Setup
  public void prepare() throws IOException {
    request = Json.MAPPER.readValue(new SoundLevel().card().example(), SoundLevelRequest.class);
  }

  @Benchmark
  public Object avaje() {
    return generated.check(request);
  }

  @Benchmark
  public Object hibernate() {
    return reflective.validate(request);
  }
}
