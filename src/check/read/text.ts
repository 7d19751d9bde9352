import { type Read, read, refuse } from './read.ts';

const MB = 1024 * 1024;
/** Larger files are not opened: nothing the tool writes for one job comes near these sizes. */
const most = (name: string): number => (name.endsWith('.csv') ? 8 : 96) * MB;

/** The file as text, when it is UTF-8 and of a sane size. */
export function readText(name: string, content: string | Uint8Array): Read<string> {
  if (content.length === 0) return refuse('the file is empty');
  if (content.length > most(name)) return refuse(`the file is larger than ${most(name) / MB} MB`);
  if (typeof content === 'string') return content.includes('\0') ? refuse('the file is not text') : read(content);
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(content);
    return text.includes('\0') ? refuse('the file is not text') : read(text);
  } catch {
    return refuse('the file is not UTF-8 text');
  }
}
