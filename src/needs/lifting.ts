import { taskOf, type Answers } from '../answers/answers.ts';
import type { TaskId } from '../answers/schema.ts';
import { isFigureId, type FigureId, type RuleBook } from '../trade/book.ts';
import { baleVolume, massAtMoisture, massOfVolume } from '../trade/formulas/bale-mass.ts';
import { baleSize } from '../trade/formulas/bale-size.ts';
import { logMass } from '../trade/formulas/log-mass.ts';
import { cite, isRefusal, type Working } from '../trade/working.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Holder, Lift, Need, WeighedLift } from './need.ts';

type Length = Quantity<'length'>;
type Mass = Quantity<'mass'>;

interface Lifting {
  task: 'lift-bales' | 'lift-pallets' | 'handle-logs';
  holder: Holder;
  must: boolean;
  weight: Mass | undefined;
  height: Length | undefined;
  loadAhead: Length | undefined;
  /** What the weight and the centre were reckoned from. */
  working: Working[];
  from: readonly string[];
}

/** A load on the loader wants lift at its centre, height, and a rear axle that stays on the ground. */
function needsOfOne({ task, holder, must, weight, height, loadAhead, working, from }: Lifting): Need[] {
  const needs: Need[] = [];
  if (weight === undefined && height === undefined) {
    // Of a load nobody described the job still wants a loader, whatever it lifts.
    needs.push({ id: `${task}.loader`, capability: 'loader.any', must, safety: false, task, from, working: [] });
  }
  if (weight !== undefined && loadAhead !== undefined) {
    const lift = { holder, load: weight, loadAhead, task, from, working };
    needs.push(
      { ...lift, id: `${task}.weight`, capability: 'loader.lift', must, safety: false, rule: 'loader.margin' },
      { ...lift, id: `${task}.rear-axle`, capability: 'loader.rear-axle', must, safety: true, rule: 'loader.rear-share' },
    );
  }
  if (height !== undefined) {
    needs.push({
      id: `${task}.height`, capability: 'loader.height', atLeast: height, must, safety: false,
      task, from: [`tasks.${task}.height`], working: [],
    });
  }
  return needs;
}

type Hay = 'dry' | 'wrapped';

/** Weight of a bale from its volume: dry hay as it is weighed, wrapped hay from its dry matter and its water. */
function baleWeight(volume: Working, hay: Hay, book: RuleBook): Working[] {
  const of = (density: FigureId) =>
    cite(massOfVolume(volume.result.value as Quantity<'volume'>, book.value(density) as Quantity<'density'>), { density });
  if (hay === 'dry') return [volume, of('bale.density')];
  const dry = of('bale.dry-density');
  const wet = massAtMoisture(dry.result.value as Mass, book.value('bale.moisture.wrapped'));
  return isRefusal(wet) ? [volume, dry] : [volume, dry, cite(wet, { moisture: 'bale.moisture.wrapped' })];
}

/** Size of a bale that somebody weighed: the denser the hay, the smaller. */
function sizeOfBale(weight: Mass, hay: Hay, book: RuleBook): Working {
  if (hay === 'dry') return cite(baleSize(weight, book.value('bale.density') as Quantity<'density'>), { density: 'bale.density' });
  return baleSize(weight, (book.value('bale.dry-density') / (1 - book.value('bale.moisture.wrapped'))) as Quantity<'density'>);
}

/**
 * Round bales ride on a spear: their centre lies half a bale ahead of its face. A bale nobody weighed goes
 * by its size and by how it was made.
 */
function baleLift(answers: Answers, book: RuleBook): Lifting | undefined {
  const task = taskOf(answers, 'lift-bales');
  if (!task) return undefined;
  const { diameter, width, hay = 'dry' } = task;
  const bySize = task.weight === undefined && diameter !== undefined && width !== undefined;
  const reckoned = bySize ? baleWeight(baleVolume(diameter, width), hay, book) : [];
  const weight = task.weight ?? (reckoned.at(-1)?.result.value as Mass | undefined);
  const size = weight === undefined || diameter !== undefined ? undefined : sizeOfBale(weight, hay, book);
  const across = diameter ?? size?.result.value;
  return {
    task: 'lift-bales', holder: 'bale-spear', must: task.must === true, weight, height: task.height,
    loadAhead: across === undefined ? undefined : ((book.value('spear.face') + across / 2) as Length),
    working: [...reckoned, ...(size ? [size] : [])],
    from: bySize ? ['tasks.lift-bales.diameter', 'tasks.lift-bales.width', 'tasks.lift-bales.hay'] : ['tasks.lift-bales.weight'],
  };
}

/** Pallets ride on forks: their centre lies 24 in ahead of the fork face. */
function palletLift(answers: Answers, book: RuleBook): Lifting | undefined {
  const task = taskOf(answers, 'lift-pallets');
  return task && {
    task: 'lift-pallets', holder: 'pallet-forks', must: task.must === true, weight: task.weight, height: task.height,
    loadAhead: (book.value('forks.face') + book.value('forks.load-centre')) as Length,
    working: [], from: ['tasks.lift-pallets.weight'],
  };
}

/** A buyer's own word as the rule book writes it in an id. */
const inId = (word: string | undefined) => word?.trim().toLowerCase().replace(/\s+/g, '-');

/** Density of a green log by its species: the heavy end of common hardwood where nobody knows it. */
export const logDensity = (species: string | undefined): FigureId => {
  const id = `log.${inId(species)}`;
  return isFigureId(id) ? id : 'log.unknown';
};

/** Logs ride in a grapple. One that nobody weighed goes by species, diameter and length. */
function logLift(answers: Answers, book: RuleBook): Lifting | undefined {
  const task = taskOf(answers, 'handle-logs');
  if (!task) return undefined;
  const { diameter, length, species } = task;
  const bySize = task.weight === undefined && diameter !== undefined && length !== undefined;
  const density = logDensity(species);
  const reckoned = bySize ? cite(logMass(book.value(density) as Quantity<'density'>, diameter, length), { density }) : undefined;
  return {
    task: 'handle-logs', holder: 'grapple', must: task.must === true, height: task.height,
    weight: task.weight ?? (reckoned?.result.value as Mass | undefined),
    loadAhead: book.value('grapple.load-centre') as Length, working: reckoned ? [reckoned] : [],
    from: bySize ? ['tasks.handle-logs.species', 'tasks.handle-logs.diameter', 'tasks.handle-logs.length'] : ['tasks.handle-logs.weight'],
  };
}

/** Density of loose material by its name, or undefined where the rule book hasn't got it. */
const bulkDensity = (material: string | undefined): FigureId | undefined => {
  const id = `bulk.${inId(material)}`;
  return isFigureId(id) ? id : undefined;
};

/** Loose material goes by the bucketful: a loader, a rear axle that stays down, and the time it takes. */
function needsOfLoose(answers: Answers, book: RuleBook): Need[] {
  const task = taskOf(answers, 'move-loose');
  if (!task) return [];
  const must = task.must === true;
  const rule = bulkDensity(task.material);
  const bulk = rule && (book.value(rule) as Quantity<'density'>);
  const from = ['tasks.move-loose.material'];
  const base = { task: 'move-loose', from, working: [] } as const;
  return [
    { ...base, id: 'move-loose.loader', capability: 'loader.any', must, safety: false },
    {
      ...base, id: 'move-loose.rear-axle', capability: 'loader.rear-axle', must, safety: true, rule: 'loader.rear-share',
      ...bucketful(bulk, book),
    },
    ...(bulk === undefined || task.volume === undefined ? [] : [{
      ...base, id: 'move-loose.hours', capability: 'loader.loose', bulk, volume: task.volume, must: false, safety: false,
      from: [...from, 'tasks.move-loose.volume'], rule,
    } as const]),
  ];
}

const bucketful = (bulk: Quantity<'density'> | undefined, book: RuleBook): Lift => ({
  task: 'move-loose', holder: 'bucket', ...(bulk !== undefined && { bulk }), loadAhead: book.value('bucket.load-centre') as Length,
});

/** A grapple opens and closes by a third function: the loader's own two lift and tip. */
const needsOfGrapple = (answers: Answers): Need[] => {
  const task = taskOf(answers, 'handle-logs');
  return task ? [{
    id: 'handle-logs.third-function', capability: 'third-function', must: task.must === true, safety: false,
    task: 'handle-logs', from: ['tasks'], working: [],
  }] : [];
};

const liftings = (answers: Answers, book: RuleBook) =>
  [baleLift(answers, book), palletLift(answers, book), logLift(answers, book)].flatMap((lifting) => lifting ?? []);

/** Each load to be lifted, with what it asks of loader and rear axle. */
export const needsOfLifting = (answers: Answers, book: RuleBook): Need[] => [
  ...liftings(answers, book).flatMap(needsOfOne), ...needsOfGrapple(answers), ...needsOfLoose(answers, book),
];

/** The loads of the buyer's loader tasks whose weight is known. */
const weighed = (answers: Answers, book: RuleBook): WeighedLift[] =>
  liftings(answers, book).flatMap(({ task, weight, holder, loadAhead }) =>
    (weight === undefined || loadAhead === undefined ? [] : [{ task, holder, load: weight, loadAhead }]));

/** Every load of the buyer's loader tasks, the bucketful among them: the worst of them counts on a slope. */
export function liftsOf(answers: Answers, book: RuleBook): Lift[] {
  const loose = taskOf(answers, 'move-loose');
  const bulk = bulkDensity(loose?.material);
  return [
    ...weighed(answers, book),
    ...(loose ? [bucketful(bulk && (book.value(bulk) as Quantity<'density'>), book)] : []),
  ];
}

/** The tasks that are done with the loader. */
export const loaderTasks: readonly TaskId[] = ['lift-bales', 'lift-pallets', 'move-loose', 'handle-logs'];
