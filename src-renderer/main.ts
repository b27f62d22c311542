// Before the parts, whose own styles come later and win.
import './styles/tokens.css';
import './styles/base.css';
import './styles/ledger.css';
import './styles/menu.css';
import './styles/charts.css';
import './styles/print.css';
import { mount } from 'svelte';
import App from './app.svelte';
import { pickClient, tellPainted } from './state/service/client.ts';
import { applyLanguage } from './state/format/language.ts';
import { applyTheme } from './state/settings/settings.svelte.ts';

const client = pickClient();
const settings = await client
  .call('settings.read', {})
  .catch(() => ({ theme: 'system', language: 'system' }) as const);
applyTheme(settings.theme);
applyLanguage(settings.language);

const target = document.getElementById('app');
if (!target) throw new Error('index.html has no element with the id "app": a fault in Loftledger.');
mount(App, { target, props: { client, settings } });

// The second frame begins only after the first was painted.
requestAnimationFrame(() => requestAnimationFrame(tellPainted));
