export { handicapText, readHandicap } from '../domain/bag/handicap.ts';
