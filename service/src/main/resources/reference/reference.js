"use strict";
// The interactive reference: the contract of this very service, nothing from elsewhere.
SwaggerUIBundle({
  url: "/openapi.json",
  dom_id: "#reference",
  deepLinking: true,
  docExpansion: "list",
  defaultModelsExpandDepth: 0,
  validatorUrl: null,
  responseInterceptor: (answer) => {
    if (answer.ok && new URL(answer.url, location).pathname.endsWith("/sweep")) drawSweep(answer);
    return answer;
  },
});

/** Draws the table of a sweep below its answer; in other forms than JSON it stays a text. */
function drawSweep(answer) {
  const operation = document.querySelector("[data-path='/v1/{calculation}/sweep']")?.closest(".opblock");
  operation?.querySelector("figure.sweep")?.remove();
  if (answer.headers["content-type"]?.startsWith("application/json")) {
    const figure = sweepChart(JSON.parse(answer.text));
    if (figure) operation?.querySelector(".opblock-body")?.append(figure);
  }
}
