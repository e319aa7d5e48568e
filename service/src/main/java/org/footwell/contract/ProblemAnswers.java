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

  /** An answer by its name in the contract. */
  private record Shared(int status, String name, String meaning) {}

  /** What any request can meet before it reaches an operation. */
  private static final List<Shared> OF_ANY_REQUEST =
      List.of(
          new Shared(400, "Unreadable", "The body or address is not well formed"),
          new Shared(406, "NotAcceptable", "None of the formats or codings asked for can be given"),
          new Shared(414, "AddressTooLong", "The address is too long"),
          new Shared(417, "ExpectationNotMet", "The header Expect asks for more than 100-continue"),
          new Shared(426, "NewerProtocol", "The request is in a newer protocol than HTTP/1.1"),
          new Shared(431, "HeadersTooLarge", "The headers are too large"),
          new Shared(505, "UnknownProtocol", "The request is in an unknown version of HTTP"));

  private static final List<Shared> OF_CALCULATIONS =
      List.of(
          new Shared(401, "KeyNeeded", "The service wants a key, and knows none of the request's"),
          new Shared(404, "NotFound", "No such calculation"),
          new Shared(405, "WrongMethod", "The method is not allowed here"),
          new Shared(413, "TooLarge", "The body is larger than this operation takes"),
          new Shared(415, "WrongContentType", "The content type, or its coding, is not read here"),
          new Shared(422, "Invalid", "Readable but impossible, with every fault"),
          new Shared(429, "TooManyCalls", "More calls, or requests at a time, than are allowed"),
          new Shared(500, "Failed", "The service failed"),
          new Shared(
              503,
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
        one ->
            responses.addApiResponse(
                Integer.toString(one.status()), new ApiResponse().$ref(one.name())));
  }
}
