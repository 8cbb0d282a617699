import { showAmount } from '../../../units/show.ts';
import type { Shortlist } from '../../../reasons/schema.ts';
import type { MailInput } from '../input.ts';
import type { Block } from '../parts.ts';

type Need = Shortlist['needs'][number];

/** The bound of a need; a slope has none, for it compares machines and permits nothing. */
function boundOf({ bound, capability }: Need, { voice, words: { demands } }: MailInput): string {
  if (!bound || capability === 'slope.tip-angle') return '';
  const amount = showAmount(bound.value, bound.unit, voice.reader);
  return `${voice.words.joins.colon}${bound.is === 'at-least' ? demands.atLeast(amount) : demands.atMost(amount)}`;
}

/** What the answers demand of a machine, each demand with its bound. */
export function demandsPart(input: MailInput): Block {
  const { shortlist: { needs }, voice: { words }, words: { demands } } = input;
  const lines = needs.map((need) => {
    const weight = need.safety ? demands.safety : need.must ? words.result.must : '';
    return `– ${words.needs[need.id] ?? need.id}${boundOf(need, input)}${weight && ` (${weight})`}`;
  });
  return { kind: 'block', heading: demands.heading, lines: lines.length > 0 ? lines : [demands.none] };
}
