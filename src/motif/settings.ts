import { bad, good, type Issue, type Result } from '../issue.ts';
import type { Motif, Parameter } from './motif.ts';
import { nearestName } from './nearest.ts';

/** A number for a person: at most four decimals, no trailing zeros. */
const plain = (value: number): string => String(Number(value.toFixed(4)));

const UNIT: Record<Parameter['kind'], string> = { ratio: '', count: '', degrees: ' degrees' };

const show = (value: unknown): string => {
  const text = typeof value === 'string' ? `"${value}"` : (JSON.stringify(value) ?? String(value));
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
};

/** What is wrong with one value, or nothing. */
function judge(name: string, parameter: Parameter, value: unknown): Issue | undefined {
  const { kind, min, max } = parameter;
  const allowed = `${plain(min)} to ${plain(max)}${UNIT[kind]}`;
  const issue = (code: string, says: string, instead: number): Issue => ({
    code,
    path: [name],
    says,
    hint: `${name}: ${plain(instead)}`,
  });
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return issue(
      'motif/not-a-number',
      `${name} is ${typeof value === 'number' ? value : show(value)}, which is not a number; ${allowed} is allowed`,
      parameter.default,
    );
  }
  if (value < min || value > max) {
    return issue('motif/out-of-range', `${name} is ${plain(value)}; ${allowed} is allowed`, value < min ? min : max);
  }
  if (kind === 'count' && !Number.isInteger(value)) {
    return issue(
      'motif/not-whole',
      `${name} is ${plain(value)}; it counts, so it must be a whole number from ${allowed}`,
      Math.round(value),
    );
  }
  return undefined;
}

function unknown(motif: Motif, name: string): Issue {
  const names = Object.keys(motif.parameters);
  const says =
    names.length === 0
      ? `${motif.name} has no settings, but "${name}" is given`
      : `"${name}" is not a setting of ${motif.name}, which has ${names.join(', ')}`;
  const near = nearestName(name, names);
  return { code: 'motif/unknown-setting', path: [name], says, hint: near ?? `leave "${name}" out` };
}

/**
 * Fills in every setting of a motif that a person left out, and reports everything wrong with those given, all at once.
 * Paths are relative to the settings. Issues: `motif/unknown-setting`, `motif/not-a-number`, `motif/out-of-range`, `motif/not-whole`.
 */
export function fillSettings(motif: Motif, given: Record<string, unknown>): Result<Record<string, number>> {
  const issues = Object.keys(given)
    .map((name) =>
      Object.hasOwn(motif.parameters, name) ? judge(name, motif.parameters[name]!, given[name]) : unknown(motif, name),
    )
    .filter((issue) => issue !== undefined);
  if (issues.length > 0) return bad(...issues);
  const filled = Object.entries(motif.parameters).map(([name, parameter]) => [name, given[name] ?? parameter.default]);
  return good(Object.fromEntries(filled) as Record<string, number>);
}
