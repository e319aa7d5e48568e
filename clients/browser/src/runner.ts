import type { Outcome } from './client.js';

export type State<A> = Outcome<A> | { kind: 'idle' | 'loading' } | { kind: 'waiting'; seconds: number };

const TRIES = 3;

/** Keeps one question going at a time: a newer one aborts the older, a busy service is asked again. */
export class Runner<A> {
  private current?: AbortController;
  private timer?: ReturnType<typeof setTimeout>;

  constructor(private readonly show: (state: State<A>) => void) {}

  async run(question: (signal: AbortSignal) => Promise<Outcome<A>>, tries = TRIES): Promise<void> {
    this.stop();
    const mine = (this.current = new AbortController());
    this.show({ kind: 'loading' });
    try {
      const outcome = await question(mine.signal);
      if (mine.signal.aborted) return;
      if (outcome.kind === 'busy' && tries > 1) this.wait(outcome.after_s, () => this.run(question, tries - 1));
      else this.show(outcome);
    } catch (failure) {
      if (!mine.signal.aborted) throw failure;
    }
  }

  stop(): void {
    this.current?.abort();
    clearTimeout(this.timer);
  }

  private wait(seconds: number, then: () => void): void {
    if (seconds <= 0) return then();
    this.show({ kind: 'waiting', seconds });
    this.timer = setTimeout(() => this.wait(seconds - 1, then), 1000);
  }
}
