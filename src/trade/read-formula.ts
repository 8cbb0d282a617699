import type { FormulaId } from './book.ts';
import type { formulaRules } from './figures/formulas.ts';

export interface FormulaToken {
  kind: 'name' | 'number' | 'mark' | 'sum';
  text: string;
  /** What stands between it and the token before it. */
  blank: string;
}

/** A sum with its bounds, a run of words, a number, or one character. */
const token = /(?<blank>\s*)(?:(?<sum>Σ from .+? to .+? of\b)|(?<number>\d+(?:,\d{3})*(?:\.\d+)?)|(?<name>(?!Σ)[\p{L}_](?:(?!Σ)[\p{L}\d_'’-]|[ \u00a0](?!Σ)(?=[\p{L}\d]))*)|(?<mark>\S))/gu;
const bounds = /^Σ from (?<from>.+?) to (?<to>.+?) of$/u;

/** The text of a formula in its parts; put together again they are the text, but for blanks at its end. */
export const tokensOf = (text: string): FormulaToken[] => [...text.matchAll(token)].map(({ groups = {} }) => {
  const kind = (['sum', 'number', 'name', 'mark'] as const).find((each) => groups[each] !== undefined)!;
  return { kind, text: groups[kind]!, blank: groups.blank! };
});

/** A symbol of one letter is written alike in every language, as a number is. */
export const isName = ({ kind, text }: FormulaToken) => kind === 'name' && text.length > 1;

/** The names in a formula, for which a language has words of its own. */
export const namesOf = (text: string) => tokensOf(text).filter(isName).map((each) => each.text as FormulaName);

/** From where to where a sum goes, as its token says it. */
export const boundsOf = (sum: string) => bounds.exec(sum)!.groups as { from: string; to: string };

type Mark = '=' | '×' | '/' | '+' | '−' | '(' | ')' | '^' | '√' | '∛' | '²' | '⌈' | '⌉' | ',' | ';';

type Trimmed<Text extends string> = Text extends ` ${infer Rest}` ? Trimmed<Rest> : Text extends `${infer Rest} ` ? Trimmed<Rest> : Text;

/** The same as {@link isName}, of what stands between two marks. */
type Name<Text extends string> = Trimmed<Text> extends `${number}` ? never : Trimmed<Text> extends `${string}${infer Rest}` ? (Rest extends '' ? never : Trimmed<Text>) : never;

type NamesIn<Text extends string, Before extends string = '', Found extends string = never> =
  Text extends `Σ from ${string} to ${string} of ${infer Rest}` ? NamesIn<Rest, '', Found>
  : Text extends `${infer First}${infer Rest}` ? (First extends Mark ? NamesIn<Rest, '', Found | Name<Before>> : NamesIn<Rest, `${Before}${First}`, Found>)
  : Found | Name<Before>;

type NamesOf<Id extends FormulaId> = Id extends FormulaId ? NamesIn<(typeof formulaRules)[Id]['formula']> : never;

/** Every name in a formula of the rule book, read from its text: a language that lacks one fails the type check. */
export type FormulaName = NamesOf<FormulaId>;
