import { render } from 'preact';
import './style/base.css';
import { App } from './app.tsx';
import { keepLooking } from './state/answer.ts';
import { beginFirst } from './state/first.ts';

render(<App />, document.getElementById('page')!);
await beginFirst();
keepLooking();
