import type { Issue } from '../../../issue.ts';
import type { Tree } from '../../../job/tree.ts';
import { isBranch, parseTree } from '../../../job/tree.ts';
import type { Path, Trial } from './offer.ts';
import { saysChange } from './words.ts';

type At = (path: Path) => Tree | undefined;

/** Refusals of one text, whose hint is that text put right. */
const PUT_RIGHT = new Set([
  'job/length',
  'job/range',
  'job/count',
  'job/stretch',
  'job/steps',
  'job/number',
  'job/arc',
  'job/choice',
  'job/motif',
]);

const figures = (text: string): string[] => text.match(/\d+/g) ?? [];

/** `a, b or c` as three, and each without what follows in brackets. */
const alternatives = (hint: string): string[] => hint.split(/,\s+or\s+|,\s+|\s+or\s+/).map((one) => one.trim());

/** A line such as `across: 9'` as it reads, or nothing where it is no such line. */
function lineOf(text: string): { [key: string]: Tree } | undefined {
  if (!/^[a-z][a-z -]*: \S/.test(text)) return undefined;
  const read = parseTree(text);
  return read.ok && read.value.issues.length === 0 ? read.value.tree : undefined;
}

/** Where a key of a hint may belong, seen from the place that the issue is about. */
function placesFor(key: string, path: Path): Path[] {
  const above = path.slice(0, -1);
  const own = path.lastIndexOf(key);
  return [...(own < 0 ? [] : [path.slice(0, own + 1)]), [...path, key], [...above, key], [key]];
}

/** Measurements are never made up: a reading that is missing is only asked for. */
const isReading = (path: Path): boolean => path[0] === 'site' || path[0] === 'cloth';

function fromLine(issue: Issue, text: string): Trial[] {
  const { code } = issue;
  const under = /^(?:.*\b)?under ([a-z .]+?),? write (.+)$/i.exec(text);
  const line = lineOf(under ? under[2]! : text);
  if (!line) return [];
  const [[key, value]] = Object.entries(line) as [[string, Tree]];
  const told = under ? under[1]!.trim().split('.') : undefined;
  const path: Path = told ? (told.at(-1) === key ? told : [...told, key]) : issue.path;
  if ((code === 'job/missing' || code === 'job/no-value') && isReading([...path, key])) return [];
  const places = told ? [path] : placesFor(key, path);
  // A hint that goes on in words is no value.
  if (typeof value === 'string' && / or |, /.test(value)) return [];
  return places.map((place) => ({ says: saysChange(place, value), changes: [[place, value]], by: 2 }));
}

/** Widths of a strip and the like are written below where they are told. */
function merged(trial: Trial, at: At): Trial {
  const changes = trial.changes.flatMap(([path, value]): Trial['changes'] => {
    const there = at(path);
    if (isBranch(value) && isBranch(there)) return Object.entries(value).map(([key, one]) => [[...path, key], one]);
    return [[path, value]];
  });
  const [one] = changes;
  return { ...trial, changes, ...(changes.length === 1 && one ? { says: saysChange(...one) } : {}) };
}

/**
 * What an issue's hint says to write, where it can be written as it stands; and that something is left out, where it has no meaning.
 * Nothing here has been tried.
 */
export function trialsOf(issue: Issue, at: At): Trial[] {
  const { code, path, hint = '', says } = issue;
  const given = at(path);
  const trials: Trial[] = [];
  if (code === 'job/not-here' || code === 'job/two-sizes' || code === 'job/unknown-key')
    trials.push({ says: saysChange(path, undefined), changes: [[path, undefined]], by: 1 });
  if (code === 'job/unknown-key' && /^[a-z -]+$/.test(hint) && given !== undefined)
    trials.push({
      says: `Call it ${hint}`,
      changes: [
        [path, undefined],
        [[...path.slice(0, -1), hint], given],
      ],
      by: 0,
    });
  if (PUT_RIGHT.has(code) && typeof given === 'string' && given.trim() !== '')
    for (const one of alternatives(hint)) {
      const isSame = String(figures(one).sort()) === String(figures(given).sort());
      if (one !== given && isSame) trials.push({ says: `Write ${one}`, changes: [[path, one]], by: 0 });
    }
  if (code === 'job/length' && /states none/.test(says))
    for (const units of ['in', 'cm', 'mm'])
      trials.push({ says: saysChange(['units'], units), changes: [[['units'], units]], by: 0 });
  const wouldBe = code === 'site/disagree' && /It would have to be (.+?)\.$/.exec(says)?.[1];
  if (wouldBe) {
    trials.push({ says: `I have measured it again: it is ${wouldBe}`, changes: [[path, wouldBe]], by: 1 });
    if (path.includes('diagonals'))
      trials.push({ says: 'Go on without this diagonal', changes: [[path, undefined]], by: 5 });
  }
  const most = /no more than (.+?) by (.+?) there/.exec(hint);
  if (most)
    trials.push({
      says: `Make it ${most[1]} by ${most[2]} at the most`,
      changes: [
        [['overall', 'across'], most[1]!],
        [['overall', 'along'], most[2]!],
      ],
      by: 4,
    });
  if (/place: centred/.test(hint))
    trials.push({ says: 'Lay it in the middle of the room', changes: [[['site', 'place'], undefined]], by: 5 });
  if (path[0] === 'site' && code.startsWith('site/') && (path[1] === 'axis' || path[1] === 'obstacles'))
    for (const axis of [
      'opening to opening',
      ...(['left', 'right', 'near', 'far'] as const).map((wall) => ({ 'parallel to': wall })),
    ])
      trials.push({
        says:
          typeof axis === 'string'
            ? 'Lay it from opening to opening'
            : `Lay it parallel to the ${axis['parallel to']} wall`,
        changes: [[['site', 'axis'], axis]],
        by: 4,
      });
  for (const one of [hint, ...alternatives(hint)]) trials.push(...fromLine(issue, one));
  const seen = new Set<string>();
  return trials
    .map((trial) => (trial.by === 2 ? merged(trial, at) : trial))
    .filter(({ changes }) => {
      const key = JSON.stringify(changes);
      if (seen.has(key) || changes.every(([place, value]) => JSON.stringify(at(place)) === JSON.stringify(value)))
        return false;
      seen.add(key);
      return true;
    });
}
