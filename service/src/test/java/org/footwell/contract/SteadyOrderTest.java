package org.footwell.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.Test;

class SteadyOrderTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  private static String steady(String contract) throws JsonProcessingException {
    return SteadyOrder.of((ObjectNode) JSON.readTree(contract)).toString();
  }

  @Test
  void aDefaultStandsBehindItsConstantsWhicheverCameFirst() throws JsonProcessingException {
    String wanted =
        "{\"list\":[{\"type\":\"string\",\"enum\":[\"a\",\"b\"],\"default\":\"a\"}],\"minimum\":1}";
    assertEquals(wanted, steady(wanted));
    assertEquals(
        wanted,
        steady(
            "{\"list\":[{\"type\":\"string\",\"default\":\"a\",\"enum\":[\"a\",\"b\"]}],\"minimum\":1}"));
  }

  @Test
  void anyOtherDefaultStaysWhereItIs() throws JsonProcessingException {
    String number = "{\"default\":1.0,\"type\":\"number\",\"minimum\":0}";
    assertEquals(number, steady(number));
  }
}
