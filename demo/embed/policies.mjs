/** Headers that some of the host pages are sent with: policies to copy. */

/** All that the wizard needs, on a page that serves its script, its catalogue and its photos itself. */
const strict = [
  "default-src 'none'", "script-src 'self'", "style-src 'self'", "connect-src 'self'", "img-src 'self' data:", "base-uri 'none'", "form-action 'none'",
  'trusted-types lit-html', "require-trusted-types-for 'script'",
].join('; ');

/** The dealer's set-up page: its own worker besides, and photos of the units where the wizard is tried. */
const setUp = [
  "default-src 'none'", "script-src 'self'", "worker-src 'self'", "style-src 'self'", "connect-src 'self'", "img-src 'self' data: https:", "base-uri 'none'", "form-action 'none'",
  "frame-ancestors 'none'", 'trusted-types lit-html acre-to-axle-set-up', "require-trusted-types-for 'script'",
].join('; ');

/** The counter: its worker and what keeps its files. A relay's address belongs into `connect-src` as well. */
const counter = [
  "default-src 'none'", "script-src 'self'", "worker-src 'self'", "style-src 'self'", "connect-src 'self'", "img-src 'self' data: https:", "manifest-src 'self'", "base-uri 'none'", "form-action 'none'",
  "frame-ancestors 'none'", 'trusted-types lit-html acre-to-axle-counter', "require-trusted-types-for 'script'",
].join('; ');

export const headersOf = {
  '/counter/': { 'content-security-policy': counter },
  '/counter/index.html': { 'content-security-policy': counter },
  '/embed/strict.html': { 'content-security-policy': strict, 'cross-origin-embedder-policy': 'require-corp', 'cross-origin-opener-policy': 'same-origin' },
  '/setup/': { 'content-security-policy': setUp },
  '/setup/index.html': { 'content-security-policy': setUp },
  '/embed/script-blocked.html': { 'content-security-policy': "script-src 'none'" },
  // Who may frame the wizard is the owner's to say, and the browser's to hold to.
  '/embed/frame.html': { 'content-security-policy': "frame-ancestors 'self'" },
};
