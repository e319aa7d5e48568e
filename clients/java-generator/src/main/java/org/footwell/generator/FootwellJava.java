package org.footwell.generator;

import com.google.common.collect.ImmutableMap;
import com.samskivert.mustache.Mustache;
import io.swagger.v3.oas.models.OpenAPI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openapitools.codegen.CodegenModel;
import org.openapitools.codegen.languages.JavaClientCodegen;
import org.openapitools.codegen.model.ModelsMap;
import org.openapitools.codegen.templating.mustache.IndentedLambda;

/** The generator's Java, with parts nested in their owners and with generic envelopes. */
public class FootwellJava extends JavaClientCodegen {

  private final Map<String, String> owners = new TreeMap<>();
  private final Map<String, String> envelopes = new TreeMap<>();

  /** All names are given here: whatever the generator writes, it takes them from its mapping. */
  @Override
  public void setOpenAPI(OpenAPI contract) {
    super.setOpenAPI(contract);
    envelopes.putAll(Envelopes.of(contract));
    owners.putAll(new Parts(contract).owners());
    modelNameMapping().putAll(envelopes);
    owners.keySet().forEach(part -> modelNameMapping().put(part, nested(part)));
  }

  private String nested(String schema) {
    String owner = owners.get(schema);
    return owner == null ? schema : nested(owner) + "." + Parts.shortName(schema, owner);
  }

  /** A part goes to its owner instead of a file of its own; envelopes are written by hand. */
  @Override
  public Map<String, ModelsMap> postProcessAllModels(Map<String, ModelsMap> models) {
    Map<String, ModelsMap> written = new TreeMap<>(super.postProcessAllModels(models));
    // The template looks no further out for the parts of a model than this list.
    written.values().forEach(one -> extensions(one).put("x-parts", new ArrayList<CodegenModel>()));
    owners.forEach(
        (part, owner) -> {
          extensions(written.get(part)).put("x-short-name", Parts.shortName(part, owner));
          parts(written.get(owner)).add(model(written.get(part)));
        });
    written.keySet().removeAll(owners.keySet());
    written.keySet().removeAll(envelopes.keySet());
    return written;
  }

  private static CodegenModel model(ModelsMap one) {
    return one.getModels().get(0).getModel();
  }

  private static Map<String, Object> extensions(ModelsMap one) {
    return model(one).getVendorExtensions();
  }

  @SuppressWarnings("unchecked") // put there above
  private static List<CodegenModel> parts(ModelsMap one) {
    return (List<CodegenModel>) extensions(one).get("x-parts");
  }

  @Override
  protected ImmutableMap.Builder<String, Mustache.Lambda> addMustacheLambdas() {
    return super.addMustacheLambdas().put("nested", new IndentedLambda(2, " ", true, true));
  }
}
