import { taskOf, type Answers, type TaskOf } from '../answers/answers.ts';
import type { TaskId } from '../answers/schema.ts';
import type { ImplementKind } from '../catalogue/schema.ts';
import type { RuleBook } from '../trade/book.ts';
import { areaOfStrip } from '../trade/formulas/area-of-strip.ts';
import { massOfVolume } from '../trade/formulas/bale-mass.ts';
import { snowVolume } from '../trade/formulas/snow.ts';
import { cite, type Working } from '../trade/working.ts';
import { atMost } from '../units/compare.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Need } from './need.ts';

type Length = Quantity<'length'>;

/** A job done with an implement behind the tractor: which kinds do it, and over what area. */
interface Job {
  task: TaskId;
  kinds: readonly ImplementKind[];
  /** Pulled through or over the ground, so that grip decides and not the PTO. */
  pulled?: boolean;
  capacity?: Length;
  area?: Quantity<'area'> | undefined;
  areaFrom?: readonly string[];
  working?: readonly Working[];
}

/** What clears a drive: snow deeper than a blade moves wants a blower, whatever was wished for. */
function snowKinds(how: 'blade' | 'blower' | 'either' | undefined, depth: Length | undefined, book: RuleBook): readonly ImplementKind[] {
  const deep = depth !== undefined && !atMost(depth, book.value('snow.blade-deepest'));
  if (deep || how === 'blower') return ['snow-blower'];
  return how === 'blade' ? ['rear-blade'] : ['rear-blade', 'snow-blower'];
}

/** What lies on the drive after a deep fall, by volume and weight: told with the hours it takes. */
function snowJob(snow: TaskOf<'clear-snow'>, strip: Pick<Job, 'area' | 'areaFrom' | 'working'>, book: RuleBook): Job {
  const job: Job = { task: 'clear-snow', kinds: snowKinds(snow.how, snow.depth, book), ...strip };
  if (snow.length === undefined || snow.depth === undefined) return job;
  const volume = cite(snowVolume(snow.length, book.value('drive.width') as Length, snow.depth), { width: 'drive.width' });
  const mass = cite(
    massOfVolume(volume.result.value as Quantity<'volume'>, book.value('snow.density.settled') as Quantity<'density'>), { density: 'snow.density.settled' },
  );
  return { ...job, areaFrom: [...(strip.areaFrom ?? []), 'tasks.clear-snow.depth'], working: [...(strip.working ?? []), volume, mass] };
}

/** A drive as long as the buyer said and as wide as drives are. */
const stripOf = (length: Length | undefined, book: RuleBook): Working | undefined =>
  (length === undefined ? undefined : cite(areaOfStrip(length, book.value('drive.width') as Length), { width: 'drive.width' }));

function jobsOf(answers: Answers, book: RuleBook): Job[] {
  const of = <T extends TaskId>(task: T) => taskOf(answers, task);
  const [till, grade, snow, holes, chip] = [of('till-garden'), of('grade-drive'), of('clear-snow'), of('bore-holes'), of('chip-brush')];
  const [spread, hay, arena, level] = [of('spread-spray'), of('make-hay'), of('drag-arena'), of('level-field')];
  const onDrive = (task: 'grade-drive' | 'clear-snow', length: Length | undefined) => {
    const working = stripOf(length, book);
    return working ? { area: working.result.value as Quantity<'area'>, areaFrom: [`tasks.${task}.length`], working: [working] } : {};
  };
  const over = (task: TaskId, area: Quantity<'area'> | undefined) => ({ area, areaFrom: [`tasks.${task}.area`] });
  return [
    ...(till ? [{ task: 'till-garden', kinds: ['tiller'], ...over('till-garden', till.area) } as const] : []),
    ...(grade ? [{ task: 'grade-drive', kinds: ['box-blade', 'rear-blade', 'landscape-rake'], pulled: true, ...onDrive('grade-drive', grade.length) } as const] : []),
    ...(snow ? [snowJob(snow, onDrive('clear-snow', snow.length), book)] : []),
    ...(holes ? [{ task: 'bore-holes', kinds: ['post-hole-digger'] } as const] : []),
    ...(chip ? [{ task: 'chip-brush', kinds: ['chipper'], ...(chip.diameter !== undefined && { capacity: chip.diameter }) } as const] : []),
    ...(spread ? [{ task: 'spread-spray', kinds: ['spreader', 'sprayer'], ...over('spread-spray', spread.area) } as const] : []),
    ...(hay ? [{ task: 'make-hay', kinds: ['disk-mower'], ...over('make-hay', hay.area) } as const] : []),
    ...(arena ? [{ task: 'drag-arena', kinds: ['drag-harrow', 'landscape-rake'], pulled: true, ...over('drag-arena', arena.area) } as const] : []),
    ...(level ? [{ task: 'level-field', kinds: ['disk', 'plough', 'box-blade'], pulled: true, ...over('level-field', level.area) } as const] : []),
  ];
}

function needsOfJob({ task, kinds, pulled, capacity, area, areaFrom = [], working = [] }: Job, answers: Answers): Need[] {
  const must = taskOf(answers, task)?.must === true;
  const { ground = 'firm', soil = 'clay' } = answers.land ?? {};
  const base = { task, must, safety: false, working: [] } as const;
  return [
    {
      ...base, id: `${task}.implement`, capability: 'implement', kinds, ...(capacity !== undefined && { capacity }),
      from: capacity === undefined ? ['tasks'] : [`tasks.${task}.diameter`],
    },
    { ...base, id: `${task}.axles`, capability: 'implement.axles', safety: true, from: ['tasks'], rule: 'hitch.front-share' },
    ...(pulled ? [{ ...base, id: `${task}.pull`, capability: 'implement.pull', ground, soil, from: ['land.ground', 'land.soil'], rule: `traction.${ground}` } as const] : []),
    ...(area === undefined ? [] : [{ ...base, id: `${task}.hours`, capability: 'implement.hours', area, must: false, from: areaFrom, working } as const]),
  ];
}

/** The jobs done with an implement on hitch and PTO, and the axles that have to bear mower and cutter too. */
export function needsOfWorkingGround(answers: Answers, book: RuleBook): Need[] {
  const hung = (['mow-lawn', 'cut-rough', 'dig'] as const).flatMap((task) => taskOf(answers, task) ?? []);
  return [
    ...jobsOf(answers, book).flatMap((job) => needsOfJob(job, answers)),
    ...hung.map(({ task, must }): Need => ({
      id: `${task}.axles`, capability: 'implement.axles', task, must: must === true, safety: true, from: ['tasks'], rule: 'hitch.front-share', working: [],
    })),
  ];
}
