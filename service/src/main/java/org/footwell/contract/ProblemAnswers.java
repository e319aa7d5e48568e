package org.footwell.contract;

import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import java.util.List;

/** The problem answers: each is declared once in the contract, and operations refer to it. */
final class ProblemAnswers {

  /** An answer by its name in the contract, and the status or range of statuses it comes with. */
  private record Shared(String status, String name, String meaning) {}

  /**
   * What any request can meet before it reaches an operation. It is the same everywhere, so that a
   * range of statuses stands at the operations and the list of them once.
   */
  private static final List<Shared> OF_ANY_REQUEST =
      List.of(
          new Shared(
              "4XX",
              "Unserved",
              """
              The request cannot be read or served as it was sent: \
              400 the body or address is not well formed, \
              404 nothing has this address, \
              405 the method is not allowed here, \
              406 none of the formats or codings asked for can be given, \
              413 the body is larger than this operation takes, \
              414 the address is too long, \
              415 the content type, or its coding, is not read here, \
              417 the header Expect asks for more than 100-continue, \
              426 the request is in a newer protocol than HTTP/1.1, \
              431 the headers are too large"""),
          new Shared(
              "5XX",
              "Failed",
              "500 the service failed, 505 the request is in an unknown version of HTTP"));

  private static final List<Shared> OF_CALCULATIONS =
      List.of(
          new Shared(
              "401", "KeyNeeded", "The service wants a key, and knows none of the request's"),
          new Shared("422", "Invalid", "Readable but impossible, with every fault"),
          new Shared("429", "TooManyCalls", "More calls, or requests at a time, than are allowed"),
          new Shared(
              "503",
              "NotNow",
              "The calculation ran past its deadline, or the service is busy or stopping"));

  private final Schemas schemas;

  ProblemAnswers(Schemas schemas, Components components) {
    this.schemas = schemas;
    for (List<Shared> some : List.of(OF_ANY_REQUEST, OF_CALCULATIONS)) {
      some.forEach(one -> components.addResponses(one.name(), own(one.meaning())));
    }
    header(components, "KeyNeeded", "WWW-Authenticate", "Bearer, and what was wrong with a key");
    header(components, "TooManyCalls", "Retry-After", "Seconds until the next call may be made");
    header(components, "TooManyCalls", "RateLimit-Policy", "What a caller may do");
    header(components, "TooManyCalls", "RateLimit", "What this one has left of it");
  }

  private void header(Components components, String answer, String name, String description) {
    components
        .getResponses()
        .get(answer)
        .addHeaderObject(
            name, new Header().description(description).schema(schemas.plain("string")));
  }

  /** A problem that is described where it stands. */
  ApiResponse own(String meaning) {
    return new ApiResponse()
        .description(meaning)
        .content(
            new Content()
                .addMediaType(
                    "application/problem+json",
                    new MediaType().schema(schemas.reference("Problem"))));
  }

  /** What an operation of a calculation can meet. */
  ApiResponses ofCalculation() {
    ApiResponses responses = ofAnyRequest();
    refer(OF_CALCULATIONS, responses);
    return responses;
  }

  ApiResponses ofAnyRequest() {
    ApiResponses responses = new ApiResponses();
    refer(OF_ANY_REQUEST, responses);
    return responses;
  }

  private static void refer(List<Shared> answers, ApiResponses responses) {
    answers.forEach(
        one -> responses.addApiResponse(one.status(), new ApiResponse().$ref(one.name())));
  }
}
