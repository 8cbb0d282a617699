import { expect } from 'vitest';
import type { KillReport } from './kill-run.ts';

/** What a relay promises, whatever was killed: all it said yes to is sent, and twice only where a process was killed in between. */
export function expectKeptWord(report: KillReport, kills: number): void {
  expect(report.lost).toEqual([]);
  expect(report.unexplained).toEqual([]);
  expect(report.delivered).toBe(report.accepted);
  expect(report.accepted).toBeGreaterThan(kills);
  expect(report.integrity).toBe('ok');
  expect(report.exitCode).toBe(0);
}
