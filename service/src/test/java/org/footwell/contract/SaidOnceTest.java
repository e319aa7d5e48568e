package org.footwell.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said twice is said once, and nothing else is lost. */
class SaidOnceTest {

  private static JsonNode read(String json) throws IOException {
    return new ObjectMapper().readTree(json.replace('\'', '"'));
  }

  private static JsonNode schemas(String schemas) throws IOException {
    String contract = "{'paths':{},'components':{'parameters':{},'schemas':{" + schemas + "}}}";
    return SaidOnce.of((ObjectNode) read(contract)).at("/components/schemas");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        // bounds that are not exclusive
        "{'minimum':1,'exclusiveMinimum':false,'exclusiveMaximum':true}"
            + "|{'minimum':1,'exclusiveMaximum':true}",
        "{'exclusiveMinimum':0}|{'exclusiveMinimum':0}",
        // the sentence of a list at its entries
        "{'description':'Gains','items':{'type':'number','description':'Gains'}}"
            + "|{'description':'Gains','items':{'type':'number'}}",
        "{'description':'Gains','items':{'description':'One gain'}}"
            + "|{'description':'Gains','items':{'description':'One gain'}}",
        "{'description':'Inputs','additionalProperties':{'description':'Inputs'}}"
            + "|{'description':'Inputs','additionalProperties':{}}",
        // examples are left alone
        "{'example':{'exclusiveMinimum':false}}|{'example':{'exclusiveMinimum':false}}",
      })
  void aSchema(String from, String to) throws IOException {
    assertEquals(read(to), schemas("'Any':" + from).get("Any"));
  }

  @Test
  void aRecordSaysWhatAllWhoReferToItSay() throws IOException {
    String place = "{'description':'The cable','allOf':[{'$ref':'#/components/schemas/Cable'}]}";
    JsonNode schemas =
        schemas("'Cable':{},'One':{'properties':{'cable':" + place + ",'spare':" + place + "}}");
    assertEquals(read("{'description':'The cable'}"), schemas.get("Cable"));
    JsonNode reference = read("{'$ref':'#/components/schemas/Cable'}");
    assertEquals(reference, schemas.at("/One/properties/cable"));
    assertEquals(reference, schemas.at("/One/properties/spare"));
  }

  @Test
  void aRecordKeepsSilentWhereItIsReferredToInOtherWords() throws IOException {
    String reference = "'allOf':[{'$ref':'#/components/schemas/Cable'}]}";
    JsonNode schemas =
        schemas(
            "'Cable':{'description':'The other cable'},'One':{'properties':{"
                + "'cable':{'description':'The cable',"
                + reference
                + ",'spare':{'description':'The other cable',"
                + reference
                + "}}");
    assertEquals(read("{}"), schemas.get("Cable"));
    assertEquals("The cable", schemas.at("/One/properties/cable/description").asText());
    assertEquals("The other cable", schemas.at("/One/properties/spare/description").asText());
  }

  @Test
  void anEntryOfAListDoesNotSayWhatTheListIs() throws IOException {
    JsonNode schemas =
        schemas(
            "'Fault':{'description':'Every fault'},"
                + "'All':{'description':'Every fault','items':{'$ref':'#/components/schemas/Fault'}}");
    assertEquals(read("{}"), schemas.get("Fault"));
    assertEquals("Every fault", schemas.at("/All/description").asText());
  }

  @Test
  void aParameterThatSeveralHaveIsDeclaredOnce() throws IOException {
    String power =
        "{'in':'query','name':'power_w','description':'Power','example':2,"
            + "'schema':{'description':'Power','example':1}}";
    String other = power.replace("Power", "Other power");
    String contract =
        "{'paths':{'/a':{'get':{'parameters':["
            + power
            + ","
            + other
            + ",{'name':'own'}]}},"
            + "'/b':{'get':{'parameters':["
            + power
            + ","
            + other
            + "]}}},"
            + "'components':{'parameters':{},'schemas':{}}}";
    JsonNode once = SaidOnce.of((ObjectNode) read(contract));
    assertEquals(
        read(
            "[{'$ref':'#/components/parameters/power_w'},{'$ref':'#/components/parameters/power_w-2'},"
                + "{'name':'own'}]"),
        once.at("/paths/~1a/get/parameters"));
    assertEquals(
        read("{'in':'query','name':'power_w','description':'Power','example':2,'schema':{}}"),
        once.at("/components/parameters/power_w"));
  }
}
