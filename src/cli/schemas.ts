import { publishedSchemas } from '../read/index.ts';
import { writeTold } from './files.ts';

/** Writes the schemas that editors complete item and kit files by. */
export function schemasCommand(): void {
  for (const [name, text] of Object.entries(publishedSchemas())) {
    writeTold(name.includes('/') ? name : `steps/schemas/${name}`, text);
  }
}
