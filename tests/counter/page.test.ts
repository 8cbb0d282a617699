import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerAt } from '../../src/answers/at.ts';
import { noAnswers } from '../../src/answers/names.ts';
import { questions, type Field, type QuestionId } from '../../src/answers/questions.ts';
import { readAnswers } from '../../src/answers/read-answers.ts';
import type { Typing } from '../../src/answers/read-typed.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { boxesFor, entered, faultOf, retyped, type Entry } from '../../src/counter/entry.ts';
import { newIntake, toPark } from '../../src/counter/intake.ts';
import { nextToGo } from '../../src/counter/parking.ts';
import { readParked } from '../../src/counter/read-parked.ts';
import { sayAge } from '../../src/counter/say-age.ts';
import { sectionsOf } from '../../src/counter/sections.ts';
import { masked, sendFaultsOf, type SendFields } from '../../src/counter/sending.ts';
import { requestOf } from '../../src/request/form.ts';
import { readSettings } from '../../src/counter/settings.ts';
import { en } from '../../src/counter/words/en.ts';
import { pathOf, visitOf } from '../../src/guide/next-question.ts';
import { readRequest } from '../../src/request/read-request.ts';
import { notSure, type Box } from '../../src/widget/box.ts';
import { withFinerPoints } from '../support/with-finer-points.ts';

const buyers = ['first-acre', 'hay-and-barn', 'steep-and-careful'].map((name) =>
  [name, withFinerPoints(JSON.parse(readFileSync(new URL(`../../demo/answers/${name}.json`, import.meta.url), 'utf8')) as AnswersDocument)] as const);
const typing: Typing = { units: 'us', decimalMark: '.', currency: 'USD' };
const blank: Entry = { answers: noAnswers, boxes: boxesFor(noAnswers, typing) };

const fieldsOf = (id: QuestionId) => questions.find((each) => each.id === id)!.fields as readonly Field[];
const shown = (answers: AnswersDocument) => sectionsOf(answers).flatMap((section) => section.questions);
/** All that a question asks for; a document may hold more. */
const saidIn = (answers: AnswersDocument) => Object.fromEntries(questions.flatMap(({ fields }) => (fields as readonly Field[]).map(({ at }) => [at, answerAt(answers, at)] as const)));

/** Types a whole document onto a blank sheet, top to bottom, as the sheet shows more and more of it. */
function typed(answers: AnswersDocument): Entry {
  const boxes = boxesFor(answers, typing);
  let entry = blank;
  for (const { id } of questions) {
    if (!shown(entry.answers).includes(id)) continue;
    for (const { at } of fieldsOf(id)) if (JSON.stringify(boxes[at]) !== '{}') entry = entered(entry, id, at, boxes[at]!, typing);
  }
  return entry;
}

describe('the sheet', () => {
  test.each(buyers)('comes to the same document as the wizard: %s', (_name, answers) => {
    expect(saidIn(typed(answers).answers)).toEqual(saidIn(answers));
  });

  test('shows what the guide asks, in its order, each question in one section', () => {
    for (const [, answers] of buyers) {
      const visit = visitOf(answers);
      const asked = pathOf(visit).filter((id) => questions.find((each) => each.id === id)!.asked(answers, (other) => (visit.seen as readonly string[]).includes(other)) === 'yes');
      expect(shown(answers)).toEqual(asked);
    }
    expect(shown(noAnswers)).toEqual(['tasks', 'slope', 'overhead', 'drivers', 'storage', 'gate', 'budget', 'more', 'priorities']);
  });

  const anyBox = (field: Field): fc.Arbitrary<Box> => fc.record({
    chosen: fc.constantFrom(undefined, notSure, ...('options' in field && Array.isArray(field.options) ? field.options as string[] : ['yes', 'no'])),
    ticked: fc.subarray(field.control === 'several' ? [...field.options(noAnswers)] : field.control === 'order' ? [...field.options] : []),
    typed: fc.oneof(fc.constantFrom('', '12', '900 lb', '1,5', 'heavy', '-3', '6 ft', '1e9'), fc.string({ maxLength: 8 })),
  }, { requiredKeys: [] }) as fc.Arbitrary<Box>;
  const anyEntry = fc.constantFrom(...questions.flatMap(({ id, fields }) => (fields as readonly Field[]).map((field) => ({ id, field })))).chain(({ id, field }) => anyBox(field).map((box) => ({ id, field, box })));

  test('whatever is typed, ticked and chosen in any order: the answers can be read, and the boxes keep what stands in them', () => {
    fc.assert(fc.property(fc.array(anyEntry, { maxLength: 20 }), (steps) => {
      let entry = blank;
      for (const { id, field, box } of steps) {
        entry = entered(entry, id, field.at, box, typing);
        if (field.control !== 'several') expect(entry.boxes[field.at]).toEqual(box);
      }
      expect(readAnswers(JSON.parse(JSON.stringify(entry.answers))).faults).toEqual([]);
    }), { numRuns: 150 });
  });

  test('other units or decimals leave what is unread as it was typed, and read the rest as what it was', () => {
    let entry = entered(blank, 'tasks', 'tasks', { ticked: ['lift-pallets'] }, typing);
    entry = entered(entry, 'pallets', 'tasks.lift-pallets.weight', { typed: '900' }, typing);
    entry = entered(entry, 'pallets', 'tasks.lift-pallets.height', { typed: 'about six' }, typing);
    const metric: Typing = { units: 'metric', decimalMark: ',', currency: 'USD' };
    const next = retyped(entry, typing, metric);
    expect([next.boxes['tasks.lift-pallets.weight'], next.boxes['tasks.lift-pallets.height']]).toEqual([{ typed: '900 lb' }, { typed: 'about six' }]);
    expect(next.answers).toBe(entry.answers);
  });

  test('a fault is told by the reader the wizard has, and an empty box is none', () => {
    const [weight] = fieldsOf('pallets');
    expect(faultOf(weight!, { [weight!.at]: { typed: 'heavy' } }, typing)?.fault).toBe('not-a-number');
    expect(faultOf(weight!, { [weight!.at]: { typed: '3' } }, typing)?.fault).toBe('too-small');
    expect(faultOf(weight!, { [weight!.at]: { typed: ' ' } }, typing)).toBeUndefined();
  });

  test('a task that is unticked takes its must with it', () => {
    let entry = entered(blank, 'tasks', 'tasks', { ticked: ['dig', 'mow-lawn'] }, typing);
    entry = entered(entry, 'musts', 'tasks.must', { ticked: ['dig'] }, typing);
    entry = entered(entry, 'tasks', 'tasks', { ticked: ['mow-lawn'] }, typing);
    expect(entry.boxes['tasks.must']).toEqual({ ticked: [] });
    expect(entry.answers.tasks).toMatchObject([{ task: 'mow-lawn' }]);
  });
});

describe('what is parked', () => {
  test('is read as it was, and nothing of another make is', () => {
    for (const [, answers] of buyers) {
      const intake = newIntake(typing, { name: 'Seven', notes: 'looks at a red one', way: 'steps', answers });
      expect(readParked(JSON.parse(JSON.stringify(toPark(intake))))).toEqual(toPark(intake));
    }
    expect(readParked({ answers: { format: 'x' } })).toBeUndefined();
    expect(readParked(null)).toBeUndefined();
    fc.assert(fc.property(fc.anything(), (draft) => { readParked(draft); }));
  });
});

describe('who is thrown away next', () => {
  const hour = 3_600_000;

  test('are those of the first hour together, by the time of the last of them', () => {
    expect(nextToGo([])).toBeUndefined();
    expect(nextToGo([5 * hour, 5 * hour + 60_000, 6 * hour, 9 * hour])).toEqual({ count: 2, from: 5 * hour, by: 5 * hour + 60_000 });
  });

  test('whoever is told of is gone by then, and nobody else is', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 0, max: 24 * hour }), { minLength: 1 }).map((all) => all.toSorted((one, other) => one - other)), (ends) => {
      const { count, from, by } = nextToGo(ends)!;
      expect([from, ends.filter((end) => end <= by).length, by - from < hour]).toEqual([ends[0], count, true]);
    }));
  });
});

describe('what is sent', () => {
  const fields: SendFields = { address: ' ann@place.example ', mail: true, dealerCopy: true, statistics: false, name: ' Ann Lee ', phone: '555 555 0199', goodTime: 'evening', initials: true };
  const frame = { dealer: 'lot', answers: buyers[0]![1], language: 'en', units: 'us', seen: { catalogue: { id: 'lot' }, rules: { version: '1' } } } as const;

  test('is a request that a relay takes', () => {
    const { value, faults } = readRequest(JSON.parse(JSON.stringify(requestOf('shortlist', fields, frame))));
    expect(faults).toEqual([]);
    expect(value).toMatchObject({ kind: 'shortlist', address: 'ann@place.example', contact: { name: 'Ann Lee', phone: '555 555 0199', goodTime: 'evening' }, consent: { mail: true, dealerCopy: true, statistics: false } });
  });

  test('holds no name and no number without the customer’s word for a copy', () => {
    expect(requestOf('shortlist', { ...fields, dealerCopy: false }, frame).contact).toBeUndefined();
  });

  test('is nothing at all without a tick for the mail, or with an address that is none', () => {
    expect(sendFaultsOf({ ...fields, mail: false })).toEqual(['mail']);
    expect(sendFaultsOf({ ...fields, address: '' })).toEqual(['address-missing']);
    expect(sendFaultsOf({ ...fields, address: 'ann@place, bob@place.example' })).toEqual(['address-wrong']);
    expect(sendFaultsOf({ ...fields, name: 'http://x.example', phone: 'call me' })).toEqual(['name', 'phone']);
    expect(sendFaultsOf({ ...fields, dealerCopy: false, name: 'http://x.example' })).toEqual([]);
  });

  test('an address that was left shows two letters of it at the most', () => {
    fc.assert(fc.property(fc.string(), fc.emailAddress(), (any, address) => {
      for (const text of [any, address]) expect(masked(text).replaceAll(/[•@]/g, '').length).toBeLessThanOrEqual(4);
    }));
    expect(masked('ann@place.example')).toBe('a•••@p•••');
    expect(masked('')).toBe('');
  });
});

describe('settings', () => {
  const base = 'https://dealer.example/counter/settings.json';

  test('name the catalogue, and all else has a usual value', () => {
    expect(readSettings({ catalogue: '../catalogue.json' }, base)).toEqual({ settings: { catalogue: 'https://dealer.example/catalogue.json', idle: 90, parkedHours: 12, paper: 'letter' } });
    expect(readSettings({ catalogue: 'c.json', relay: 'https://mail.example/', idle: false, paper: 'a4', 'x-mine': 1 }, base)).toMatchObject({ settings: { relay: 'https://mail.example/', idle: false, paper: 'a4' } });
  });

  test.each([
    [null, ''], [{}, 'catalogue'], [{ catalogue: 'c', idle: 10 }, 'idle'], [{ catalogue: 'c', idle: 301 }, 'idle'], [{ catalogue: 'c', idle: '90' }, 'idle'],
    [{ catalogue: 'c', paper: 'legal' }, 'paper'], [{ catalogue: 'c', parkedHours: 0.5 }, 'parkedHours'], [{ catalogue: 'c', parkedHours: 25 }, 'parkedHours'], [{ catalogue: 'c', relay: 'javascript:alert(1)' }, 'relay'], [{ catalogue: 'c', relais: 'x' }, 'relais'],
  ])('%j is told where it is wrong', (json, key) => {
    const read = readSettings(json, base);
    expect('faults' in read && read.faults.map((fault) => fault.key)).toEqual([key]);
  });
});

test('how long something waits is said in the largest unit it has two of', () => {
  expect([0, 59, 119, 120, 47 * 60, 48 * 60].map((minutes) => sayAge(minutes * 60_000, en.waiting))).toEqual(['less than a minute', '59 minutes', '119 minutes', '2 hours', '47 hours', '2 days']);
});
