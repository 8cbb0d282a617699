/** What a layout is made of. All of it is plain data: two layouts are the same where they read the same as JSON. */

/** How often a key is said, of sixteen documents. */
export type Often = 14 | 8 | 2;

export type Field =
  | { is: 'choice'; of: readonly string[] }
  | { is: 'yes-no' }
  /** A number of zero or more. */
  | { is: 'number' }
  /** `us` and `metric` are the units most people type it in; any of `units` is carried. */
  | { is: 'amount'; units: readonly string[]; us: string; metric: string }
  | { is: 'money'; currencies: readonly string[] }
  /** Words of a list; `order` where it matters who comes first. */
  | { is: 'several'; of: readonly string[]; order: boolean }
  | { is: 'record'; keys: Keys }
  | { is: 'records'; keys: Keys }
  /** Records of several kinds, each kind with keys of its own beside its name. */
  | { is: 'kinds'; key: string; of: Readonly<Record<string, Keys>> }
  /** The first that takes the value. */
  | { is: 'either'; of: readonly Field[] }
  /** What the schema has and no layout carries: free text, and what may be personal. */
  | { is: 'kept-back' };

/** A key, and how often it is said; or the key before it that it is nearly always said with. */
export type Key = { often: Often; field: Field } | { beside: string; field: Field };
export type Keys = Readonly<Record<string, Key>>;

export const usual = (field: Field): Key => ({ often: 14, field });
export const often = (field: Field): Key => ({ often: 8, field });
export const seldom = (field: Field): Key => ({ often: 2, field });
export const beside = (key: string, field: Field): Key => ({ beside: key, field });

export const choice = (...of: readonly string[]): Field => ({ is: 'choice', of });
export const several = (...of: readonly string[]): Field => ({ is: 'several', of, order: false });
export const ranked = (...of: readonly string[]): Field => ({ is: 'several', of, order: true });
export const either = (...of: readonly Field[]): Field => ({ is: 'either', of });
export const record = (keys: Keys): Field => ({ is: 'record', keys });
export const records = (keys: Keys): Field => ({ is: 'records', keys });
export const yesNo: Field = { is: 'yes-no' };
export const number: Field = { is: 'number' };
export const keptBack: Field = { is: 'kept-back' };

/** Amounts of a kind: its units, then those most people type it in. */
export const amounts = (...units: readonly string[]) => (us: string, metric: string): Field => ({ is: 'amount', units, us, metric });
