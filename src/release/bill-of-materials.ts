import { productionPackages, type LockedPackage } from './locked.ts';
import type { PackageFile } from './project.ts';

interface Component {
  type: 'library';
  'bom-ref': string;
  group?: string;
  name: string;
  version: string;
  description?: string;
  licenses?: readonly ({ license: { id: string } } | { expression: string })[];
  purl: string;
  scope?: 'required';
  hashes?: readonly { alg: 'SHA-512'; content: string }[];
}

/** A bill of materials as CycloneDX 1.6 writes it in JSON. */
export interface Bill {
  bomFormat: 'CycloneDX';
  specVersion: '1.6';
  version: 1;
  metadata: { component: Component };
  components: readonly Component[];
  dependencies: readonly { ref: string; dependsOn: readonly string[] }[];
}

/** Address of a package of npm, by the package URL specification. */
const purlOf = (name: string, version: string) => `pkg:npm/${name.replace('@', '%40')}@${version}`;

const algorithm = 'sha512-';
const hexOf = (integrity: string) => Buffer.from(integrity.slice(algorithm.length), 'base64').toString('hex');

function named(name: string, version: string, license: string | undefined): Omit<Component, 'scope' | 'hashes'> {
  const [group, own] = name.startsWith('@') ? name.split('/') : [undefined, name];
  const purl = purlOf(name, version);
  return { type: 'library', 'bom-ref': purl, ...(group && { group }), name: own!, version, ...(license && { licenses: [/\s/.test(license) ? { expression: license } : { license: { id: license } }] }), purl };
}

/**
 * What is in what we publish: our package, and every package of the lock file that isn't for developers alone, with
 * the hashes the lock file holds them to. Neither a time nor a serial number: the same release, the same bytes.
 */
export function billOfMaterials({ name, version, license, description, dependencies }: PackageFile, lock: string): Bill {
  const packages = productionPackages(lock);
  const refOf = (wanted: string) => {
    const { name: found, version: at } = packages.find((each) => each.name === wanted)!;
    return purlOf(found, at);
  };
  const known = (names: readonly string[]) => names.filter((each) => packages.some((other) => other.name === each)).map(refOf).sort();
  const component = { ...named(name, version, license), description };
  return {
    bomFormat: 'CycloneDX', specVersion: '1.6', version: 1,
    metadata: { component },
    components: packages.map((each) => ({ ...named(each.name, each.version, each.license), scope: 'required', hashes: [{ alg: 'SHA-512', content: hexOf(each.integrity) }] })),
    dependencies: [
      { ref: component['bom-ref'], dependsOn: known(Object.keys(dependencies)) },
      ...packages.map((each) => ({ ref: purlOf(each.name, each.version), dependsOn: known(each.needs) })),
    ],
  };
}

const say = ({ name, version, integrity }: LockedPackage) => `${name}@${version} ${integrity}`;

/** @returns a line for everything a bill says otherwise than the lock file, or leaves out */
export function differencesFromLock({ components, dependencies }: Bill, lock: string): string[] {
  const locked = productionPackages(lock).map(say);
  const billed = components.map(({ group, name, version, hashes = [] }) =>
    `${group ? `${group}/` : ''}${name}@${version} ${algorithm}${Buffer.from(hashes[0]?.content ?? '', 'hex').toString('base64')}`);
  const refs = new Set(dependencies.map(({ ref }) => ref));
  return [
    ...locked.filter((each) => !billed.includes(each)).map((each) => `the bill lacks ${each}`),
    ...billed.filter((each) => !locked.includes(each)).map((each) => `the lock file lacks ${each}`),
    ...components.filter((each) => !refs.has(each['bom-ref'])).map((each) => `the bill doesn't say what ${each.name} needs`),
    ...dependencies.flatMap(({ ref, dependsOn }) => dependsOn.filter((each) => !refs.has(each)).map((each) => `${ref} needs ${each}, which the bill lacks`)),
  ];
}
