package org.footwell.docker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import io.fabric8.kubernetes.api.model.Container;
import io.fabric8.kubernetes.api.model.ContainerPort;
import io.fabric8.kubernetes.api.model.EnvVar;
import io.fabric8.kubernetes.api.model.HasMetadata;
import io.fabric8.kubernetes.api.model.IntOrString;
import io.fabric8.kubernetes.api.model.PodSpec;
import io.fabric8.kubernetes.api.model.PodTemplateSpec;
import io.fabric8.kubernetes.api.model.Probe;
import io.fabric8.kubernetes.api.model.Quantity;
import io.fabric8.kubernetes.api.model.Service;
import io.fabric8.kubernetes.api.model.apps.Deployment;
import io.fabric8.kubernetes.api.model.autoscaling.v2.HorizontalPodAutoscaler;
import io.fabric8.kubernetes.api.model.networking.v1.NetworkPolicy;
import io.fabric8.kubernetes.api.model.networking.v1.NetworkPolicyIngressRule;
import io.fabric8.kubernetes.api.model.networking.v1.NetworkPolicySpec;
import io.fabric8.kubernetes.api.model.policy.v1.PodDisruptionBudget;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The manifests are what an orchestrator takes, to the last field, and fit each other. */
class KubernetesTest {

  private static final Map<String, Class<? extends HasMetadata>> KINDS =
      Map.of(
          "apps/v1 Deployment", Deployment.class,
          "v1 Service", Service.class,
          "networking.k8s.io/v1 NetworkPolicy", NetworkPolicy.class,
          "policy/v1 PodDisruptionBudget", PodDisruptionBudget.class,
          "autoscaling/v2 HorizontalPodAutoscaler", HorizontalPodAutoscaler.class);

  /** The types keep what they do not know; here a misspelt field is to be refused. */
  private static final ObjectMapper STRICT =
      new ObjectMapper(new YAMLFactory())
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .setAnnotationIntrospector(
              new JacksonAnnotationIntrospector() {
                private static final long serialVersionUID = 1;

                @Override
                public Boolean hasAnySetter(Annotated member) {
                  return false;
                }
              });

  private static final Map<Class<?>, HasMetadata> MANIFESTS = read(text());

  private static String text() {
    try {
      return Files.readString(Path.of("kubernetes.yaml"));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Map<Class<?>, HasMetadata> read(String text) {
    Map<Class<?>, HasMetadata> manifests = new LinkedHashMap<>();
    try (MappingIterator<ObjectNode> documents =
        STRICT.readerFor(ObjectNode.class).readValues(text)) {
      while (documents.hasNext()) {
        ObjectNode document = documents.next();
        String kind = document.get("apiVersion").asText() + " " + document.get("kind").asText();
        assertTrue(KINDS.containsKey(kind), kind);
        manifests.put(KINDS.get(kind), STRICT.treeToValue(document, KINDS.get(kind)));
      }
    } catch (IOException unfit) {
      throw new UncheckedIOException(unfit);
    }
    return manifests;
  }

  private static <T> T manifest(Class<T> kind) {
    return kind.cast(MANIFESTS.get(kind));
  }

  private static PodTemplateSpec pod() {
    return manifest(Deployment.class).getSpec().getTemplate();
  }

  private static Container container() {
    return pod().getSpec().getContainers().get(0);
  }

  private static Map<String, Integer> ports() {
    return container().getPorts().stream()
        .collect(Collectors.toMap(ContainerPort::getName, ContainerPort::getContainerPort));
  }

  private static Map<String, String> settings() {
    return container().getEnv().stream()
        .collect(Collectors.toMap(EnvVar::getName, EnvVar::getValue));
  }

  @Test
  void everyKindIsThereOnce() {
    assertEquals(KINDS.size(), MANIFESTS.size());
    MANIFESTS.values().forEach(one -> assertEquals("footwell", one.getMetadata().getName()));
  }

  @Test
  void aMisspeltFieldOrAWrongTypeWouldBeFound() {
    for (String[] change :
        new String[][] {
          {"readOnlyRootFilesystem", "readOnlyRootFileSystem"},
          {"podSelector:\n            match", "podSelecter:\n            match"},
          {"averageUtilization: 70", "averageUtilisation: 70"},
          {"minAvailable", "minAvailible"},
          {"periodSeconds: 10", "periodSeconds: ten"}
        }) {
      String wrong = text().replace(change[0], change[1]);
      assertTrue(!wrong.equals(text()), change[0]);
      UncheckedIOException refused =
          assertThrows(UncheckedIOException.class, () -> read(wrong), change[1]);
      assertTrue(refused.getCause() instanceof JsonMappingException, refused::toString);
    }
  }

  @Test
  void allThatSelectsPodsSelectsThese() {
    Map<String, String> labels = pod().getMetadata().getLabels();
    Stream.of(
            manifest(Deployment.class).getSpec().getSelector().getMatchLabels(),
            manifest(Service.class).getSpec().getSelector(),
            manifest(NetworkPolicy.class).getSpec().getPodSelector().getMatchLabels(),
            manifest(PodDisruptionBudget.class).getSpec().getSelector().getMatchLabels())
        .forEach(selector -> assertEquals(labels, selector));
    assertEquals(
        "Deployment footwell",
        Stream.of(manifest(HorizontalPodAutoscaler.class).getSpec().getScaleTargetRef())
            .map(target -> target.getKind() + " " + target.getName())
            .findFirst()
            .orElseThrow());
  }

  @Test
  void aDisruptionLeavesACopyOfThoseThereAreAtLeast() {
    int least = manifest(HorizontalPodAutoscaler.class).getSpec().getMinReplicas();
    IntOrString left = manifest(PodDisruptionBudget.class).getSpec().getMinAvailable();
    assertTrue(left.getIntVal() >= 1 && left.getIntVal() < least);
    assertEquals(null, manifest(Deployment.class).getSpec().getReplicas());
  }

  @Test
  void callersReachOnePortAndWhoeverScrapesTheOther() {
    assertEquals(
        Map.of(
            "http", Integer.valueOf(settings().get("FOOTWELL_PORT")),
            "metrics", Integer.valueOf(settings().get("FOOTWELL_METRICS_PORT"))),
        ports());
    assertEquals(
        settings().get("FOOTWELL_METRICS_PORT"),
        pod().getMetadata().getAnnotations().get("prometheus.io/port"));
    assertEquals(
        List.of("http"),
        manifest(Service.class).getSpec().getPorts().stream()
            .map(port -> port.getTargetPort().getStrVal())
            .toList());
    NetworkPolicySpec policy = manifest(NetworkPolicy.class).getSpec();
    assertEquals(List.of("Ingress", "Egress"), policy.getPolicyTypes());
    assertEquals(List.of(), policy.getEgress());
    Map<String, NetworkPolicyIngressRule> rules =
        policy.getIngress().stream()
            .collect(
                Collectors.toMap(
                    rule -> rule.getPorts().get(0).getPort().getStrVal(), rule -> rule));
    assertEquals(ports().keySet(), rules.keySet());
    assertEquals(List.of(), rules.get("http").getFrom());
    assertEquals(
        Map.of("app.kubernetes.io/name", "prometheus"),
        rules.get("metrics").getFrom().get(0).getPodSelector().getMatchLabels());
  }

  @Test
  void probesAskWhatIsThereAndACopyThatStopsIsNotReadyBeforeItsPortCloses() {
    Container footwell = container();
    for (Probe probe :
        List.of(
            footwell.getStartupProbe(),
            footwell.getLivenessProbe(),
            footwell.getReadinessProbe())) {
      assertEquals("http", probe.getHttpGet().getPort().getStrVal());
    }
    assertEquals("/health/ready", footwell.getReadinessProbe().getHttpGet().getPath());
    assertEquals("/health/live", footwell.getLivenessProbe().getHttpGet().getPath());
    assertEquals("/health/live", footwell.getStartupProbe().getHttpGet().getPath());
    int tellsAfterMs =
        1000
            * footwell.getReadinessProbe().getPeriodSeconds()
            * footwell.getReadinessProbe().getFailureThreshold();
    assertTrue(Integer.parseInt(settings().get("FOOTWELL_STOP_DELAY_MS")) > tellsAfterMs);
  }

  @Test
  void aCopyHasNoRightsItDoesNotNeedAndMemoryForItsHeap() throws IOException {
    PodSpec spec = pod().getSpec();
    assertEquals(false, spec.getAutomountServiceAccountToken());
    assertEquals(true, spec.getSecurityContext().getRunAsNonRoot());
    assertEquals("RuntimeDefault", spec.getSecurityContext().getSeccompProfile().getType());
    assertEquals(false, container().getSecurityContext().getAllowPrivilegeEscalation());
    assertEquals(true, container().getSecurityContext().getReadOnlyRootFilesystem());
    assertEquals(List.of("ALL"), container().getSecurityContext().getCapabilities().getDrop());
    String image = Files.readString(Path.of("Dockerfile"));
    assertTrue(
        image.contains(
            "USER %d:%d\n"
                .formatted(
                    spec.getSecurityContext().getRunAsUser(),
                    spec.getSecurityContext().getRunAsGroup())));
    long heapMib = Long.parseLong(image.replaceAll("(?s).*-Xmx(\\d+)m.*", "$1"));
    Quantity limit = container().getResources().getLimits().get("memory");
    assertTrue(limit.getNumericalAmount().longValueExact() >= (heapMib + 192) << 20);
  }
}
