/** The part of Trusted Types that is used: not every browser has it, nor do the types. */
interface TrustedTypes {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): URL };
}

/** What a policy that lists `trusted-types` has to name besides `lit-html`. */
const policyName = 'acre-to-axle-counter';

let policy: ReturnType<TrustedTypes['createPolicy']> | undefined;

/** The scripts a counter starts besides its own: what reckons, and what keeps its files. */
const allowed = /\/(?:acre-to-axle-counter-reckoning\.js|worker\.js)$/;

/** An address of a script of ours, as a page with Trusted Types lets it through: those of this origin and no other. */
export function scriptAddress(file: URL): URL {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  if (!trustedTypes) return file;
  policy ??= trustedTypes.createPolicy(policyName, {
    createScriptURL(url) {
      const { origin, pathname } = new URL(url);
      if (origin !== location.origin || !allowed.test(pathname)) throw new TypeError(`${url} is no script of the counter`);
      return url;
    },
  });
  return policy.createScriptURL(file.href);
}
