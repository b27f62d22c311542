// electron-builder reads no TypeScript that Node would: it gets the table through this file.
export { CONFIG as default } from './config.ts';
