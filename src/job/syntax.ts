import type { Issue } from '../issue.ts';
import { shown } from '../units/index.ts';

interface Trouble {
  code: string;
  message: string;
  pos: [number, number];
}

const FORM = '`key: value`, one a line, with two spaces before keys that belong under another';

/** `run: '19' 7"'` without the quotes round it. */
function unquoted(line: string): string | undefined {
  const match = /^\s*([\w -]+?): *(["'])(.+)\2[ ,}]*$/.exec(line);
  return match ? `${match[1]}: ${match[3]}` : undefined;
}

const commentInside = (line: string): string | undefined => /#[0-9a-f]{3,6}\b/i.exec(line)?.[0];

/** What an error of the YAML reader means to a person, and the way out. `line` is the line it was found on. */
export function explainSyntax({ code, message }: Trouble, line: string, text: string): Pick<Issue, 'says' | 'hint'> {
  const colour = commentInside(line);
  if (code === 'TAB_AS_INDENT')
    return { says: 'a tab stands where the line begins; only spaces may', hint: 'two spaces instead of the tab' };
  if (/'@|`|reserved character/.test(message))
    return { says: 'a value cannot begin with @ or a backquote', hint: 'the same without that sign' };
  if (/Missing closing/.test(message))
    return {
      says: 'a quote is opened and not closed',
      hint: `lengths without quotes round them, such as run: 19' 7 3/8"`,
    };
  if (code === 'UNEXPECTED_TOKEN' && /["']/.test(line))
    return {
      says: 'something follows the closing quote of a value',
      hint: unquoted(line) ?? `lengths without quotes round them, such as run: 19' 7 3/8"`,
    };
  if (/Flow (map|sequence)|end with a [}\]]/.test(message)) {
    const hash = colour ?? commentInside(text);
    return hash
      ? { says: `a { is not closed, because ${hash} without quotes begins a comment`, hint: `'${hash}' in quotes` }
      : { says: 'a { or [ is not closed, or the lines inside it are not indented', hint: 'a } or ] at its end' };
  }
  if (code === 'BLOCK_AS_IMPLICIT_KEY')
    return {
      says: `a second colon stands in this line, or the next line is indented too far: ${shown(line)}`,
      hint: FORM,
    };
  if (code === 'MISSING_CHAR' || code === 'MULTILINE_IMPLICIT_KEY')
    return { says: `a colon and a space are missing in: ${shown(line)}`, hint: FORM };
  return { says: `this is not the form of a job file (YAML): ${shown(line)}`, hint: FORM };
}
