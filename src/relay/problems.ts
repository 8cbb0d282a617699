/**
 * Everything a relay refuses with: a closed list, so that whoever builds a form can read what may come. A problem never
 * says again what was sent.
 */
interface Problem {
  status: number;
  message: string;
  /** Seconds after which it may be tried again, where that helps. */
  after?: number;
}

export const problems = {
  'not-http': { status: 400, message: 'This is no request of HTTP.' },
  'key-missing': { status: 400, message: 'The header Idempotency-Key is missing: a UUID, made once for what is sent and kept over every attempt.' },
  'key-wrong': { status: 400, message: 'The header Idempotency-Key holds no UUID.' },
  'not-json': { status: 400, message: 'The body is no JSON: one document in UTF-8, no key twice.' },
  'not-a-request': { status: 400, message: 'The body is no request of this version. What was expected where stands in faults.' },
  device: { status: 401, message: 'The device token is not one of this dealer.' },
  origin: { status: 403, message: 'Pages of this origin may not send for this dealer. The relay’s settings list those that may.' },
  'not-by-script': { status: 403, message: 'Only a script of a page can send here.' },
  dealer: { status: 404, message: 'No dealer of this id is served here.' },
  'not-found': { status: 404, message: 'There is nothing here.' },
  method: { status: 405, message: 'This can’t be done here; the header Allow says what can.' },
  slow: { status: 408, message: 'The request took too long to come in.' },
  'too-large': { status: 413, message: 'The body is too large.' },
  'address-too-long': { status: 414, message: 'The address is too long.' },
  type: { status: 415, message: 'The body has to be application/json.' },
  'other-body': { status: 422, message: 'This key was used for another request. What was changed needs a key of its own.' },
  'seal-key': { status: 422, message: 'It was sealed to a key this relay doesn’t have any more.' },
  'seal-broken': { status: 422, message: 'The seal can’t be opened with this dealer and this key of the request.' },
  limited: { status: 429, message: 'That was too often. It can be tried again later.', after: 600 },
  'headers-too-large': { status: 431, message: 'The headers are too large.' },
  busy: { status: 503, message: 'Nothing more can be taken at the moment.', after: 30 },
  closing: { status: 503, message: 'The relay is being stopped.', after: 15 },
  unavailable: { status: 503, message: 'It can’t be stored at the moment.', after: 60 },
} as const satisfies Record<string, Problem>;

export type ProblemCode = keyof typeof problems;

/** One place of a request and what was expected there. */
export interface PlacedFault {
  place: string;
  expected: string;
}

/** A refusal on its way out. */
export class Refusal extends Error {
  readonly code: ProblemCode;
  /** Seconds, where it may be tried again. */
  readonly after: number | undefined;
  readonly faults: readonly PlacedFault[] | undefined;

  constructor(code: ProblemCode, { after, faults }: { after?: number; faults?: readonly PlacedFault[] } = {}) {
    super(code);
    this.name = 'Refusal';
    this.code = code;
    this.after = after ?? (problems[code] as Problem).after;
    this.faults = faults;
  }

  get status() {
    return problems[this.code].status;
  }

  /** As `application/problem+json` (RFC 9457) has it. */
  get body() {
    return { status: this.status, code: this.code, message: problems[this.code].message, ...(this.faults && { faults: this.faults }) };
  }
}
