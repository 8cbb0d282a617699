import type { RuleId } from '../../trade/book.ts';

/** The first word of an id: what the rules are grouped by. */
export type Theme = RuleId extends infer Id ? (Id extends `${infer First}.${string}` ? First : never) : never;

export const themeOf = (id: RuleId) => id.slice(0, id.indexOf('.')) as Theme;
