import { shown } from '../../units/index.ts';
import { MOST_RULES } from '../limits.ts';
import type { Notes } from '../notes.ts';
import { type Place, refuse } from '../refusal.ts';
import { type Declaration, readDeclarations } from '../syntax/declarations.ts';
import type { Element } from '../tree.ts';

/** One selector of a style sheet with what it says. */
interface Rule {
  element: string;
  id: string;
  classes: string[];
  /** Ids count before classes, classes before elements, then the order written. */
  rank: number;
  declarations: Map<string, Declaration>;
}

/** The rules of all style sheets, each under one word that an element must have for it to apply. */
export type Rules = Map<string, Rule[]>;

const SELECTOR = /^(\*|[a-zA-Z][\w-]*)?((?:[.#][\w-]+)*)$/;

/** Takes out comments in one pass. */
function withoutComments(text: string): string {
  let kept = '';
  let at = 0;
  while (at < text.length) {
    const start = text.indexOf('/*', at);
    if (start < 0) return kept + text.slice(at);
    kept += `${text.slice(at, start)} `;
    const end = text.indexOf('*/', start + 2);
    if (end < 0) return kept;
    at = end + 2;
  }
  return kept;
}

/** The place after the block that opens at `at`. */
function afterBlock(text: string, at: number): number {
  let depth = 0;
  for (let i = at; i < text.length; i++) {
    if (text[i] === '{') depth += 1;
    else if (text[i] === '}') {
      depth -= 1;
      if (depth === 0) return i + 1;
    }
  }
  return text.length;
}

function readSelector(text: string, declarations: Map<string, Declaration>, order: number): Rule | undefined {
  const found = SELECTOR.exec(text);
  if (found === null || text === '') return undefined;
  const element = found[1] === undefined || found[1] === '*' ? '' : found[1];
  const words = found[2]!.match(/[.#][\w-]+/g) ?? [];
  const ids = words.filter((word) => word.startsWith('#')).map((word) => word.slice(1));
  const classes = words.filter((word) => word.startsWith('.')).map((word) => word.slice(1));
  if (ids.length > 1) return undefined;
  const rank = (ids.length * 1e4 + Math.min(classes.length, 99) * 100 + (element === '' ? 0 : 1)) * 1e5 + order;
  return { element, id: ids[0] ?? '', classes, rank, declarations };
}

const keyOf = ({ id, classes, element }: Rule): string =>
  id !== '' ? `#${id}` : classes.length > 0 ? `.${classes[0]}` : element === '' ? '*' : element;

function checkAtRule(head: string, notes: Notes, place: Place): void {
  const name = head.split(/\s/)[0]!;
  if (/^@import/i.test(name)) {
    refuse(
      'elsewhere',
      'a style sheet in the drawing asks for another file (@import), which is not fetched, so its colours are unknown',
      'save the drawing with its colours at the shapes',
      place,
    );
  }
  if (/^@(charset|namespace)/i.test(name)) return;
  notes.add(`The part "${shown(name)}" of a style sheet was left out; nothing was fetched for it`, place);
}

/** Reads the style sheets in the order they stand. Understands element, class and id, alone or together; not how elements stand in one another. */
export function readRules(sheets: { text: string; place: Place }[], notes: Notes): Rules {
  const rules: Rules = new Map();
  let count = 0;
  const addAll = (selectors: string, block: string, place: Place): void => {
    const declarations = readDeclarations(block);
    for (const one of selectors.split(',')) {
      count += 1;
      if (count > MOST_RULES) {
        refuse(
          'too-many',
          `the style sheets have more than ${MOST_RULES} rules`,
          'save the drawing with its colours at the shapes',
          place,
        );
      }
      const rule = readSelector(one.trim(), declarations, count);
      if (rule === undefined) {
        notes.add(`The style rule "${shown(one)}" was left out: only element, class and id are understood`, place);
        continue;
      }
      const key = keyOf(rule);
      const known = rules.get(key);
      if (known) known.push(rule);
      else rules.set(key, [rule]);
    }
  };
  for (const { text: given, place } of sheets) {
    const text = withoutComments(given).replaceAll('<!--', ' ').replaceAll('-->', ' ');
    const mark = /[{;]/g;
    let at = 0;
    while (at < text.length) {
      mark.lastIndex = at;
      const found = mark.exec(text);
      const end = found?.index ?? text.length;
      const head = text.slice(at, end).trim();
      const block = found?.[0] === '{';
      if (head.startsWith('@')) {
        checkAtRule(head, notes, place);
        at = block ? afterBlock(text, end) : end + 1;
      } else {
        const close = block ? text.indexOf('}', end) : end;
        const last = close < 0 ? text.length : close;
        if (block) addAll(head, text.slice(end + 1, last), place);
        at = last + 1;
      }
    }
  }
  return rules;
}

/** The rules that apply to an element, weakest first. */
export function rulesFor({ name, attributes }: Element, rules: Rules): Rule[] {
  if (rules.size === 0) return [];
  const classes = new Set((attributes.get('class') ?? '').split(/\s+/));
  const id = attributes.get('id') ?? '';
  const keys = ['*', name, `#${id}`, ...[...classes].map((one) => `.${one}`)];
  return keys
    .flatMap((key) => rules.get(key) ?? [])
    .filter(
      (rule) =>
        (rule.element === '' || rule.element === name) &&
        (rule.id === '' || rule.id === id) &&
        rule.classes.every((one) => classes.has(one)),
    )
    .sort((a, b) => a.rank - b.rank);
}
