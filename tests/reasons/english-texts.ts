/** Every English text a buyer may read, by the part of the page it stands in, with samples where figures go. */
import { cautionIds } from '../../src/reasons/cautions.ts';
import { en } from '../../src/reasons/words/en.ts';
import type { Often, ReasonId, Said } from '../../src/reasons/words/words.ts';

const said: Said = {
  has: '900 lb', wants: '800 lb', apart: '100 lb', best: '900 lb', worst: '600 lb', price: '$900', mass: '400 lb', part: 'Pallet forks', task: 'mow a lawn', year: '2018',
  typical: false, passage: 'gate', onHitch: false, noCoupling: false, other: 'the cab', deposit: '$2,000', months: '36 months', rate: '6%', missing: 'its weight',
};
/** The same reason in each of the ways it may have to be said. */
const ways: Said[] = [said, { ...said, onHitch: true }, { ...said, noCoupling: true }, { ...said, has: '' }, { ...said, wants: '' }, { ...said, part: '' }, { ...said, task: '' }, { ...said, price: '' }, { ...said, typical: true }];
const tasks = Object.values(en.tasks);
const specs = Object.values(en.specs);
const oftens: Often[] = ['every', 'nearly-every', 'hardly-any', 'none', 7];
const machines = 'the first one and the second one';

/** What stands for the arguments of the functions that take something else than texts, by their name. */
const samples: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  step: [[4, 9]], stepOnly: [[4]], standing: [[1, 15], [7, 15]], place: [[1], [2], [3], [4]],
  moreMachines: [[1], [4]], ruledOutHeading: [[1], [4]], moreReasons: [[1], [4]], unitsHeading: [[1], [2]], more: [[1], [3]], description: [[9]],
  points: [['1', '20'], ['4', '']], spot: [['ask'], ['out'], [2]], same: [[3]], first: oftens.map((often) => [often]), topThree: oftens.map((often) => [often]), overtakes: [['“Comfort” from 10 to 20', true], ['“Comfort” from 10 to 20', false]],
  withoutNeed: Object.values(en.needs).map((need) => [need, machines]), need: Object.values(en.needs).map((need) => [need]), alone: Object.values(en.needs).map((need) => [need]),
  withoutTask: tasks.map((task) => [task, machines]), task: tasks.map((task) => [task]), rare: tasks.map((task) => [task]), unsaid: tasks.map((task) => [task]),
  owningUnknown: specs.map((spec) => [spec]), list: [],
};
const plainSamples = ['$900', '$60', '5 years', '100 hours a year'];

/** Texts of a part of the words, however deep; functions are called with their samples. */
function textsOf(words: unknown, name = ''): string[] {
  if (typeof words === 'string') return [words];
  if (typeof words === 'function') return (samples[name] ?? [plainSamples]).map((given) => String(words(...given)));
  return Object.entries(words as object).flatMap(([key, each]) => textsOf(each, key));
}

const moved = { to: '6 ft', from: '5 ft', more: '$900' };
const relaxed = Object.values(en.waysOut.relaxed).map((say) => say(moved));
const { relaxed: _bounds, ...waysOut } = en.waysOut;
const questions = Object.values(en.questions);
const fields = questions.flatMap((question) => Object.values(question.fields));
const typed = { label: 'Lawn', word: 'furlongs', units: 'acres, ha or sq ft', from: '0.1 acres', to: '200 acres', example: '2 acres', one: '1.5 acres', other: '1,500 acres' };
const figures = { tieDowns: '50%', tongueLeast: '10%', tongueMost: '15%', force: '4 times', above: '3,000 lb', times: '3 times' };

const reasonsOf = (belongs: (id: string) => boolean) => Object.entries(en.reasons).flatMap(([id, say]) => (belongs(id) ? ways.map((each) => say(each)) : []));
const outcomeOf = (id: string) => /\.(met|failed|unknown)$/.exec(id)?.[1] ?? 'other';
const everyTask = (id: ReasonId, more: Partial<Said> = {}) => tasks.map((task) => en.reasons[id]({ ...said, ...more, task }));

const bySection: Readonly<Record<string, readonly string[]>> = {
  'questions: what is asked': questions.map(({ ask }) => ask),
  'questions: why': questions.map(({ why }) => why),
  'questions: hints': [...questions.flatMap(({ hint = [] }) => hint), ...fields.flatMap(({ hint = [], hints = {} }) => [...[hint].flat(), ...Object.values(hints)])],
  'questions: labels and options': [...fields.flatMap(({ label, options = {} }) => [label, ...Object.values(options)]), ...Object.values(en.wishes), ...Object.values(en.criteria)],
  wizard: textsOf(en.wizard),
  faults: Object.values(en.faults).map((say) => say(typed)),
  'reasons for': reasonsOf((id) => outcomeOf(id) === 'met'),
  'reasons against': reasonsOf((id) => outcomeOf(id) === 'failed'),
  'reasons unknown': [...reasonsOf((id) => outcomeOf(id) === 'unknown'), ...specs.map((missing) => en.reasons['loader.loose.unknown']({ ...said, missing }))],
  'reasons: additions, ranking and units': reasonsOf((id) => outcomeOf(id) === 'other'),
  'reasons by job': [
    ...everyTask('loader.lift.met'), ...everyTask('loader.lift.failed'), ...everyTask('loader.lift.failed', { noCoupling: true }), ...everyTask('loader.rear-axle.failed'),
    ...everyTask('implement.met'), ...everyTask('implement.failed'), ...everyTask('implement.axles.met'), ...everyTask('implement.axles.failed'), ...everyTask('implement.axles.unknown'), ...everyTask('implement.pull.failed'),
  ],
  additions: Object.values(en.additions).flatMap((say) => ways.map((each) => say(each))),
  'not cleared': Object.values(en.notCleared).flatMap((say) => [say(''), say(en.list(['mow a lawn', 'clear snow']))]),
  cautions: [...cautionIds.map((id) => en.cautions[id]('clear snow', figures)), ...tasks.map((task) => en.cautions['rare-task'](task, figures))],
  result: [...textsOf(en.result), ...Object.values(en.tiers).map((tier) => en.result.lead('Mid-size frame', tier))],
  'ways out': [...textsOf(waysOut), ...relaxed.flatMap((bound) => [en.waysOut.give.relaxed(bound), en.waysOut.withRelaxed(bound, machines)]), ...Object.values(en.needs).map((need) => en.waysOut.together(en.list([need, 'your price limit'])))],
  contrast: [
    ...textsOf(en.contrast), ...Object.values(en.contrast.topics).map((topic) => en.contrast.liftCriteria('the first one', topic)),
    ...Object.keys(en.criteria).map((criterion) => en.contrast.trade('the first one', en.contrast.gains[criterion as 'price'], en.contrast.losses.comfort)),
  ],
  'how firm the order is': textsOf(en.robustness),
  'line-up': textsOf(en.lineUp),
  guidance: [en.guidance],
};

/** What no reason says without its figure, some sample has all the same. */
const hole = / {2}|^$/;

export const sections = Object.entries(bySection).map(([section, texts]) => ({ section, texts: [...new Set(texts)].filter((text) => !hole.test(text)) }));
