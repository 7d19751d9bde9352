import type { Notes } from '../notes.ts';
import type { Place } from '../refusal.ts';
import { type Rules, readRules } from '../style/rules.ts';
import type { Element } from '../tree.ts';

/** What the whole file holds, wherever it stands. */
export interface Survey {
  byId: Map<string, Element>;
  rules: Rules;
}

/** Goes over all elements once: their ids, the style sheets, and what is never taken. */
export function survey(root: Element, notes: Notes): Survey {
  const byId = new Map<string, Element>();
  const sheets: { text: string; place: Place }[] = [];
  const visit = (element: Element): void => {
    const { name, attributes, text, place } = element;
    const id = attributes.get('id');
    if (id !== undefined && !byId.has(id)) byId.set(id, element);
    if (name === 'style') {
      const type = attributes.get('type');
      if (type === undefined || type === '' || type.trim() === 'text/css') sheets.push({ text, place });
    } else if (name === 'script') notes.add('A script was left out', place);
    else if (name === 'a') notes.add('A link was left out; the shapes in it were taken', place);
    for (const child of element.children) visit(child);
  };
  visit(root);
  return { byId, rules: readRules(sheets, notes) };
}
