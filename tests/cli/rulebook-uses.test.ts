import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { en } from '../../src/cli/rulebook/words/en.ts';
import { figureIds } from '../../src/trade/book.ts';
import { formulaRules } from '../../src/trade/figures/formulas.ts';
import type { SourceFile } from '../support/sources.ts';
import { usesOfRules } from '../support/uses-of-rules.ts';

const generated = new URL('../../src/cli/rulebook/uses.ts', import.meta.url);
const uses = usesOfRules({ figures: figureIds, formulas: Object.keys(formulaRules) });
const made = `/**
 * Which modules read each rule. Generated from the sources: REGEN=1 npx vitest run --config
 * tests/vitest.config.ts tests/cli/rulebook-uses.test.ts
 */
export const usesOfRules = {
${Object.entries(uses).map(([id, modules]) => `  '${id}': [${modules.map((module) => `'${module}'`).join(', ')}],\n`).join('')}} as const;
`;

test('the uses of the rules are those generated from the sources (REGEN=1 writes them)', () => {
  if (process.env.REGEN) writeFileSync(generated, made);
  expect(readFileSync(generated, 'utf8')).toBe(made);
});

test('every module that reads a rule has plain words, and no words are kept for one that reads none', () => {
  expect(Object.keys(en.places).sort()).toEqual([...new Set(Object.values(uses).flat())].sort());
});

const inWorld = (...files: SourceFile[]) => usesOfRules({
  figures: ['mow.speed', 'mow.efficiency.open', 'mow.efficiency.many'], formulas: ['mow.rate', 'mow.hours', 'slope.angle'],
}, files);
const formulas: SourceFile = {
  file: 'trade/formulas/rate.ts',
  text: `
    export const rate = (speed: number, formula: 'mow.hours' | 'mow.rate'): object => ({ formula, result: speed });
    export const hours = (area: number) => ({ formula: 'mow.hours', result: area });
    export const both = (area: number) => hours(area);
    /** @see rule \`slope.angle\` */
    export const angle = (percent: number) => percent;`,
};
const reader = (text: string): SourceFile => ({ file: 'ranking/reader.ts', text });
const read = (text: string) => Object.entries(inWorld(formulas, reader(text))).filter(([, by]) => by.includes('ranking/reader')).map(([id]) => id);

test.each([
  ['a figure by its id', "book.value('mow.speed');", ['mow.speed']],
  ['figures by a template', 'book.value(`mow.efficiency.${many}`);', ['mow.efficiency.many', 'mow.efficiency.open']],
  ['a formula by the function that works it out', "import { hours } from '../trade/formulas/rate.ts'; hours(1);", ['mow.hours']],
  ['a formula behind a function that calls another', "import { both } from '../trade/formulas/rate.ts'; both(1);", ['mow.hours']],
  ['a formula whose function only points to it', "import { angle } from '../trade/formulas/rate.ts'; angle(1);", ['slope.angle']],
  ['the one formula a function is told to name', "import { rate } from '../trade/formulas/rate.ts'; rate(1, 'mow.rate');", ['mow.rate']],
])('%s is a use', (_what, text, ids) => expect(read(text)).toEqual(ids));

test.each([
  ['a comment', "// 'mow.speed'"],
  ['a need that bears the same id', "add({ id: 'mow.speed', capability: 'mow.rate' });"],
  ['a type', "type Rate = 'mow.speed';"],
  ['a template that could be anything', '`${what}.speed`;'],
  ['a formula nobody calls', "import { other } from '../trade/formulas/rate.ts'; other(1);"],
  ['a formula named where nothing is worked out', "const told = { why: 'mow.rate' };"],
])('%s is none', (_what, text) => expect(read(text)).toEqual([]));

test.each(['trade/figures/mowing.ts', 'reasons/words/en.ts', 'cli/rulebook/page.ts', 'widget/result.ts'])('what holds, says or shows a rule does not read it: %s', (file) => {
  expect(Object.values(inWorld({ file, text: "show('mow.speed');" })).flat()).toEqual([]);
});
