// The built service, the demo shop on other origins, something faulty in between, and a browser.
import { spawn } from 'node:child_process';
import { createServer, request } from 'node:http';
import { chromium } from 'playwright-core';
import { serve } from '../demo/serve.mjs';

const JAR = process.env.FOOTWELL_JAR ?? '../../service/target/footwell.jar';

export async function freePort() {
  const server = createServer();
  await new Promise((resolve) => server.listen(0, 'localhost', resolve));
  const { port } = server.address();
  await new Promise((resolve) => server.close(resolve));
  return port;
}

/** The jar, which lets pages of the given origins call. */
export async function startService(origins) {
  const port = await freePort();
  const env = { ...process.env, FOOTWELL_PORT: String(port), FOOTWELL_CORS_ORIGINS: origins.join() };
  const java = spawn('java', ['-XX:+UseSerialGC', '-Xmx128m', '-jar', JAR], { env, stdio: 'ignore' });
  const address = `http://localhost:${port}`;
  for (let tries = 0; tries < 300; tries++) {
    if (java.exitCode !== null) throw new Error(`the service ended with ${java.exitCode}`);
    const ready = await fetch(`${address}/health/ready`).catch(() => undefined);
    if (ready?.ok) return { address, stop: () => java.kill() };
    await pause(200);
  }
  java.kill();
  throw new Error('the service was not ready within a minute');
}

/**
 * Stands before the service at an origin of its own. `fault` may answer a POST in the service's place,
 * by returning true; everything else is passed on.
 */
export async function startBetween(service, port = 0) {
  const between = { fault: async () => false };
  const server = createServer(async (asked, answer) => {
    if (asked.method === 'POST' && (await between.fault(answer, asked))) return;
    const { method, headers, url } = asked;
    asked.pipe(
      request(service + url, { method, headers }, (answered) => {
        answer.writeHead(answered.statusCode, answered.headers);
        answered.pipe(answer);
      }).on('error', () => answer.destroy()),
    );
  });
  await new Promise((resolve) => server.listen(port, 'localhost', resolve));
  between.address = `http://localhost:${server.address().port}`;
  between.stop = () => {
    server.closeAllConnections();
    server.close();
  };
  return between;
}

export async function startShop(port, service) {
  const pages = {};
  const server = await serve(port, service, pages);
  return { address: `http://localhost:${port}`, pages, stop: () => server.close(() => {}) && server.closeAllConnections() };
}

export function startBrowser() {
  return chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--disable-background-networking', '--disable-component-update'],
  });
}

export const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
