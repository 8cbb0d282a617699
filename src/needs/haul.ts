import type { Answers } from '../answers/answers.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Need } from './need.ts';

const gate = { must: true, safety: true, working: [] } as const;

/** What goes on the buyer's own trailer stays within its payload, its deck and the tow rating. */
export function needsOfHaul(answers: Answers): Need[] {
  const { how, trailer = {}, towRating, tongueRating } = answers.haul ?? {};
  if (how !== 'own-trailer') return [];
  const { gross, empty, deckWidth, deckLength } = trailer;
  return [
    ...(gross === undefined || empty === undefined ? [] : [{
      ...gate, id: 'haul.payload', capability: 'trailer.payload', atMost: Math.max(0, gross - empty) as Quantity<'mass'>,
      from: ['haul.trailer.gross', 'haul.trailer.empty'], rule: 'haul.reserve',
    } as const]),
    ...(towRating === undefined || empty === undefined ? [] : [{
      ...gate, id: 'haul.tow-rating', capability: 'trailer.tow-rating', atMost: towRating, trailer: empty,
      from: ['haul.towRating', 'haul.trailer.empty'], rule: 'haul.reserve',
    } as const]),
    ...(tongueRating === undefined || empty === undefined ? [] : [{
      ...gate, id: 'haul.tongue', capability: 'trailer.tongue', atMost: tongueRating, trailer: empty,
      from: ['haul.tongueRating', 'haul.trailer.empty'], rule: 'haul.tongue.least',
    } as const]),
    ...(deckWidth === undefined ? [] : [{
      ...gate, id: 'haul.deck-width', capability: 'trailer.deck-width', atMost: deckWidth,
      from: ['haul.trailer.deckWidth'], rule: 'haul.deck-side',
    } as const]),
    ...(deckLength === undefined ? [] : [{
      ...gate, id: 'haul.deck-length', capability: 'trailer.deck-length', atMost: deckLength, from: ['haul.trailer.deckLength'],
    } as const]),
  ];
}
