import { registerHooks } from 'node:module';

/** For `node --import`: whoever imports electron gets the fake. */
const FAKE = new URL('./host-electron-fake.ts', import.meta.url).href;

registerHooks({
  resolve: (name, context, next) =>
    name === 'electron' ? { url: FAKE, shortCircuit: true } : next(name, context),
});
