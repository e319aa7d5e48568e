"use strict";
// The interactive reference: the contract of this very service, nothing from elsewhere.
SwaggerUIBundle({
  url: "/openapi.json",
  dom_id: "#reference",
  deepLinking: true,
  docExpansion: "list",
  defaultModelsExpandDepth: 0,
  validatorUrl: null,
});
