import type { RuleId } from '../../trade/book.ts';
import { usesOfRules } from './uses.ts';

/** A module of ours that reads a rule. */
export type Module = (typeof usesOfRules)[keyof typeof usesOfRules][number];

export const modulesOf = (id: RuleId) => (usesOfRules as Partial<Record<RuleId, readonly Module[]>>)[id] ?? [];
