import { readFileSync, writeFileSync } from 'node:fs';
import { jobSchema } from '../../src/job/schema.ts';
import { withReference } from './write.ts';

// `npm run reference`: writes every key of a job file into the README.
writeFileSync('README.md', withReference(readFileSync('README.md', 'utf8'), jobSchema()));
