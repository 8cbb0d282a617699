import { expect, test } from 'vitest';
import { buyers, changedCatalogue, demoAnswers, demoCatalogue, faultForm, runWith } from './fake-io.ts';

const answers = (rest: string) => `{"format": "acre-to-axle/answers/1",\n${rest}}`;
const faultsOf = async (text: string) => (await runWith({ 'a.json': text }, 'check', 'a.json')).err;

test('the demo is all right, each file in a line of its own', async () => {
  const files = { 'lot.json': demoCatalogue, ...Object.fromEntries(buyers.map((buyer) => [buyer, demoAnswers(buyer)])) };
  const { code, out, err } = await runWith(files, 'check', 'lot.json', ...buyers);
  expect(code).toBe(0);
  expect(err).toEqual([]);
  expect(out.filter((line) => line.includes('all right')).map((line) => line.split(':')[0])).toEqual(['lot.json', ...buyers]);
  expect(out.filter((line) => line.startsWith('query'))).toEqual([]);
});

test('a catalogue without terms is all right, with a warning', async () => {
  const { code, out } = await runWith({ lot: changedCatalogue(({ dealer }) => delete dealer.terms) }, 'check', 'lot');
  expect(code).toBe(0);
  expect(out[1]).toMatch(/^query: lot:\d+:\d+ dealer\.terms: .*dealer\.terms in en/);
});

test('one file with faults makes the whole end with 1, and the others are still checked', async () => {
  const { code, out, err } = await runWith({ good: demoAnswers('first-acre'), bad: '[]' }, 'check', 'bad', 'good', 'gone');
  expect(code).toBe(1);
  expect(out).toHaveLength(1);
  expect(err).toEqual([expect.stringMatching(/^bad:1:1 /), 'gone: there is no such file']);
});

test('standard input is read once', async () => {
  expect((await runWith({ '-': demoAnswers('first-acre') }, 'check', '-')).code).toBe(0);
  expect((await runWith({ '-': demoAnswers('first-acre') }, 'check', '-', '-')).code).toBe(2);
});

test.each<[string, string, string[]]>([
  ['a value', answers('"land": {\n  "slope": "flatt"}'), ['a.json:3:12 land.slope: read "flatt"']],
  ['a value in a list', answers('"priorities": ["price",\n  "prise"]'), ['a.json:3:3 priorities[1]: read "prise"']],
  ['a key nobody knows', answers('"land": {"mown": {"value": 1, "unit": "ha"},\n "slop": "flat"}'), ['a.json:3:2 land.slop: read the key "slop"']],
  ['a key with a blank in it', answers('" land": {}'), ['a.json:2:1 " land": read the key " land"']],
  ['what is missing, at what should hold it', answers('"land": {\n "mown": {"unit": "ha"}}'), ['a.json:3:10 land.mown.value: read nothing']],
  ['a task nobody knows', answers('"tasks": [{"task": "dig"},\n{"task": "dg"}]'), ['a.json:3:10 tasks[1].task: read "dg"']],
  ['a fault behind a task nobody knows', answers('"tasks": [{"task": "dgg"},\n{"task": "dig", "depth": 6}]'), ['a.json:2:20 tasks[0].task', 'a.json:3:26 tasks[1].depth: read 6']],
  ['several, in the order of the file', answers('"haul": {"hw": 1},\n"land": {"gate": 3},\n"budget": 4'), ['a.json:2:10 haul.hw', 'a.json:3:18 land.gate', 'a.json:4:11 budget']],
  ['a key a second time', answers('"land": {"slope": "flat",\n"slope": "steep"}'), ['a.json:3:1 land.slope: read the key "slope" a second time']],
  ['lines that end as on Windows', answers('"land":\r\n{"slope": 5}'), ['a.json:3:11 land.slope: read 5']],
  ['a second fault of the syntax on another line', '{"a": 1,,\n"b": 01,\n"c": 2}', ['a.json:1:9 ', 'a.json:2:']],
])('%s has its line and column', async (_what, text, expected) => {
  const found = await faultsOf(text);
  expect(found).toHaveLength(expected.length);
  found.forEach((line, index) => {
    expect(line).toMatch(faultForm);
    expect(line.startsWith(expected[index]!), `${line} begins with ${expected[index]}`).toBe(true);
  });
});

test.each([
  ['a task', answers('"tasks": [{"task": "mow-lwn"}]'), 'mow-lawn'],
  ['a key', answers('"lnd": {}'), 'land'],
  ['a unit', answers('"land": {"mown": {"value": 2, "unit": "acer"}}'), 'acre'],
  ['a word', answers('"storage": {"kind": "shad"}'), 'shed'],
  ['the format', '{"format": "acre-to-axle/anwsers/1"}', 'acre-to-axle/answers/1'],
  ['a machine', changedCatalogue(({ units }) => { units[0].machine = 'ril'; }), 'rill'],
  ['a rule', changedCatalogue((catalogue) => { catalogue.rules = { 'loader.margn': 0.3 }; }), 'loader.margin'],
])('a slip in %s names the nearest right one', async (_what, text, near) => {
  expect(await faultsOf(text)).toEqual([expect.stringMatching(new RegExp(`\\(nearest: ${near}\\)$`))]);
});

test('keys that begin with x- are nobody’s business', async () => {
  expect((await runWith({ a: answers('"x-mine": {"slop": 1}') }, 'check', 'a')).code).toBe(0);
  expect((await runWith({ a: answers('"y-mine": {"slop": 1}') }, 'check', 'a')).code).toBe(1);
});

test.each([
  ['another version', '{"format": "acre-to-axle/catalogue/2", "dealer": 1, "machines": 2}', 'only version'],
  ['a document nobody writes', '{"format": "acre-to-axle/shortlist/1", "needs": 1}', 'catalogue/1'],
  ['no format and nothing that tells', '{"a": 1}', 'catalogue/1'],
])('%s is refused as a whole, in one line', async (_what, text, expected) => {
  expect(await faultsOf(text)).toEqual([expect.stringContaining(expected)]);
});

test('without a format it is what its keys tell, and the rest is checked too', async () => {
  expect(await faultsOf('{"tasks": 5}')).toEqual([expect.stringContaining('format'), expect.stringContaining('tasks')]);
  expect(await faultsOf('{"frames": 5}')).toContainEqual(expect.stringContaining('"acre-to-axle/catalogue/1"'));
});

test('what a file says can’t move the cursor or begin a line of its own', async () => {
  const found = await faultsOf(answers(`"a\\nb\\u001b[31m\\u009b\\u202e": 1, "land": {"slope": "\\u001b]0;x\\u0007\\u009b31m"}`));
  expect(found).toHaveLength(2);
  for (const line of found) expect(line).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
  const [inName] = (await runWith({}, 'check', 'a\u001b[2J\nb')).err;
  expect(inName).toBe('a\\u001b[2J\\u000ab: there is no such file');
});
