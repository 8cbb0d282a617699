import { composedOf } from './mail/compose.ts';
import { makeMails } from './sender/mail-threads.ts';

makeMails(composedOf);
