import type { Outcome } from './client.js';

export type State<A> = Outcome<A> | { kind: 'loading' } | { kind: 'waiting'; seconds: number } | { kind: 'unusable'; failure: unknown };
type Question<A> = (signal: AbortSignal) => Promise<Outcome<A>>;

const TRIES = 3;

/** Keeps one question going at a time: a newer one ends the older, a busy service is asked again. */
export class Runner<A> {
  private current?: AbortController;
  private timer?: ReturnType<typeof setTimeout>;

  constructor(private readonly show: (state: State<A>) => void) {}

  /** Asks shortly after the last of several changes; an answer to what was before is out of date at once. */
  run(question: Question<A>, after_ms: number, tries = TRIES): void {
    this.stop();
    this.show({ kind: 'loading' });
    this.timer = setTimeout(() => void this.ask(question, tries), after_ms);
  }

  /** Ends with what cannot be asked or shown. */
  fail(failure: unknown): void {
    this.stop();
    console.warn('footwell:', failure);
    this.show({ kind: 'unusable', failure });
  }

  stop(): void {
    this.current?.abort();
    clearTimeout(this.timer);
  }

  private async ask(question: Question<A>, tries: number): Promise<void> {
    const { signal } = (this.current = new AbortController());
    try {
      const outcome = await question(signal);
      if (signal.aborted) return;
      if (outcome.kind === 'busy' && tries > 1) this.wait(outcome.after_s, () => this.run(question, 0, tries - 1));
      else this.show(outcome);
    } catch (failure) {
      if (!signal.aborted) this.fail(failure);
    }
  }

  private wait(seconds: number, then: () => void): void {
    if (seconds <= 0) return then();
    this.show({ kind: 'waiting', seconds });
    this.timer = setTimeout(() => this.wait(seconds - 1, then), 1000);
  }
}
