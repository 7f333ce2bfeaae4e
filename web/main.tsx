import './look/fonts.css';
import './look/tokens.css';
import './look/base.css';
import './look/button.css';
import { render } from 'preact';
import { App } from './app/app.tsx';
import { startEngine } from './app/engine-ready.ts';
import { signUnsaved } from './app/kept-sign.ts';
import { followAddress } from './app/route.ts';
import { bringOver } from './memory/bring-over.ts';
import { openLastClass } from './memory/open-class.ts';
import { told } from './memory/progress.ts';

signUnsaved(document.documentElement);
void startEngine();
await openLastClass();
await bringOver();
followAddress(() => (told.peek() ? 'today' : 'learned'));
render(<App />, document.getElementById('app') as HTMLElement);
