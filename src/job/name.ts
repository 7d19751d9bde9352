const RESERVED = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;
const LONGEST = 60;

/** Letters a to z, digits and single hyphens, or nothing if none are left. Never a name a file system keeps for itself. */
export function plainName(text: string): string | undefined {
  const name = text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/ß/g, 'ss')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, '');
  if (name === '') return undefined;
  return RESERVED.test(name) ? `${name}-job` : name;
}

/** The name of a job file without its folders and its ending. */
const stemOf = (file: string): string =>
  (file.split(/[\\/]/).at(-1) ?? '').replace(/\.ya?ml$/i, '').replace(/\.job$/i, '');

/** `Back passage` from `jobs/back-passage.job.yaml`. */
export function titleOf(file: string): string {
  const words = stemOf(file)
    .replace(/[\p{C}\s_-]+/gu, ' ')
    .trim()
    .slice(0, LONGEST);
  return words === '' ? 'Job' : words.charAt(0).toUpperCase() + words.slice(1);
}

/** The name of the output folder: from the title, else from the file's name, else `job`. */
export const jobName = (title: string, file: string): string => plainName(title) ?? plainName(stemOf(file)) ?? 'job';
