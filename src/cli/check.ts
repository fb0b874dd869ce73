import { checkModel, findingText } from '../check/index.ts';
import { buildModel } from '../model/index.ts';
import { declaredFor } from '../read/index.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';

/** Prints every finding of every size; exit code 1 when one fails. */
export function checkCommand(name: string | undefined, options: { readonly size?: readonly string[] }): void {
  let failed = 0;
  for (const item of itemsNamed(name)) {
    for (const size of chosen(sizesOf(item), options.size, 'size')) {
      const { findings, notApplied, advice } = checkModel(buildModel(item, size), declaredFor(item, size));
      process.stdout.write(`${item.name} ${size}\n`);
      for (const finding of findings) process.stdout.write(`  ${findingText(finding)}\n`);
      for (const { name, because } of notApplied) process.stdout.write(`  none    ${name}: ${because}\n`);
      process.stdout.write(`  safe load on each deck: ${advice.safeLoadPerDeck === null ? 'none supported' : `${advice.safeLoadPerDeck} N`}`
        + `${advice.untestedJoint ? ', untested joint: reduced' : ''}${advice.fixToWall ? '; fix to a wall' : ''}\n`);
      failed += findings.filter((finding) => finding.verdict === 'fail').length;
    }
  }
  if (failed > 0) throw new Error(`${failed} finding${failed === 1 ? '' : 's'} failed`);
}
