import { figureRules, type FigureId } from '../../../trade/book.ts';

/** What the figures of the rule book stand for: the book itself says it in English. */
export const figures = Object.fromEntries(
  Object.entries(figureRules).map(([id, { statement }]) => [id, statement]),
) as Record<FigureId, string>;
