/**
 * What a relay's database is asked to count what buyers asked for. All it makes are temporary tables: numbers of requests,
 * machines and needs, seen by the connection that made them alone, and gone with it.
 *
 * Machines that serve as many are told in code-unit order, which for ids is the order of bytes (`COLLATE "C"`).
 */

export const makeTables = `
  CREATE TEMPORARY TABLE asked (number bigint PRIMARY KEY, seq bigint NOT NULL, buyers bigint NOT NULL);
  CREATE TEMPORARY TABLE outcomes (number bigint PRIMARY KEY, served text NOT NULL, first text);
  CREATE TEMPORARY TABLE lacked (number bigint NOT NULL, need text NOT NULL);
  CREATE TEMPORARY TABLE would (number bigint NOT NULL, machine text NOT NULL);
`;
export const dropTables = 'DROP TABLE IF EXISTS pg_temp.asked, pg_temp.outcomes, pg_temp.lacked, pg_temp.would';

/** Two texts are the same where their hashes are: a hash is shorter than what a buyer says. */
const likeness = `sha256(convert_to(answers, 'UTF8'))`;

/** Of one dealer, or of all where none is given. */
const ofDealer = 'WHERE ($1::text IS NULL OR dealer = $1)';
export const howMany = `SELECT coalesce(sum(buyers), 0)::bigint AS seen, count(*) AS different FROM (SELECT count(*) AS buyers FROM acre.statistics ${ofDealer} GROUP BY ${likeness}) AS alike`;

const askedFrom = (requests: string) => `
  INSERT INTO pg_temp.asked (number, seq, buyers)
  SELECT row_number() OVER (ORDER BY min(seq)), min(seq), count(*) FROM ${requests} GROUP BY ${likeness}`;
export const askAll = askedFrom(`acre.statistics ${ofDealer}`);
/** Each as likely as any other, and the same each time: in the order of their numbers' hashes. */
export const askDrawn = askedFrom(`acre.statistics WHERE seq IN (SELECT seq FROM acre.statistics ${ofDealer} ORDER BY sha256(int8send(seq)) LIMIT $2)`);

export const part = `
  SELECT number, answers AS text, buyers FROM pg_temp.asked JOIN acre.statistics USING (seq)
  WHERE number > $1 ORDER BY number LIMIT $2`;

export const putOutcomes = 'INSERT INTO pg_temp.outcomes SELECT * FROM unnest($1::bigint[], $2::text[], $3::text[])';
export const putLacked = 'INSERT INTO pg_temp.lacked SELECT * FROM unnest($1::bigint[], $2::text[])';
export const putWould = 'INSERT INTO pg_temp.would SELECT * FROM unnest($1::bigint[], $2::text[])';
/** Without it the server reckons with tables as they were when they were made. */
export const lookAtTables = 'ANALYZE pg_temp.asked, pg_temp.outcomes, pg_temp.lacked, pg_temp.would';

export const servedHow = `
  SELECT coalesce(served, 'unreadable') AS served, sum(buyers)::bigint AS buyers
  FROM pg_temp.asked LEFT JOIN pg_temp.outcomes USING (number) GROUP BY 1`;
export const beyond = `
  SELECT coalesce(sum(buyers), 0)::bigint AS buyers FROM pg_temp.outcomes JOIN pg_temp.asked USING (number)
  WHERE served = 'none' AND NOT EXISTS (SELECT FROM pg_temp.would WHERE would.number = outcomes.number)`;
export const first = `
  SELECT first AS id, sum(buyers)::bigint AS buyers FROM pg_temp.outcomes JOIN pg_temp.asked USING (number)
  WHERE first IS NOT NULL GROUP BY first ORDER BY buyers DESC, first COLLATE "C"`;
export const lacked = `
  SELECT need AS id, sum(buyers)::bigint AS buyers FROM pg_temp.lacked JOIN pg_temp.asked USING (number)
  GROUP BY need ORDER BY buyers DESC, need COLLATE "C"`;
export const would = `
  SELECT machine, sum(buyers)::bigint AS serves FROM pg_temp.would JOIN pg_temp.asked USING (number)
  GROUP BY machine ORDER BY serves DESC, machine COLLATE "C"`;

/** What the next machine serves whom none of those given serves. */
export const next = `
  SELECT machine, sum(buyers)::bigint AS more FROM pg_temp.would JOIN pg_temp.asked USING (number)
  WHERE NOT EXISTS (SELECT FROM pg_temp.would AS before WHERE before.number = would.number AND before.machine = ANY ($1::text[]))
  GROUP BY machine ORDER BY more DESC, machine COLLATE "C" LIMIT 1`;

/**
 * The best of all choices of so many machines: each choice beside each set of machines that would serve somebody. Sets are the bits
 * of a number, which are compared at once, and buyers are counted in four bytes, which add up without fractions: some ten million
 * pairs take seconds so.
 */
export const best = `
  WITH RECURSIVE
    machines AS (SELECT machine, place, 1::bigint << place AS bit FROM (SELECT machine, row_number() OVER (ORDER BY machine COLLATE "C")::int AS place FROM (SELECT DISTINCT machine FROM pg_temp.would) AS each) AS placed),
    sets AS MATERIALIZED (
      SELECT bits, sum(buyers)::int AS buyers FROM (SELECT number, bit_or(bit) AS bits FROM pg_temp.would JOIN machines USING (machine) GROUP BY number) AS each
      JOIN pg_temp.asked USING (number) GROUP BY bits),
    choices (places, bits) AS (
      SELECT ARRAY[]::int[], 0::bigint
      UNION ALL
      SELECT places || place, bits | bit FROM choices JOIN machines ON place > coalesce(places[cardinality(places)], 0) WHERE cardinality(places) < $1)
  SELECT (SELECT array_agg(machine ORDER BY place) FROM machines WHERE place = ANY (places)) AS machines, serves
  FROM (
    SELECT places, (SELECT sum(buyers) FROM sets WHERE sets.bits & choices.bits <> 0) AS serves
    FROM choices WHERE cardinality(places) = $1
  ) AS tried ORDER BY serves DESC, places LIMIT 1`;
