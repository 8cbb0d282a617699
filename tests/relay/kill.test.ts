import { expect, test } from 'vitest';
import { killRun, told } from './kill-run.ts';
import { expectKeptWord } from './kept-word.ts';

/** Kills of one run; more on demand. */
const kills = Number(process.env.KILLS ?? 300);
const longest = 120_000 + kills * 2_000;

test(`fault 24: ${kills} kills under load lose nothing that was accepted, and send nothing twice but where a kill fell in between`, async () => {
  const report = await killRun({ kills });
  console.log(told(report));
  expectKeptWord(report, kills);
  // Goal 4: claims are freed at once; what else a busy machine does is not ours.
  expect(report.recoveries[Math.floor(report.recoveries.length / 2)]).toBeLessThan(1_000);
}, longest);
