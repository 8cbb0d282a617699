import { changesBetween, isAtLeast, leastAfter, stepFor, type Change } from './changes.ts';
import type { Surface } from './surface.ts';

/** What was released last, as `last-release.json` keeps it. */
export interface Released {
  version: string;
  surface: Surface;
}

export interface ToRelease {
  version: string;
  surface: Surface;
  /** Text of `CHANGELOG.md`. */
  changelog: string;
  last: Released | undefined;
}

export interface Findings {
  /** What forbids the release. */
  faults: string[];
  /** What has to be done before it, and needn't be while it is tried. */
  left: string[];
  changes: readonly Change[];
}

/** What a changelog says of a version: the rest of its heading, and what stands below it. */
export function sectionOf(changelog: string, version: string): { heading: string; text: string } | undefined {
  const sections = changelog.split(/^## /m).slice(1);
  const section = sections.find((each) => each.split(/[,\s]/, 1)[0] === version);
  if (section === undefined) return undefined;
  const [heading = '', ...lines] = section.split('\n');
  return { heading: heading.slice(version.length).replace(/^,\s*/, ''), text: lines.join('\n') };
}

const isDay = (text: string) => /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(Date.parse(text));

function versionFaults(version: string, last: Released, changes: readonly Change[]): string[] {
  const step = stepFor(changes);
  const least = leastAfter(last.version, step);
  if (isAtLeast(version, least)) return [];
  const why = changes.filter((change) => change.step === step).map(({ entry }) => entry).slice(0, 5).join('; ');
  return [`package.json: the version is ${version}, and has to be ${least} or later after ${last.version}${why && `, for a ${step} change: ${why}`}`];
}

/** Holds what is to be released against what was released last and what the changelog says. */
export function findingsOf({ version, surface, changelog, last }: ToRelease): Findings {
  const changes = last ? changesBetween(last.surface, surface) : [];
  const section = sectionOf(changelog, version);
  const figures = changes.filter(({ entry, before, now }) => entry.startsWith('rule ') && before !== undefined && now !== undefined);
  const vanished = changes.filter(({ entry, now }) => entry.startsWith('rule ') && now === undefined);
  const unlisted = figures.filter(({ entry }) => !section?.text.includes(`\`${entry.slice('rule '.length)}\``));
  return {
    changes,
    faults: [
      ...(section ? [] : [`CHANGELOG.md: no section "## ${version}"`]),
      ...(last ? versionFaults(version, last, changes) : []),
      ...vanished.map(({ entry }) => `${entry}: gone, though an id that was released stays`),
      ...unlisted.map(({ entry, before, now }) => `CHANGELOG.md: ${version} doesn't name \`${entry.slice('rule '.length)}\`, whose figure went from ${before} to ${now}`),
    ],
    left: !section || isDay(section.heading) ? [] : [`CHANGELOG.md: "## ${version}, ${section.heading}" wants the day of the release, as in 2026-12-31`],
  };
}
