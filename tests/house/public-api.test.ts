import { Ajv } from 'ajv';
import type { CustomElementDeclaration, CustomElementField, Package } from 'custom-elements-manifest';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { apiTables, withTables } from '../../src/release/api-tables.ts';
import { manifestOf, type Sources } from '../../src/release/manifest.ts';
import { publicManifest } from '../../src/release/public-manifest.ts';
import { AcreToAxle } from '../../src/widget/element.ts';
import { sources } from '../support/sources.ts';

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const manifest = publicManifest();
const elementOf = ({ modules }: Package) => modules[0]!.declarations![0] as CustomElementDeclaration;
const names = (listed: readonly { name: string }[] | undefined) => (listed ?? []).map(({ name }) => name).sort();
const all = (text: string, pattern: RegExp) => [...new Set([...text.matchAll(pattern)].map(([, word]) => word!))].sort();

const code = sources(['widget']).map(({ text }) => text).join('\n');

/** What of the public surface the code uses, read in other ways than the manifest is. */
const used = (text: string) => ({
  events: all(text, /acreEvent\('([a-z-]+)'/g),
  parts: all(text, / part="([\w-]+)"/g),
  slots: all(text, /<slot(?: name="([\w-]+)")?>/g).map((name) => name ?? '').sort(),
  tokens: all(text, /var\((--acre-[\w-]+)/g),
});

const documented = (from: Package) => {
  const { events, cssParts, slots, cssProperties } = elementOf(from);
  return { events: names(events), parts: names(cssParts), slots: names(slots), tokens: names(cssProperties) };
};

test('the manifest is valid by the schema of the Custom Elements Manifest 2.1.0, as its makers publish it', () => {
  const schema = createRequire(import.meta.url)('custom-elements-manifest/schema.json') as object;
  const validate = new Ajv({ strict: false }).compile(schema);
  expect([validate(manifest), validate.errors]).toEqual([true, null]);
  expect(validate({ ...manifest, modules: [{ kind: 'javascript-module' }] })).toBe(false);
});

test('events, parts, slots and custom properties that are documented are those of the code, and all of them', () => {
  expect(documented(manifest)).toEqual(used(code));
});

test('attributes that are documented are those the element observes', () => {
  expect(names(elementOf(manifest).attributes)).toEqual([...AcreToAxle.observedAttributes].sort());
});

test('what a property is called as an attribute, and whether it is written back, is what Lit was told', () => {
  const told = [...AcreToAxle.elementProperties].filter(([name, { state }]) => !state && name !== 'lang');
  const fields = (elementOf(manifest).members ?? []).filter((member): member is CustomElementField => 'attribute' in member);
  expect(fields.map(({ name, attribute, reflects = false }) => [name, attribute, reflects]).sort())
    .toEqual(told.map(([name, { attribute, reflect = false }]) => [name, typeof attribute === 'string' ? attribute : String(name).toLowerCase(), reflect]).sort());
});

test('everything that is documented says what it is', () => {
  const { attributes = [], members = [], events = [], slots = [], cssParts = [], cssProperties = [] } = elementOf(manifest);
  const mute = [...attributes, ...members, ...events, ...slots, ...cssParts, ...cssProperties].filter(({ description }) => !description);
  expect(names(mute)).toEqual([]);
});

test('the tables of the README are those of the manifest (node src/release/run.mjs document writes them)', () => {
  const readme = read('README.md');
  expect(readme).toBe(withTables(readme, apiTables(manifest)));
});

test('the README tells of every error code what to do, and of no other', () => {
  const event = elementOf(manifest).events!.find(({ name }) => name === 'acre-error')!;
  expect(all(read('README.md'), /^\| `((?:catalogue|script|language|answers)\.[a-z-]+)` \|/gm)).toEqual(all(event.type.text, /'([a-z.-]+)'/g));
});

describe('control: a difference is found where', () => {
  const whole: Sources = { element: read('src/widget/element.ts'), events: read('src/widget/events.ts'), look: read('src/widget/look.ts') };
  const altered = (file: keyof Sources, from: string | RegExp, to: string) => {
    const text = whole[file].replace(from, to);
    expect(text).not.toBe(whole[file]);
    return manifestOf({ ...whole, [file]: text });
  };

  test.each([
    ['a part of the code is not documented', () => altered('element', /^ \* @csspart machine .*\n/m, '')],
    ['a part that is gone is still documented', () => altered('element', ' * @csspart machine ', ' * @csspart tractor - gone\n * @csspart machine ')],
    ['a slot is not documented', () => altered('element', /^ \* @slot intro .*\n/m, '')],
    ['an event is called otherwise', () => altered('events', "'acre-answered':", "'acre-replied':")],
    ['a custom property is not documented', () => altered('look', /^ \* @cssproperty --acre-ink .*\n/m, '')],
  ])('%s', (_what, make) => {
    expect(documented(make())).not.toEqual(used(code));
  });

  test('an attribute is added, called otherwise or kept to the element', () => {
    const observed = [...AcreToAxle.observedAttributes].sort();
    for (const [from, to] of [['    units: {},', '    units: {},\n    colour: {},'], ['    units: {},', "    units: { attribute: 'measure' },"], ['    units: {},', '    units: { state: true },']] as const) {
      // A new one is read where it is declared.
      const made = manifestOf({ ...whole, element: whole.element.replace(from, to).replace('  declare units:', '  declare colour: string;\n  declare units:') });
      expect(names(elementOf(made).attributes)).not.toEqual(observed);
    }
  });

  test('a public method or property is added, while a private one changes nothing', () => {
    const added = (member: string) => apiTables(manifestOf({ ...whole, element: whole.element.replace('  constructor() {', `${member}\n\n  constructor() {`) }));
    const now = apiTables(manifest);
    expect(added('  /** Begins again. */\n  reset(hard: boolean): void {}')).toContain('| `reset(hard: boolean)` | `void` | Begins again. |');
    expect(added('  /** How far. */\n  get far(): number { return 1; }')).toContain('| `far` (read only) | `number` | How far. |');
    expect(added('  private reset(): void {}')).toBe(now);
    expect(added('  protected override reset(): void {}')).toBe(now);
  });

  test('the README has no place for the tables', () => {
    expect(() => withTables('# Nothing', apiTables(manifest))).toThrow('no place');
  });
});
