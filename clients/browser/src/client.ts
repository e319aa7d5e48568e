import createClient, { type Client } from 'openapi-fetch';
import type { components, paths } from './contract.js';
import type { ServiceLanguage } from './texts.js';
import type { Units } from './units.js';

type Schemas = components['schemas'];
export type Plan = Schemas['VehiclePlan'];
export type Comparison = Schemas['DriverComparisonRequest'];
export type ReviewAnswer = Schemas['PlanReviewAnswer'];
export type ComparisonAnswer = Schemas['DriverComparisonAnswer'];
export type Finding = Schemas['Finding'];
export type Verdict = ReviewAnswer['verdict'];
export type Problem = Schemas['Problem'];
export type Fault = Schemas['Fault'];
/** The contract has JSON beside texts and tables; a page wants JSON. */
export type Service = Client<paths, 'application/json' | 'application/problem+json'>;

/** All of the contract, typed: `footwell('https://…').POST('/v1/sound-level', {body: …})`. */
export function footwell(service: string): Service {
  return createClient<paths, 'application/json' | 'application/problem+json'>({ baseUrl: service.replace(/\/+$/, '') });
}

/** Where and how long to ask, and for what language and units. */
export interface Asking {
  service: string;
  timeout_s: number;
  lang: ServiceLanguage;
  units: Units;
}

/** What goes with every question: its language and units, figures in sentences as in tables, and what ends it. */
export interface Sent {
  params: { query: { lang: ServiceLanguage; units: Units; findings: 'beside_tables' } };
  signal: AbortSignal;
}

/** What can become of a question. */
export type Outcome<A> =
  | { kind: 'answer'; answer: A }
  | { kind: 'problem'; problem: Problem }
  | { kind: 'busy'; after_s: number }
  | { kind: 'silent' | 'refused' | 'late' };

/** What every answer of a calculation has. */
const ENVELOPE = ['result', 'findings', 'verdict', 'safety'];

interface Reply<A> {
  data?: A;
  error?: unknown;
  response: Response;
}

/** Asks, and turns whatever happens into an outcome. Only the caller's own abort is thrown. */
export async function ask<A extends object>(
  { service, timeout_s, lang, units }: Asking,
  signal: AbortSignal,
  question: (client: Service, sent: Sent) => Promise<Reply<A>>,
): Promise<Outcome<A>> {
  const patience = new AbortController();
  const end = setTimeout(() => patience.abort(), timeout_s * 1000);
  const stop = () => patience.abort();
  signal.addEventListener('abort', stop);
  try {
    return outcome(await question(footwell(service), { params: { query: { lang, units, findings: 'beside_tables' } }, signal: patience.signal }));
  } catch (failure) {
    signal.throwIfAborted();
    if (patience.signal.aborted) return { kind: 'late' };
    if (failure instanceof SyntaxError) return { kind: 'problem', problem: unlike(200) };
    console.warn(`footwell: no answer from ${service}`, failure);
    return { kind: (await reachable(service)) ? 'refused' : 'silent' };
  } finally {
    clearTimeout(end);
    signal.removeEventListener('abort', stop);
  }
}

function outcome<A extends object>({ data, error, response }: Reply<A>): Outcome<A> {
  if (data && ENVELOPE.every((key) => key in data)) return { kind: 'answer', answer: data };
  if (response.status === 429 || response.status === 503) {
    return { kind: 'busy', after_s: retryAfter(response.headers.get('Retry-After'), Date.now()) };
  }
  return { kind: 'problem', problem: problem(error, response) };
}

/** Seconds to wait by a Retry-After header, which is a number of seconds or a date; 5 without. */
export function retryAfter(header: string | null, now_ms: number): number {
  const seconds = header?.match(/^\d+$/) ? Number(header) : (Date.parse(header ?? '') - now_ms) / 1000;
  return Number.isFinite(seconds) ? Math.min(Math.max(Math.ceil(seconds), 1), 120) : 5;
}

function problem(error: unknown, { status }: Response): Problem {
  return typeof error === 'object' && error !== null && 'title' in error ? (error as Problem) : unlike(status);
}

/** A proxy in between, or a wrong address, answers with something that is not of the contract. */
function unlike(status: number): Problem {
  return { type: 'about:blank', title: 'Not an answer of the service', status, detail: `HTTP ${status}` };
}

/**
 * A browser hides from a page whether a call failed on the way or was refused by CORS. An opaque
 * call tells the two apart: its answer cannot be read, but it arrives. A proxy that answers for an
 * absent service, without headers for CORS, looks like a refusal.
 */
async function reachable(service: string): Promise<boolean> {
  try {
    await fetch(`${service}/health/live`, { mode: 'no-cors', cache: 'no-store', signal: AbortSignal.timeout(3000) });
    return true;
  } catch {
    return false;
  }
}
