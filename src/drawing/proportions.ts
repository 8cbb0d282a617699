/**
 * Where lines run within sizes that are known or assumed elsewhere: how a drawing looks, and nothing a reader
 * could take off it as a figure. Shares of the size named; none of them decides anything. What is used once, such as
 * the corners of a seat, stands as a share beside the size it is a share of, in the view that draws it.
 */
export const proportions = {
  /** Of what the length exceeds the wheelbase by, the part behind the rear axle. */
  behindRearAxle: 0.55,
  /** Of the wheelbase, from the rear axle. */
  chassisBack: -0.13,
  chassisStep: 0.42,
  firewall: 0.54,
  seatBack: -0.1,
  seatFront: 0.19,
  steeringWheel: 0.42,
  ropsPost: -0.2,
  cabBack: -0.27,
  cabFront: 0.5,
  loaderPivot: 0.66,
  platformFront: 0.5,
  /** Of the height over ROPS or cab. */
  seatHeight: 0.44,
  seatTop: 0.65,
  postThickness: 0.02,
  steeringHeight: 0.575,
  platformHeight: 0.24,
  roof: 0.055,
  /** Of the bonnet's height. */
  noseTop: 0.92,
  noseBottom: 0.5,
  chassisTop: 0.6,
  pivotHeight: 0.86,
  pinAtRest: 0.12,
  bucketHeight: 0.3,
  bucketDepth: 0.4,
  armThickness: 0.075,
  /** Of a tyre's radius. */
  rim: 0.6,
  hub: 0.16,
  lug: 0.86,
  fender: 1.1,
  /** Of the width over the tyres, on each side of the middle. */
  hoop: 0.27,
  cabSide: 0.36,
  seatSide: 0.17,
  linkSide: 0.15,
  /** A deck between the axles: metres, for it hangs at any height. */
  deckBottom: 0.07,
  deckTop: 0.2,
  /** A pallet's height, and the bar below the ground that stands for a trailer's deck: metres. */
  palletHeight: 0.14,
  deckBarTop: -0.1,
  deckBarBottom: -0.2,
} as const;

/** Lugs round a tyre: the turn from one to the next as a unit vector, by the closed forms of sine and cosine. */
export const lugs = { count: 24, turn: [(Math.sqrt(6) + Math.sqrt(2)) / 4, (Math.sqrt(6) - Math.sqrt(2)) / 4] } as const;

/** Paper, not machine: CSS pixels. */
export const paper = {
  gap: 18,
  text: 12,
  name: 13,
  lineHeight: 17,
  dimension: 22,
  leastCell: 112,
  top: 14,
  foot: 44,
  legendLine: 14,
  /** Share of the text's size that a letter is wide, on the safe side: text can't be measured here. */
  letter: 0.6,
} as const;
