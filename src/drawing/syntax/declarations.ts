/** What a style says of each property; the last word counts, and an `!important` one above others. */
export interface Declaration {
  value: string;
  important: boolean;
}

/** Where the text's parts end: at `mark`, save within quotes and brackets. Runs once over the text. */
function split(text: string, mark: string): string[] {
  const parts: string[] = [];
  let from = 0;
  let depth = 0;
  let quote = '';
  for (let at = 0; at < text.length; at++) {
    const sign = text[at]!;
    if (quote !== '') {
      if (sign === '\\') at += 1;
      else if (sign === quote) quote = '';
    } else if (sign === '"' || sign === "'") quote = sign;
    else if (sign === '(') depth += 1;
    else if (sign === ')') depth = Math.max(0, depth - 1);
    else if (sign === mark && depth === 0) {
      parts.push(text.slice(from, at));
      from = at + 1;
    }
  }
  parts.push(text.slice(from));
  return parts;
}

/** The declarations of a `style` attribute or of one block of a style sheet, by property in lower case. */
export function readDeclarations(text: string): Map<string, Declaration> {
  const found = new Map<string, Declaration>();
  for (const part of split(text, ';')) {
    const colon = part.indexOf(':');
    if (colon < 0) continue;
    const property = part.slice(0, colon).trim().toLowerCase();
    const raw = part.slice(colon + 1).trim();
    const important = raw.toLowerCase().endsWith('!important');
    const value = important ? raw.slice(0, -'!important'.length).trim() : raw;
    if (property === '' || value === '') continue;
    if (found.get(property)?.important && !important) continue;
    found.set(property, { value, important });
  }
  return found;
}
