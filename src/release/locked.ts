/** A package that whoever installs ours gets too, as the lock file has it. */
export interface LockedPackage {
  name: string;
  version: string;
  /** Where it lies, from the project's folder. */
  path: string;
  /** Hash of what the registry sends, as npm writes it. */
  integrity: string;
  license?: string | undefined;
  /** Names of the packages it needs itself. */
  needs: readonly string[];
}

interface LockEntry {
  version?: string;
  integrity?: string;
  license?: string;
  dev?: boolean;
  optional?: boolean;
  devOptional?: boolean;
  peer?: boolean;
  dependencies?: Readonly<Record<string, string>>;
}

const nameIn = (path: string) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);

/**
 * The packages of a lock file that aren't for developers alone, by path.
 *
 * @param lock  text of `package-lock.json`
 * @throws where one has no version or no hash: it couldn't be told from another
 */
export function productionPackages(lock: string): LockedPackage[] {
  const { packages } = JSON.parse(lock) as { packages: Readonly<Record<string, LockEntry>> };
  const used = Object.entries(packages).filter(([path, { dev, devOptional, optional, peer }]) => path !== '' && !dev && !devOptional && !optional && !peer);
  return used.map(([path, { version, integrity, license, dependencies = {} }]) => {
    if (!version || !integrity) throw new Error(`package-lock.json: ${path} has no ${version ? 'integrity' : 'version'}`);
    return { name: nameIn(path), version, path, integrity, license, needs: Object.keys(dependencies) };
  });
}
