/**
 * How the classes of the picture look, by the custom properties of the page it stands in. What is dashed is
 * assumed; what is dotted is ruled out; what is the buyer's own is in the accent.
 */
export const lineUpStyle = `
.acre-line-up { --la-ink: var(--ink, var(--acre-ink, currentColor)); --la-paper: var(--paper, var(--acre-paper, #fdfdfb)); --la-own: var(--accent, var(--acre-accent, #6a2c62)); --la-far: var(--line, var(--acre-line, #8a9296)); --la-lesser: var(--muted, var(--acre-muted, #515a5e)); --la-alert: var(--alert, var(--acre-alert, #9c2a1c)); direction: ltr; font-size: 12px; color: var(--la-ink); }
.acre-line-up :is(path, circle) { fill: none; stroke: var(--la-ink); stroke-linejoin: round; stroke-linecap: round; }
.acre-line-up .heavy { stroke-width: 1.6; }
.acre-line-up .light { stroke-width: 1; }
.acre-line-up .thin { stroke-width: .75; }
.acre-line-up .no-line { stroke: none; }
.acre-line-up .filled { fill: var(--la-paper); }
.acre-line-up .assumed { stroke-dasharray: 5 3; stroke-linecap: butt; }
.acre-line-up .ground { stroke-width: 2; }
.acre-line-up .dimension path { stroke: var(--la-lesser); stroke-width: .75; }
.acre-line-up .dimension .arrow { fill: var(--la-lesser); stroke: none; }
.acre-line-up .dimension:is(.wanted, .opening, .deck) path { stroke: var(--la-own); }
.acre-line-up .dimension:is(.wanted, .opening, .deck) :is(.arrow, .figure) { fill: var(--la-own); }
.acre-line-up .dimension:is(.wanted, .opening, .deck) .arrow { stroke: none; }
.acre-line-up .scale path { stroke-width: 1; }
.acre-line-up .scale .arrow { fill: var(--la-ink); }
.acre-line-up text { fill: var(--la-ink); text-anchor: middle; font-variant-numeric: tabular-nums; }
.acre-line-up .figure { fill: var(--la-lesser); font-size: 12px; paint-order: stroke; stroke: var(--la-paper); stroke-width: 4px; stroke-linejoin: round; }
.acre-line-up .name { font-size: 13px; font-weight: 650; }
.acre-line-up .standing { fill: var(--la-lesser); }
.acre-line-up .ask .standing { fill: var(--la-alert); font-weight: 650; }
.acre-line-up .note { text-anchor: start; fill: var(--la-lesser); }
.acre-line-up :is(.door, .gate, .trailer, .bale, .pallet, .log, .level, .room) { stroke: var(--la-own); }
.acre-line-up .machine:focus-visible { outline: 2px solid var(--la-own); outline-offset: 1px; }
.acre-line-up .thing .name { fill: var(--la-own); }
.acre-line-up .mark circle { fill: var(--la-paper); stroke: var(--la-own); }
.acre-line-up .mark path { stroke: var(--la-own); stroke-width: 1.6; }
.acre-line-up .mark:is(.no, .unknown) :is(circle, path) { stroke: var(--la-alert); }
.acre-line-up .ruled-out { --la-ink: var(--la-far); }
.acre-line-up .ruled-out .heavy { stroke-width: 1; }
.acre-line-up .ruled-out .light { stroke-width: .5; }
.acre-line-up .ruled-out .ground { stroke-dasharray: .1 4; }
.acre-line-up .ruled-out .name { fill: var(--la-lesser); font-weight: 400; }
.acre-picture { max-width: 100%; height: auto; }
.acre-picture .bale, .acre-picture .pallet { stroke: var(--la-ink); }
.acre-picture .ground { stroke-width: 1; }
.acre-picture :is(path, circle).deck, .acre-picture .own :is(.slope, .bale), .acre-picture .middle path { stroke: var(--la-own); }
.acre-picture .own .name, .acre-picture .middle :is(.arrow, .figure) { fill: var(--la-own); }
.acre-picture .beside { text-anchor: start; }
.acre-picture[direction="rtl"] text { direction: rtl; }
.acre-picture[direction="rtl"] .beside { text-anchor: end; }
@media (forced-colors: active) {
  .acre-line-up { --la-ink: CanvasText; --la-paper: Canvas; --la-own: LinkText; --la-far: GrayText; --la-lesser: CanvasText; --la-alert: CanvasText; forced-color-adjust: none; }
}
`;

/** For a picture that stands in no page of ours: on paper, in a mail. */
export const standaloneStyle = '.acre-line-up { font-family: system-ui, sans-serif; background: var(--la-paper); --acre-ink: #1d2326; }';
