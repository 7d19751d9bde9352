import { resolve } from 'node:path';
import { writeDeclarations } from './declarations.ts';

// `npm run declarations`: the types of the engine, for those who import it.
writeDeclarations(process.cwd(), resolve('dist/types'));
