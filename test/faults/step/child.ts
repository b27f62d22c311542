// One work, killed before its n-th step: node child.ts <work> <folder> [n]. Without n it says how many steps there are.
import { stepThrough } from './stepping.ts';
import { CARELESS, WORKS } from './works.ts';

const [name, folder = '', killBefore] = process.argv.slice(2);
const work = [...WORKS, CARELESS].find((one) => one.name === name);
if (work === undefined) throw new Error(`there is no work "${String(name)}"`);
const steps = stepThrough(killBefore === undefined ? null : Number(killBefore));
const run = work.begin(folder);
steps.begin();
run();
process.stdout.write(`${String(steps.taken())}\n`);
