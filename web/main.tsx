import './look/fonts.css';
import './look/tokens.css';
import './look/base.css';
import './look/button.css';
import { render } from 'preact';
import { App } from './app/app.tsx';
import { startEngine } from './app/engine-ready.ts';
import { followAddress } from './app/route.ts';
import { told } from './memory/progress.ts';

followAddress(() => (told.peek() ? 'today' : 'learned'));
void startEngine();
render(<App />, document.getElementById('app') as HTMLElement);
