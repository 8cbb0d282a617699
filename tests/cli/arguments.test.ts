import { expect, test } from 'vitest';
import { demoAnswers, demoCatalogue, runWith } from './fake-io.ts';

const files = { lot: demoCatalogue, answers: demoAnswers('first-acre') };
const needed = ['--catalogue', 'lot', '--answers', 'answers'];

test.each<[string, string[], string]>([
  ['nothing', [], 'shortlist, compare, check, import, demand, rulebook, relay, help'],
  ['a slip in the command', ['chekc'], '(nearest: check)'],
  ['a slip in an option of all', ['--verison'], '(nearest: --version)'],
  ['a slip in an option', ['shortlist', '--catalog', 'lot'], '(nearest: --catalogue)'],
  ['an option with one hyphen', ['shortlist', '-format', 'json'], '(nearest: --format)'],
  ['a slip in a format', ['shortlist', ...needed, '--format', 'jsn'], '(nearest: json)'],
  ['a slip in the format of the rule book', ['rulebook', '--format=txt'], '(nearest: text)'],
  ['a language nobody knows', ['shortlist', ...needed, '--language', 'eng'], '(nearest: en)'],
  ['units nobody knows', ['shortlist', ...needed, '--units', 'metrisch'], '(nearest: metric)'],
  ['a missing catalogue', ['shortlist', '--answers', 'answers'], '--catalogue FILE'],
  ['missing answers', ['shortlist', '--catalogue', 'lot'], '--answers FILE'],
  ['a missing value', ['shortlist', '--answers', 'answers', '--catalogue'], '--catalogue needs FILE'],
  ['an option in the place of a value', ['shortlist', '--catalogue', '--answers', 'answers'], '--catalogue needs FILE'],
  ['an option given twice', ['shortlist', ...needed, '--format', 'json', '--format', 'text'], 'twice'],
  ['both files from standard input', ['shortlist', '--catalogue', '-', '--answers', '-'], 'standard input'],
  ['something too much', ['shortlist', ...needed, 'lot'], '"lot"'],
  ['something too much for the rule book', ['rulebook', 'lot'], '"lot"'],
  ['no file to check', ['check'], 'FILE…'],
  ['an option of another command', ['check', '--format', 'json', 'lot'], '"--format"'],
  ['help for a command nobody knows', ['help', 'rulebok'], '(nearest: rulebook)'],
  ['help for two commands', ['help', 'check', 'rulebook'], '"rulebook"'],
  ['a command in the place of its prototype', ['constructor'], 'unknown command'],
])('%s is refused with 2', async (_what, argv, expected) => {
  const { code, out, err } = await runWith(files, ...argv);
  expect({ code, out }).toEqual({ code: 2, out: [] });
  expect(err[0]).toMatch(/^acre-to-axle: /);
  expect(err[0]).toContain(expected);
});

test.each([[['help']], [['--help']], [['-h']]])('%j lists every command', async (argv) => {
  const { code, out, err } = await runWith({}, ...argv);
  expect({ code, err }).toEqual({ code: 0, err: [] });
  for (const name of ['shortlist', 'compare', 'check', 'import', 'rulebook', 'help']) expect(out.join('\n')).toMatch(new RegExp(`^ {2}${name} `, 'm'));
});

test.each(['shortlist', 'check', 'rulebook', 'help'])('%s has a help, by either way', async (name) => {
  const { code, out } = await runWith({}, 'help', name);
  expect(code).toBe(0);
  expect(out[0]).toMatch(new RegExp(`^acre-to-axle ${name}`));
  expect(out.filter((line) => line.length > 80)).toEqual([]);
  expect((await runWith({}, name, '--help')).out).toEqual(out);
});

test('the help of a command names each of its options', async () => {
  const { out } = await runWith({}, 'help', 'shortlist');
  expect(out.flatMap((line) => /^ {2}(--\S+)/.exec(line)?.[1] ?? [])).toEqual(['--catalogue', '--answers', '--format', '--language', '--units']);
});

test('the version is the one it was built with', async () => {
  expect(await runWith({}, '--version')).toEqual({ code: 0, out: ['acre-to-axle 1.2.3'], err: [] });
});

test('a value may stand behind the option or an equals sign', async () => {
  const behind = await runWith(files, 'shortlist', ...needed, '--format', 'json');
  expect(behind.code).toBe(0);
  expect(await runWith(files, 'shortlist', '--catalogue=lot', '--answers=answers', '--format=json')).toEqual(behind);
});

test('a file whose name begins with a hyphen stands behind an equals sign', async () => {
  const odd = { ...files, '--lot': demoCatalogue };
  expect((await runWith(odd, 'shortlist', '--catalogue=--lot', '--answers', 'answers')).code).toBe(0);
  expect((await runWith(odd, 'shortlist', '--catalogue', '--lot', '--answers', 'answers')).code).toBe(2);
});

test('what nobody foresaw is one line and 70', async () => {
  const strange = new Proxy({}, { get: () => { throw new Error('a\nb'); } }) as Record<string, string>;
  const { code, out, err } = await runWith(strange, 'check', 'lot');
  expect({ code, out }).toEqual({ code: 70, out: [] });
  expect(err).toEqual([expect.stringMatching(/report.*a\\u000ab$/)]);
});
