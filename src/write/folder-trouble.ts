const TROUBLE: Record<string, string> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is used up',
  EFBIG: 'the disk takes no file that large',
  EROFS: 'it can only be read, not written to',
  EACCES: 'you have no permission there',
  EPERM: 'you have no permission there',
  ENOTDIR: 'part of the path is a file, not a folder',
  EEXIST: 'there is a file of that name already',
  EISDIR: 'it is a folder, not a file',
  ENOENT: 'there is no such file or folder',
  ENAMETOOLONG: 'the name is too long',
  EBUSY: 'another program has it open',
  EMFILE: 'too many files are open',
  ELOOP: 'its links lead round in a circle',
  EIO: 'the disk reports a fault',
};

/** The code of an error of the operating system, such as `ENOSPC`; undefined for any other error. */
export function troubleCode(error: unknown): string | undefined {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  return typeof code === 'string' && /^E[A-Z0-9]+$/.test(code) ? code : undefined;
}

/** What went wrong with a file, in plain words that follow a colon. */
export function trouble(error: unknown): string {
  const code = troubleCode(error);
  if (code !== undefined) return TROUBLE[code] ?? `the system says ${code}`;
  return error instanceof Error ? (error.message.split('\n')[0] ?? 'unknown') : String(error);
}
