import type { QuestionId } from '../../answers/questions.ts';
import { balesPicture } from './bales.ts';
import { deckPicture } from './deck.ts';
import { palletsPicture } from './pallets.ts';
import type { Given, Picture } from './picture.ts';
import { descriptionOf, pictureSvg, type PictureWish } from './picture-svg.ts';
import { slopePicture } from './slope.ts';

const pictures: Readonly<Partial<Record<QuestionId, (given: Given) => Picture>>> = {
  slope: slopePicture, bales: balesPicture, deck: deckPicture, pallets: palletsPicture,
};

/** Whether a question has a picture that shows what words hardly can. */
export const hasPicture = (question: QuestionId): boolean => Object.hasOwn(pictures, question);

/** The width it is drawn for where the caller names none: a phone's. */
const narrow = 280;

/** The picture beside a question, with its title and what it shows in words; undefined where there is none. */
export function pictureOf(question: QuestionId, given: Given & Pick<PictureWish, 'prefix'> & Partial<PictureWish>): { svg: string; title: string; description: string } | undefined {
  const picture = pictures[question]?.(given);
  if (!picture) return undefined;
  const { prefix, width = narrow, direction = 'ltr' } = given;
  return { svg: pictureSvg(picture, { prefix, width, direction }), title: picture.title, description: descriptionOf(picture) };
}
