import { Composer, type CST, type Document } from 'yaml';
import { bad, good, type Result } from '../issue.ts';
import { explainSyntax } from './syntax.ts';

/** Line and column of an offset, both from 1. */
export type PlaceAt = (offset: number) => { line: number; column: number };

/** The one document of a file, or the first thing that keeps it from being one. */
export function compose(tokens: CST.Token[], text: string, placeAt: PlaceAt): Result<Document> {
  const composer = new Composer({ schema: 'failsafe', uniqueKeys: false, prettyErrors: false, logLevel: 'silent' });
  const documents = [...composer.compose(tokens, true, text.length)];
  const lines = text.split('\n');
  for (const document of documents) {
    const trouble = [...document.errors, ...document.warnings][0];
    if (!trouble) continue;
    const place = placeAt(openingQuote(trouble.message, text) ?? trouble.pos[0]);
    const said = /tag/i.test(trouble.code)
      ? { says: 'a value carries a tag (!); job files use none', hint: 'the value alone' }
      : explainSyntax(trouble, lines[place.line - 1] ?? '', text);
    return bad({ code: 'job/syntax', path: [], ...said, ...place });
  }
  if (documents.length > 1)
    return bad({
      code: 'job/documents',
      path: [],
      says: 'a line of --- begins a second job; a file holds one',
      hint: 'two files',
      ...placeAt(documents[1]!.range[0]),
    });
  return good(documents[0]!);
}

/** A quote that is never closed is the last of its kind in the file; the reader itself reports only the end of the file. */
function openingQuote(message: string, text: string): number | undefined {
  const quote = /Missing closing (["'])/.exec(message)?.[1];
  return quote === undefined ? undefined : text.lastIndexOf(quote);
}
