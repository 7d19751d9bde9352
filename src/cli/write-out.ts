import { join } from 'node:path';
import { good, type Result } from '../issue.ts';
import { shownPath, talk } from './talk.ts';

/** Writes the files of a command into its folder, and says which of an earlier run were edited and so are left there. Returns the names written. */
export async function writeOut(
  out: string,
  files: Map<string, string | Uint8Array>,
  replace = false,
): Promise<Result<string[]>> {
  const { writeFolder } = await import('../write/folder.ts');
  const report = await writeFolder(out, files, { replace });
  if (!report.ok) return report;
  for (const name of report.value.kept)
    talk(`${shownPath(join(out, name))} is no longer made; it was edited, so it is left there.`);
  return good(report.value.written);
}
