import licence from '../../../LICENSE?raw';
import notice from '../../../NOTICE?raw';
import andika from '../../../node_modules/@fontsource/andika/LICENSE?raw';
import signals from '../../../node_modules/@preact/signals/LICENSE?raw';
import idb from '../../../node_modules/idb/LICENSE?raw';
import preact from '../../../node_modules/preact/LICENSE?raw';
import uqr from '../../../node_modules/uqr/LICENSE?raw';
import valibot from '../../../node_modules/valibot/LICENSE.md?raw';

/** Title and full text of each license and notice that ships with the app. */
export const NOTICES: readonly (readonly [string, string])[] = [
  ['Sweepline (MIT)', licence],
  ['Words, pronunciations and meanings (NOTICE)', notice],
  ['Andika, the letters (SIL Open Font License)', andika],
  ['Preact (MIT)', preact],
  ['Preact Signals (MIT)', signals],
  ['idb (ISC)', idb],
  ['Valibot (MIT)', valibot],
  ['uqr, QR codes (MIT)', uqr],
];
