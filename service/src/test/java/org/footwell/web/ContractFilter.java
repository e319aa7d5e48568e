package org.footwell.web;

import io.restassured.filter.Filter;
import io.restassured.filter.FilterContext;
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.footwell.web.request.Exchange;

/** Fails every exchange of REST Assured that does not fit the contract. */
final class ContractFilter implements Filter {

  private final ContractCheck check;

  ContractFilter(ContractDocument contract) {
    this.check = new ContractCheck(contract);
  }

  @Override
  public Response filter(
      FilterableRequestSpecification request,
      FilterableResponseSpecification expected,
      FilterContext context) {
    Response answer = context.next(request, expected);
    ContractCheck.Asked asked =
        new ContractCheck.Asked(
            request.getMethod(),
            URI.create(request.getURI()),
            Exchange.mediaType(request.getContentType()),
            text(request.getBody()));
    ContractCheck.Told told =
        new ContractCheck.Told(
            answer.statusCode(),
            Exchange.mediaType(answer.contentType()),
            answer::header,
            new String(answer.asByteArray(), StandardCharsets.UTF_8));
    List<String> faults = check.faults(asked, told);
    if (!faults.isEmpty()) {
      throw new AssertionError(
          asked.method() + " " + asked.uri() + " is not as the contract says: " + faults);
    }
    return answer;
  }

  private static String text(Object body) {
    return body instanceof byte[] bytes
        ? new String(bytes, StandardCharsets.UTF_8)
        : body == null ? "" : body.toString();
  }
}
