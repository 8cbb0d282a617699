import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** axe-core as a script, to be run in the page that is looked at. */
export const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

export interface AxeResult {
  violations: { id: string; nodes: { html: string }[] }[];
}
