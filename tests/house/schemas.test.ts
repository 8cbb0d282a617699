import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { answers, answersFormat } from '../../src/answers/schema.ts';
import { catalogue, catalogueFormat } from '../../src/catalogue/schema.ts';
import { jsonSchemaOf } from '../../src/documents/json-schema.ts';
import { readDocument } from '../../src/documents/read.ts';
import type { Schema } from '../../src/documents/shape.ts';
import { shortlistFormat, shortlistSchema } from '../../src/reasons/schema.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';

const read = (path: string) => JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8')) as never;
const published = (name: string) => new URL(`../../demo/schema/${name}-1.json`, import.meta.url);
const buyers = ['first-acre', 'hay-and-barn', 'steep-and-careful'];

const documents: { name: string; schema: Schema; format: string; title: string; examples: unknown[] }[] = [
  { name: 'catalogue', schema: catalogue, format: catalogueFormat, title: "A dealer's line-up and lot", examples: [read('../../demo/catalogue.json')] },
  { name: 'answers', schema: answers, format: answersFormat, title: 'What a buyer said', examples: buyers.map((buyer) => read(`../../demo/answers/${buyer}.json`)) },
  {
    name: 'shortlist', schema: shortlistSchema, format: shortlistFormat, title: 'What the tool says',
    examples: buyers.map((buyer) => shortlist(read('../../demo/catalogue.json'), read(`../../demo/answers/${buyer}.json`))),
  },
];

/** A copy with one value somewhere inside replaced, so that both validators have something to object to. */
function damaged(document: unknown, seed: number, value: unknown): unknown {
  const copy = structuredClone(document) as Record<string, unknown>;
  let node: Record<string, unknown> = copy;
  for (let step = seed; ; step = Math.floor(step / 7) + 3) {
    const keys = Object.keys(node);
    const key = keys[step % keys.length];
    if (key === undefined) return copy;
    const next = node[key];
    if (typeof next !== 'object' || next === null || step % 5 === 0) {
      node[key] = value;
      return copy;
    }
    node = next as Record<string, unknown>;
  }
}

describe.each(documents)('$name', ({ name, schema, format, title, examples }) => {
  const made = `${JSON.stringify(jsonSchemaOf(schema, format, title), null, 2)}\n`;

  test('the published JSON Schema is the one generated from the definition (REGEN=1 writes it)', () => {
    if (process.env.REGEN) writeFileSync(published(name), made);
    expect(readFileSync(published(name), 'utf8')).toBe(made);
  });

  const validate = new Ajv2020({ strict: false }).compile(JSON.parse(made));

  test('another validator takes the examples for valid', () => {
    expect(examples.map((example) => [validate(example), validate.errors])).toEqual(examples.map(() => [true, null]));
  });

  test('both say the same of damaged documents', () => {
    let refused = 0;
    fc.assert(fc.property(fc.constantFrom(...examples), fc.nat(1e6), fc.jsonValue({ maxDepth: 1 }), (example, seed, value) => {
      const document = damaged(example, seed, value);
      const { faults, unknownKeys } = readDocument(schema, document);
      const ours = faults.length + unknownKeys.length === 0;
      if (!ours) refused += 1;
      expect(validate(document)).toBe(ours);
    }), { numRuns: 300 });
    expect(refused).toBeGreaterThan(100);
  }, 60_000);

  test('free keys and unknown keys are told apart by both', () => {
    const [example] = examples as [Record<string, unknown>];
    expect([validate({ ...example, 'x-note': 1 }), validate({ ...example, note: 1 })]).toEqual([true, false]);
  });
});
