import { Ajv } from 'ajv';
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { billOfMaterials, differencesFromLock } from '../../src/release/bill-of-materials.ts';
import { changesBetween, isAtLeast, leastAfter, stepFor } from '../../src/release/changes.ts';
import { findingsOf, sectionOf, type ToRelease } from '../../src/release/checks.ts';
import { productionPackages } from '../../src/release/locked.ts';
import { packageFile, readText } from '../../src/release/project.ts';
import { surfaceNow, type Surface } from '../../src/release/surface.ts';
import { ruleIds } from '../../src/trade/book.ts';
import { headingsOf } from '../../src/sheets/headings/headings.ts';

const lock = readText('package-lock.json');
const bill = billOfMaterials(packageFile(), lock);
const surface = surfaceNow();

describe('the bill of materials', () => {
  test('is valid by the schema of CycloneDX 1.6, as its makers publish it', () => {
    const require = createRequire(import.meta.url);
    const schemas = join(dirname(require.resolve('@cyclonedx/cyclonedx-library/package.json')), 'res/schema');
    const schema = (name: string) => JSON.parse(readFileSync(join(schemas, `${name}.SNAPSHOT.schema.json`), 'utf8')) as object;
    // Addresses and days are the only formats there are, and none of them is in a bill of ours.
    const ajv = new Ajv({ strict: false, validateFormats: false });
    for (const name of ['spdx', 'jsf-0.82']) ajv.addSchema(schema(name), `http://cyclonedx.org/schema/${name}.SNAPSHOT.schema.json`);
    const validate = ajv.compile(schema('bom-1.6'));
    expect([validate(bill), validate.errors]).toEqual([true, null]);
    expect(validate({ ...bill, components: [{ ...bill.components[0], type: 'tractor' }] })).toBe(false);
    expect(validate({ ...bill, components: [{ ...bill.components[0], licenses: [{ license: { id: 'no-such-licence' } }] }] })).toBe(false);
  });

  test('lists what package.json asks for and what those packages ask for in theirs, and nothing else', () => {
    const all = new Set(Object.keys(packageFile().dependencies));
    for (const name of all) for (const next of Object.keys((JSON.parse(readText(`node_modules/${name}/package.json`)) as { dependencies?: object }).dependencies ?? {})) all.add(next);
    expect(bill.components.map(({ group, name }) => (group ? `${group}/${name}` : name)).sort()).toEqual([...all].sort());
  });

  test('says the same as the lock file, and the same each time', () => {
    expect(differencesFromLock(bill, lock)).toEqual([]);
    expect(billOfMaterials(packageFile(), lock)).toEqual(bill);
    expect(bill.components.find(({ name }) => name === 'reactive-element')!.purl).toMatch(/^pkg:npm\/%40lit\/reactive-element@\d+\.\d+\.\d+$/);
  });

  test('control: one that lacks a package, has another hash or another version differs', () => {
    const [first, ...rest] = bill.components;
    const zeros = '0'.repeat(first!.hashes![0]!.content.length);
    expect(differencesFromLock({ ...bill, components: rest }, lock)).toContainEqual(expect.stringMatching('the bill lacks'));
    expect(differencesFromLock({ ...bill, components: [{ ...first!, hashes: [{ alg: 'SHA-512', content: zeros }] }, ...rest] }, lock)).toHaveLength(2);
    expect(differencesFromLock({ ...bill, components: [{ ...first!, version: '0.0.1' }, ...rest] }, lock)).toHaveLength(2);
    expect(differencesFromLock({ ...bill, dependencies: bill.dependencies.slice(1, -1) }, lock)).not.toEqual([]);
  });

  test('a package that can’t be told from another is refused', () => {
    const { path } = productionPackages(lock)[0]!;
    const without = JSON.parse(lock) as { packages: Record<string, { integrity?: string }> };
    delete without.packages[path]!.integrity;
    expect(() => productionPackages(JSON.stringify(without))).toThrow(`${path} has no integrity`);
  });
});

describe('what is public', () => {
  test('covers the tag, the documents, the command line, the rules, the headings of tables and the package', () => {
    const entries = Object.keys(surface);
    for (const kind of ['attribute', 'property', 'event', 'slot', 'part', 'token', 'format', 'command', 'rule', 'heading', 'import']) {
      expect([kind, entries.some((entry) => entry.startsWith(`${kind} `))]).toEqual([kind, true]);
    }
    expect(entries.filter((entry) => entry.startsWith('rule ')).length).toBe(ruleIds.length);
    expect(entries.filter((entry) => entry.startsWith('heading ')).length).toBe(headingsOf('machines').length + headingsOf('units').length);
    expect(surface).toMatchObject({
      'acre-to-axle/answers/1 format': 'required', 'acre-to-axle/catalogue/1 machines[].id': 'required', 'acre-to-axle/catalogue/1 rules': 'optional',
      'command shortlist --catalogue': 'FILE, required', 'rule loader.margin': '0.25 ratio', 'import acre-to-axle/define': '',
    });
  });
});

describe('versions', () => {
  const changed = (change: (entries: Record<string, string | undefined>) => void) => {
    const copy: Record<string, string | undefined> = { ...surface };
    change(copy);
    return changesBetween(surface, JSON.parse(JSON.stringify(copy)) as Surface);
  };

  test.each<[string, 'major' | 'minor' | 'patch', (entries: Record<string, string | undefined>) => void]>([
    ['nothing', 'patch', () => undefined],
    ['a figure that is another', 'minor', (of) => { of['rule loader.margin'] = '0.3 ratio'; }],
    ['a part that is new', 'minor', (of) => { of['part horn'] = ''; }],
    ['a part that is gone', 'major', (of) => { delete of['part machine']; }],
    ['an attribute that takes more', 'minor', (of) => { of['attribute theme'] += " | 'sepia'"; }],
    ['an attribute that takes less', 'major', (of) => { of['attribute theme'] = "'auto'"; }],
    ['a field a dealer has to add', 'major', (of) => { of['acre-to-axle/catalogue/1 machines[].colour'] = 'required'; }],
    ['a field a dealer may add', 'minor', (of) => { of['acre-to-axle/catalogue/1 machines[].colour'] = 'optional'; }],
    ['a field that only something new has to have', 'minor', (of) => { Object.assign(of, { 'acre-to-axle/catalogue/1 machines[].horn': 'optional', 'acre-to-axle/catalogue/1 machines[].horn.tone': 'required' }); }],
    ['a field at the top a dealer has to add', 'major', (of) => { of['acre-to-axle/catalogue/1 region'] = 'required'; }],
    ['a field a dealer may leave out now', 'minor', (of) => { of['acre-to-axle/catalogue/1 machines[].id'] = 'optional'; }],
    ['a field of the shortlist that may be missing now', 'major', (of) => { of['acre-to-axle/shortlist/1 shortlist'] = 'optional'; }],
    ['a task there is no more', 'major', (of) => { delete of[Object.keys(of).find((entry) => entry.endsWith('= mow-lawn'))!]; }],
    ['an option of a command that is gone', 'major', (of) => { delete of['command shortlist --units']; }],
    ['a heading of a table that is called otherwise', 'major', (of) => { delete of[`heading units: ${headingsOf('units')[0]!.heading}`]; of['heading units: other'] = ''; }],
  ])('%s asks for a %s step', (_what, step, change) => expect(stepFor(changed(change))).toBe(step));

  test.each([
    ['1.2.3', 'patch', '1.2.4'], ['1.2.3', 'minor', '1.3.0'], ['1.2.3', 'major', '2.0.0'], ['0.4.1', 'major', '0.5.0'], ['0.4.1', 'patch', '0.4.2'],
  ] as const)('after %s a %s step leads to %s (Semantic Versioning 2.0.0, items 4 and 6 to 8)', (last, step, least) => expect(leastAfter(last, step)).toBe(least));

  test('whatever a version is, its next step is later, and a larger step no earlier than a smaller one', () => {
    const version = fc.tuple(fc.nat(99), fc.nat(99), fc.nat(99)).map((numbers) => numbers.join('.'));
    fc.assert(fc.property(version, (last) => {
      const [patch, minor, major] = (['patch', 'minor', 'major'] as const).map((step) => leastAfter(last, step)) as [string, string, string];
      expect([isAtLeast(patch, last), isAtLeast(last, patch), isAtLeast(minor, patch), isAtLeast(major, minor)]).toEqual([true, false, true, true]);
    }));
  });
});

describe('what a release is held to', () => {
  const toRelease = (over: Partial<ToRelease> = {}): ToRelease => ({
    version: '0.2.0', surface, changelog: '# Changes\n\n## 0.2.0, 2026-12-01\n\n- Nothing.\n\n## 0.1.0, 2026-11-30\n\n- `loader.margin` is 0.25.\n', last: { version: '0.1.0', surface }, ...over,
  });
  const withMargin = { ...surface, 'rule loader.margin': '0.3 ratio' };

  test('nothing stands against one that is all right', () => {
    expect(findingsOf(toRelease())).toEqual({ faults: [], left: [], changes: [] });
  });

  test('the changelog has a section for it, with a day', () => {
    expect(findingsOf(toRelease({ changelog: '# Changes\n' })).faults).toEqual(['CHANGELOG.md: no section "## 0.2.0"']);
    expect(findingsOf(toRelease({ changelog: '## 0.2.0, not released\n' })).left).toHaveLength(1);
    expect(findingsOf(toRelease({ changelog: '## 0.2.0-later, 2026-12-01\n' })).faults).toHaveLength(1);
  });

  test('a figure that changed is named in the section of this release, not of another', () => {
    const { faults } = findingsOf(toRelease({ surface: withMargin }));
    expect(faults).toEqual([expect.stringMatching(/`loader\.margin`.*0\.25 ratio to 0\.3 ratio/)]);
    const changelog = toRelease().changelog.replace('- Nothing.', '- `loader.margin` goes from 0.25 to 0.3: safer.');
    expect(findingsOf(toRelease({ surface: withMargin, changelog })).faults).toEqual([]);
  });

  test('a figure that changed is no patch', () => {
    const changelog = '## 0.1.1, 2026-12-01\n\n- `loader.margin` goes from 0.25 to 0.3.\n';
    expect(findingsOf(toRelease({ version: '0.1.1', surface: withMargin, changelog })).faults).toEqual([expect.stringContaining('has to be 0.2.0 or later')]);
  });

  test('the id of a rule never goes', () => {
    const { 'rule loader.margin': _gone, ...rest } = surface;
    expect(findingsOf(toRelease({ surface: rest })).faults).toEqual(['rule loader.margin: gone, though an id that was released stays']);
  });

  test('the same version can’t be released twice, nor an earlier one', () => {
    expect(findingsOf(toRelease({ last: { version: '0.2.0', surface } })).faults).toHaveLength(1);
    expect(findingsOf(toRelease({ last: { version: '1.0.0', surface } })).faults).toHaveLength(1);
  });

  test('the changelog of the project has a section for the version there is', () => {
    expect(sectionOf(readText('CHANGELOG.md'), packageFile().version)?.text.trim()).not.toBe('');
    expect(sectionOf('## 10.2.0, x\n', '0.2.0')).toBeUndefined();
  });
});
