import type { Shortlist } from '../../reasons/schema.ts';
import { showAmount } from '../../units/show.ts';
import { heading, item } from './layout.ts';
import { workingLines } from './working.ts';
import type { Scene } from './scene.ts';

type Need = Shortlist['needs'][number];

/** The bound of a need; a slope has none, for it compares machines and permits nothing. */
function boundOf({ bound, capability }: Need, { own, voice }: Scene): string {
  if (!bound || capability === 'slope.tip-angle') return '';
  const amount = showAmount(bound.value, bound.unit, voice.reader);
  return `${voice.words.joins.colon}${bound.is === 'at-least' ? own.atLeast(amount) : own.atMost(amount)}`;
}

function demand(need: Need, scene: Scene): string[] {
  const { own, voice: { words } } = scene;
  const weight = need.safety ? own.safety : need.must ? words.result.must : '';
  scene.notes.use(need.rule);
  return item('-', `${words.needs[need.id] ?? need.id}${boundOf(need, scene)}${weight && ` (${weight})`}`);
}

/** What the answers demand of a machine, each demand with its bound, and the sums that led to them. */
export const demands = (scene: Scene): string[] => [
  ...heading(scene.own.demandsHeading),
  ...scene.result.needs.flatMap((need) => demand(need, scene)),
  ...workingLines(scene.result.needs.map(({ working }) => ({ sums: working })), 0, scene),
];
