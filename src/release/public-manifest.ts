import { manifestOf } from './manifest.ts';
import { readText } from './project.ts';

const inWidget = (file: string) => readText(`src/widget/${file}.ts`);

/** The manifest of the element as the sources are now. */
export const publicManifest = () => manifestOf({ element: inWidget('element'), events: inWidget('events'), look: inWidget('look') });
