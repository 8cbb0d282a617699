/**
 * A season of invented requests, for show and for trying at scale: nobody asked for any of them. The same seed gives
 * the same season.
 *
 *   node demo/season/generate.mjs 400 7 > requests.jsonl
 *
 * How it is made: each buyer is of one of six kinds, as often as `kinds` says; a kind brings its tasks, and each
 * figure is drawn from the range written there and rounded as people round. One figure in eight is left out, as by a
 * buyer who isn't sure. The shares are ours, not a survey's.
 */
import { argv, stdout } from 'node:process';
import { fileURLToPath } from 'node:url';

/** SplitMix (Steele, Lea and Flood 2014), in 32 bits. */
function chanceOf(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
}

function drawsOf(chance) {
  const pick = (...options) => options[Math.floor(chance() * options.length)];
  const often = (share) => chance() < share;
  /** A figure from a range, to the nearest step; left out by one buyer in eight. */
  const figure = (from, to, step, unit) => (often(1 / 8) ? undefined : { value: Math.round((from + chance() * (to - from)) / step) * step, unit });
  return { pick, often, figure };
}

const pallets = ({ figure, often }, from = 500, to = 1600) => ({ task: 'lift-pallets', must: often(0.6), weight: figure(from, to, 100, 'lb'), height: figure(3, 6, 1, 'ft') });
const mow = ({ pick, often }) => ({ task: 'mow-lawn', must: often(0.85), deck: pick('belly', 'belly', 'either', 'rear') });
const drive = ({ figure, often }) => ({ task: 'grade-drive', must: often(0.5), length: figure(200, 1500, 100, 'ft') });
const snow = ({ figure, pick, often }) => ({ task: 'clear-snow', must: often(0.6), length: figure(100, 800, 50, 'ft'), depth: figure(4, 14, 2, 'in'), how: pick('blade', 'blower', 'either'), perYear: pick(3, 6, 10, 15) });

/** What a kind of buyer does, how many of a hundred there are, how much he mows and keeps rough [acre], and what he will spend [USD]. */
const kinds = [
  { of: 30, mown: [1, 4], rough: [0, 2], spends: [9, 24], tasks: (d) => [mow(d), ...(d.often(0.5) ? [snow(d)] : []), ...(d.often(0.5) ? [{ task: 'move-loose', must: false, material: d.pick('mulch', 'gravel', 'soil'), volume: d.figure(3, 20, 1, 'yd3') }] : [])] },
  { of: 22, mown: [2, 6], rough: [3, 15], spends: [14, 34], tasks: (d) => [mow(d), { task: 'cut-rough', must: d.often(0.8), growth: d.pick('grass', 'grass', 'brush') }, ...(d.often(0.5) ? [drive(d)] : [])] },
  { of: 16, mown: [0, 3], rough: [5, 30], spends: [20, 45], tasks: (d) => [{ task: 'lift-bales', must: d.often(0.9), weight: d.figure(500, 1200, 50, 'lb'), height: d.figure(4, 10, 1, 'ft'), perYear: d.pick(20, 40, 80, 150) }, { task: 'drag-arena', must: false, area: d.figure(8000, 30000, 1000, 'ft2') }, ...(d.often(0.6) ? [{ task: 'cut-rough', must: true, growth: 'grass' }] : [])] },
  { of: 12, mown: [0.5, 2], rough: [0, 3], spends: [10, 26], tasks: (d) => [{ task: 'till-garden', must: d.often(0.8), area: d.figure(2000, 20000, 1000, 'ft2') }, ...(d.often(0.6) ? [mow(d)] : []), { task: 'spread-spray', must: false, area: d.figure(1, 6, 1, 'acre') }] },
  { of: 12, mown: [0, 2], rough: [5, 40], spends: [18, 42], tasks: (d) => [{ task: 'handle-logs', must: d.often(0.8), species: d.pick('red-oak', 'hemlock', 'ash'), diameter: d.figure(10, 20, 2, 'in'), length: d.figure(8, 12, 4, 'ft') }, { task: 'chip-brush', must: d.often(0.4), diameter: d.figure(3, 6, 1, 'in') }, ...(d.often(0.6) ? [snow(d)] : [])] },
  { of: 8, mown: [0, 2], rough: [0, 5], spends: [24, 50], tasks: (d) => [{ task: 'dig', must: d.often(0.8), depth: d.figure(5, 9, 1, 'ft') }, pallets(d), drive(d)] },
];

/** Drops what was left out: an absent field is "not sure". */
const said = (value) => (Array.isArray(value) ? value.map(said)
  : value && typeof value === 'object' ? Object.fromEntries(Object.entries(value).flatMap(([key, each]) => (each === undefined ? [] : [[key, said(each)]]))) : value);

function kindOf(chance) {
  let left = chance() * kinds.reduce((sum, { of }) => sum + of, 0);
  return kinds.find(({ of }) => (left -= of) < 0) ?? kinds[0];
}

function answersOf(chance) {
  const d = drawsOf(chance);
  const { mown, rough, spends, tasks } = kindOf(chance);
  const land = { mown: d.figure(mown[0], mown[1], 0.5, 'acre'), rough: d.figure(rough[0], rough[1], 1, 'acre'), slope: d.pick('flat', 'flat', 'rolling', 'rolling', 'steep'), ground: d.pick('firm', 'firm', 'soft', 'wet'), overhead: 'open', gate: d.often(0.4) ? d.figure(5, 12, 1, 'ft') : undefined };
  return said({
    format: 'acre-to-axle/answers/1', land, tasks: tasks(d),
    drivers: { least: d.pick('experienced', 'some', 'new'), under18: d.often(0.1) },
    storage: d.often(0.7) ? { kind: d.pick('shed', 'garage', 'outdoors'), doorHeight: d.figure(7, 12, 1, 'ft'), doorWidth: d.figure(7, 12, 1, 'ft') } : undefined,
    budget: d.often(0.85) ? { limit: { value: Math.round(spends[0] + chance() * (spends[1] - spends[0])) * 1000, currency: 'USD' }, firm: d.often(0.5) } : undefined,
    comfort: d.often(0.3) ? { cab: d.pick('heat-and-air', 'heat', 'none'), drive: d.pick('pedal', 'shuttle', 'any') } : undefined,
    priorities: d.often(0.6) ? [d.pick('price', 'time', 'headroom', 'comfort'), 'fit'] : undefined,
  });
}

/** A season's requests, one after the other and never all at once. */
export function* season(count, seed) {
  const chance = chanceOf(seed);
  for (let index = 0; index < count; index += 1) {
    const day = new Date(Date.UTC(2027, 1, 1) + Math.floor((index / count) * 270) * 86_400_000).toISOString().slice(0, 10);
    yield { invented: true, dealer: 'hollowmere', day, kind: 'shortlist', answers: answersOf(chance) };
  }
}

if (argv[1] === fileURLToPath(import.meta.url)) {
  const [count = 400, seed = 7] = argv.slice(2).map(Number);
  let block = '';
  for (const request of season(count, seed)) {
    block += `${JSON.stringify(request)}\n`;
    if (block.length < 1 << 20) continue;
    if (!stdout.write(block)) await new Promise((drained) => { stdout.once('drain', drained); });
    block = '';
  }
  stdout.write(block);
}
