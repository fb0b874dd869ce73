import { publishedSchemas } from '../read/index.ts';
import { writeWhole } from './files.ts';

/** Writes the schemas that editors complete item and kit files by. */
export function schemasCommand(): void {
  for (const [name, text] of Object.entries(publishedSchemas())) {
    const path = name.includes('/') ? name : `steps/schemas/${name}`;
    writeWhole(path, text);
    process.stdout.write(`${path}\n`);
  }
}
