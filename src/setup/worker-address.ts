/** The part of Trusted Types that is used: not every browser has it, nor do the types. */
interface TrustedTypes {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): URL };
}

/** What a policy that lists `trusted-types` has to name besides `lit-html`. */
const policyName = 'acre-to-axle-set-up';
/** Beside the page's own script, as the build names it. */
const workerFile = 'acre-to-axle-set-up-worker.js';

let policy: ReturnType<TrustedTypes['createPolicy']> | undefined;

/** Address of the worker, as a page with Trusted Types lets it through: this one and no other. */
export function workerAddress(parameters: Readonly<Record<string, string>>): URL {
  const file = new URL(workerFile, import.meta.url);
  const whole = new URL(`?${new URLSearchParams(parameters)}`, file);
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  if (!trustedTypes) return whole;
  policy ??= trustedTypes.createPolicy(policyName, {
    createScriptURL(url) {
      const { origin, pathname } = new URL(url);
      if (origin !== file.origin || pathname !== file.pathname) throw new TypeError(`${url} is not the worker`);
      return url;
    },
  });
  return policy.createScriptURL(whole.href);
}
