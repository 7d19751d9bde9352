#!/usr/bin/env node
import { buildProgram } from './program.ts';
import { run } from './run.ts';

process.exitCode = await run(buildProgram(), process.argv);
