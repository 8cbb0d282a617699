import type { Answers } from '../../answers/answers.ts';
import type { RuleBook } from '../../trade/book.ts';
import { factors } from '../../units/quantity.ts';
import type { Dimension, Shape } from '../shape.ts';
import type { PictureWords } from './words.ts';

/** What a picture is drawn from. */
export interface Given {
  answers: Answers;
  book: RuleBook;
  units: 'us' | 'metric';
  words: PictureWords;
  /** A length, a mass and an angle in SI, shown in the reader's units; without the last, whole degrees. */
  length(metres: number): string;
  mass(kg: number): string;
  angle?(radians: number): string;
}

/** A dimension line by what it says: not every one is an exact figure. */
export type SaidDimension = Omit<Dimension, 'value'> & { said: string };

/** One thing of a picture, in metres, with what is written under it. */
export interface PictureCell {
  shapes: readonly Shape[];
  dimensions: readonly SaidDimension[];
  name: string;
  lines: readonly string[];
  /** The buyer's own, or what the buyer has chosen. */
  own: boolean;
}

export interface Picture {
  title: string;
  cells: readonly PictureCell[];
  /** CSS pixels to the metre: fewer than the least don't read, more than the most take room for nothing. */
  scale: { least: number; most: number };
}

export const ft = factors.length.ft;
export const showAngle = (radians: number, { angle }: Given) => angle?.(radians) ?? `${Math.round(radians / factors.angle.deg)}°`;
