/** Kills a relay under load for a minute, or for as many seconds as SECONDS says, and tells what became of all it had said yes to. */
import { killRun, told } from '../relay/kill-run.ts';

const usual = 60;
const report = await killRun({ seconds: Number(process.env.SECONDS ?? usual) });
console.log(told(report));
if (report.lost.length > 0 || report.unexplained.length > 0 || report.integrity !== 'ok') process.exitCode = 1;
