/** Names the answers are made of, apart from their schema, so that a page can ask before it has read one. */
export const answersFormat = 'acre-to-axle/answers/1';

/** What a buyer said who has said nothing yet. */
export const noAnswers = { format: answersFormat } as const;

export const criteria = ['price', 'time', 'headroom', 'fit', 'comfort', 'resale'] as const;
export type Criterion = (typeof criteria)[number];

export const comfortWishes = [
  'cab', 'drive', 'smoothSeat', 'tiltWheel', 'cruise', 'loaderOff', 'levelLift', 'mowerLiftAlone', 'exhaust',
] as const;

/** Questions that most buyers can leave out, by their ids: each is asked of who wants it looked at. */
export const finerPoints = ['haul', 'paying', 'use', 'cab', 'drive', 'extras'] as const;
export type FinerPoint = (typeof finerPoints)[number];
