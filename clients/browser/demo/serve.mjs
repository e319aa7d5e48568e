// Serves the demo: node demo/serve.mjs, then http://localhost:8090/demo/
import { createServer } from 'node:http';
import { readFile } from 'node:fs/promises';
import { extname } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = new URL('../', import.meta.url);
const DEFAULT_SERVICE = 'http://localhost:8080';
/** What the page of packages asks: the demo van and the offer for it, as the documentation has them. */
const PACKAGES = '/demo/packages.json';
const EXAMPLES = new URL('../../docs/examples/', ROOT);
const TYPES = { '.html': 'text/html; charset=utf-8', '.js': 'text/javascript', '.css': 'text/css', '.json': 'application/json', '.svg': 'image/svg+xml' };

/** Further pages may be given by path, for tests. */
export function serve(port, service = DEFAULT_SERVICE, pages = {}) {
  const server = createServer(async ({ url }, response) => {
    const { pathname } = new URL(url, ROOT);
    const path = pathname.endsWith('/') ? `${pathname}index.html` : pathname;
    try {
      const content = pages[path] ?? (path === PACKAGES ? await packages() : await file(path));
      const text = path.endsWith('.html') ? String(content).replaceAll(DEFAULT_SERVICE, service) : content;
      // Nothing comes from other hosts, and calls go to the service only.
      response.writeHead(200, {
        'Content-Type': TYPES[extname(path)],
        'Content-Security-Policy': `default-src 'self'; img-src 'self' data:; connect-src 'self' ${service}`,
      });
      response.end(text);
    } catch {
      response.writeHead(404).end();
    }
  });
  return new Promise((resolve, reject) => server.on('error', reject).listen(port, 'localhost', () => resolve(server)));
}

async function packages() {
  const [plan, offer] = await Promise.all(
    ['camper-van.json', 'camper-van-offer.json'].map(async (name) => JSON.parse(await readFile(new URL(name, EXAMPLES), 'utf8'))),
  );
  return JSON.stringify({ plan, ...offer });
}

function file(path) {
  if (!/^\/(demo|dist)\/[\w-]+\.\w+$/.test(path)) throw new Error('not for visitors');
  return readFile(new URL(`.${path}`, ROOT));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { PORT = '8090', FOOTWELL_SERVICE } = process.env;
  await serve(Number(PORT), FOOTWELL_SERVICE);
  console.log(`http://localhost:${PORT}/demo/`);
}
