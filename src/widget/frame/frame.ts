/** One script for both sides of a frame: the page that holds it, and the page of ours inside. */
import { fitFrames } from './around.ts';
import { tellHeight } from './inside.ts';

fitFrames();
tellHeight();
