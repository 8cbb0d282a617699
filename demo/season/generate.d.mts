export interface InventedRequest {
  invented: true;
  dealer: string;
  day: string;
  kind: 'shortlist';
  answers: { format: 'acre-to-axle/answers/1' };
}
/** A season's requests, one after the other and never all at once. */
export function season(count: number, seed: number): Generator<InventedRequest>;
