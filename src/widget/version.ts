/** Put in by the builds, from package.json. */
declare const VERSION: string;

/** Version of the script this is; sources that run as they are have none. */
export const version: string = typeof VERSION === 'undefined' ? 'unbuilt' : VERSION;
