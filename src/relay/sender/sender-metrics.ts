import { Counter, Gauge, type Registry } from 'prom-client';
import type { Role, State } from '../store/store.ts';

/** What a sender counts. */
export interface SenderMetrics {
  settled(role: Role, state: State): void;
  paused(what: 'all' | 'dealer', reason: string): void;
  /** Mails on their way. */
  busy(count: number): void;
}

/** Counts into the relay's figures. */
export function senderMetrics(registry: Registry): SenderMetrics {
  const settled = new Counter({ name: 'acre_attempts_total', help: 'Attempts to send, by what the mail is and what became of it.', labelNames: ['role', 'state'] as const, registers: [registry] });
  const paused = new Counter({ name: 'acre_pauses_total', help: 'Times sending was held back, of a dealer or of all: somebody has to look.', labelNames: ['what', 'reason'] as const, registers: [registry] });
  const busy = new Gauge({ name: 'acre_sending', help: 'Mails on their way.', registers: [registry] });
  return {
    settled: (role, state) => settled.inc({ role, state }),
    paused: (what, reason) => paused.inc({ what, reason }),
    busy: (count) => busy.set(count),
  };
}
