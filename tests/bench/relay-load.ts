/** Load on a relay: requests as fast as they come through or by a timetable, and connections that are slow on purpose. */
import { fork } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { Agent, request as httpRequest } from 'node:http';
import { setImmediate as turn, setTimeout as wait } from 'node:timers/promises';
import { keyHeader, paths } from '../../src/request/names.ts';
import { aRequest } from '../request/a-request.ts';

/** What a counter of the dealer sends: its limits are the widest. */
export const token = 'a-device-of-the-bench';
export const origin = 'https://dealer.example';

export interface Answer {
  /** 0 where the connection ended without an answer. */
  status: number;
  after: string | undefined;
  /** From when it was due to the end of the answer [ms]. */
  took: number;
}

let count = 0;
/** Never rejects: a connection that is reset is an answer too. */
export function ask(port: number, agent: Agent, due = performance.now()): Promise<Answer> {
  count += 1;
  const body = JSON.stringify({ ...aRequest, address: `buyer${count}@lane${count}.example` });
  return new Promise((resolve) => {
    const ended = (status: number, after?: string) => resolve({ status, after, took: performance.now() - due });
    const call = httpRequest({
      port, host: '127.0.0.1', path: paths.shortlists, method: 'POST', agent,
      headers: { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body), [keyHeader]: randomUUID(), origin, 'sec-fetch-mode': 'cors', 'sec-fetch-dest': 'empty', authorization: `Bearer ${token}` },
    }, (response) => {
      response.once('error', () => ended(0)).once('end', () => ended(response.statusCode!, response.headers['retry-after'])).resume();
    });
    // Whatever comes after the first: a socket may fail twice.
    call.on('error', () => ended(0));
    call.end(body);
  });
}

export const agentOf = (most: number) => new Agent({ keepAlive: true, maxSockets: most });
export const accepted = (answers: readonly Answer[]) => answers.filter(({ status }) => status === 202);

/** As many as come through, so many at once. */
export async function asFastAsCan(port: number, at: number, seconds: number): Promise<Answer[]> {
  const agent = agentOf(at);
  const until = performance.now() + seconds * 1_000;
  const answers: Answer[] = [];
  await Promise.all(Array.from({ length: at }, async () => {
    while (performance.now() < until) answers.push(await ask(port, agent));
  }));
  agent.destroy();
  return answers;
}

/** So many a second by a timetable, whatever came of those before: waiting counts. */
export async function steadily(port: number, perSecond: number, seconds: number, atOnce = 500): Promise<Answer[]> {
  const agent = agentOf(atOnce);
  const begun = performance.now();
  const asked: Promise<Answer>[] = [];
  for (let index = 0; index < perSecond * seconds; index += 1) {
    const due = begun + (index * 1_000) / perSecond;
    const left = due - performance.now();
    // Whoever is late still lets answers in.
    await (left > 0 ? wait(left) : turn());
    asked.push(ask(port, agent, due));
  }
  const answers = await Promise.all(asked);
  agent.destroy();
  return answers;
}

export interface Slow {
  /** How many are open now. */
  open(): Promise<number>;
  end(): Promise<void>;
}

/** A process of its own, which says something once it is ready and answers each word after that. */
export async function helper<Said>(program: string, args: readonly string[]) {
  const child = fork(program, args, { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] });
  const [said] = await once(child, 'message') as [Said];
  return {
    said,
    async ask<Answer>(word: string): Promise<Answer> {
      child.send(word);
      const [answer] = await once(child, 'message') as [Answer];
      return answer;
    },
    async end() {
      const exit = once(child, 'exit');
      child.disconnect();
      await exit;
    },
  };
}

/** Holds connections that send a head and never end it, from a process of its own; what the server ends is opened again. */
export async function slowOnes(program: string, port: number, many: number): Promise<Slow> {
  const { ask: asked, end } = await helper(program, [String(port), String(many)]);
  return { open: () => asked<number>('count'), end };
}
