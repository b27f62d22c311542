// As the window's own main.ts, with the page of parts in place of the screens.
import '../../src-renderer/styles/tokens.css';
import '../../src-renderer/styles/base.css';
import '../../src-renderer/styles/ledger.css';
import '../../src-renderer/styles/menu.css';
import '../../src-renderer/styles/charts.css';
import { mount } from 'svelte';
import { pickClient } from '../../src-renderer/state/service/client.ts';
import PartsPage from './parts-page.svelte';

const client = pickClient();
const settings = await client.call('settings.read', {});
const target = document.getElementById('app');
if (!target) throw new Error('index.html has no element with the id "app"');
mount(PartsPage, { target, props: { client, settings } });
