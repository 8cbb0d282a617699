import type { CatalogueDocument } from '../../catalogue/schema.ts';
import { inLikeOrder } from '../../demand/like-order.ts';
import type { Gathered } from '../../demand/requests.ts';
import type { Io } from '../io.ts';
import type { RequestsFrom } from './requests-at.ts';

/** Judged between two signs of how far it is. */
const tellEvery = 1_000;

export interface Wanted {
  catalogue: CatalogueDocument;
  requests: RequestsFrom;
  /** To judge at the most. */
  most: number;
  /** Machines to bring in to name at the most. */
  toBring: number;
}

/** Has all requests judged and counted where they lie, and tells how far it is and what it cost. Fails as reading them does. */
export async function judged({ catalogue, requests: from, most, toBring }: Wanted, io: Io): Promise<Gathered> {
  const requests = await io.requests(from, most, (read) => io.err(`${read} requests read`));
  const judges = io.judges(catalogue);
  let before = 0;
  try {
    for await (const part of requests.parts()) {
      const asked = inLikeOrder(part);
      let told = 0;
      const outcomes = await judges.judge(asked.map(({ text }) => text), (done) => {
        if (done - told < tellEvery && done < asked.length) return;
        told = done;
        io.err(`${before + done} different answers judged${most === Infinity ? '' : ` of ${before + asked.length}`}`);
      });
      before += asked.length;
      await requests.take(asked, outcomes);
    }
    const gathered = await requests.gathered(toBring);
    const { seconds, megabytes } = io.spent();
    io.err(`${gathered.seen} requests, ${before} judged, in ${Math.round(seconds)} s with ${Math.round(megabytes)} MB of memory at the most`);
    return gathered;
  } finally {
    await judges.end();
    await requests.close();
  }
}
