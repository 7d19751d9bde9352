import { readLengthAnswer } from './answer.ts';
import type { Asker } from './ask.ts';
import { type Given, isOpen, QUESTIONS, type Question } from './questions.ts';
import { talk } from './talk.ts';

/** Puts every question that is still open, and again until it reads. `undefined` when the answers ended too early. */
export async function interview(asker: Asker, given: Given): Promise<Given | undefined> {
  for (const question of QUESTIONS) {
    while (isOpen(question, given)) {
      const empty = question.empty === undefined ? '' : ` [${question.empty}]`;
      const text = await asker.ask(`${question.asks}${empty} `);
      if (text === undefined) return undefined;
      if (text.trim() === '' && question.empty !== undefined) break;
      const answer = question.read(text, given);
      if (answer.ok) {
        given[question.key] = answer.text;
        talk(`  ${answer.says}`);
      } else {
        talk(`  ${answer.says}\n  try: ${answer.hint}`);
      }
    }
  }
  return given;
}

export interface Misuse {
  says: string;
  hint?: string;
}

const optionOf = (key: string): string => `--${key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;

const missing = ({ key, instead }: Question): string =>
  instead === undefined ? optionOf(key) : `${optionOf(key)} or ${optionOf(instead)}`;

/** Reads what was given as options instead; nothing is asked. What is needed and missing is said, all of it at once. */
export function readOptions(options: Given): { given: Given; misuses: Misuse[] } {
  const given: Given = options.title === undefined ? {} : { title: options.title };
  const misuses: Misuse[] = [];
  given.surface = options.surface ?? 'runner';
  given.units = options.units ?? firstUnit(options);
  for (const key of [...new Set(QUESTIONS.map((question) => question.key))]) {
    const questions = QUESTIONS.filter((question) => question.key === key);
    const text = options[key];
    if (text === undefined) continue;
    const answer = questions[0]!.read(text, given);
    if (!answer.ok) misuses.push({ says: `${optionOf(key)}: ${answer.says}`, hint: `try: ${answer.hint}` });
    else given[key] = answer.text;
    const { surface } = given;
    if (!questions.some(({ of }) => of.some((one) => one === surface)))
      misuses.push({ says: `${optionOf(key)} does not belong to a ${surface}` });
  }
  const walls = (['rightWall', 'farWall', 'leftWall', 'diagonal', 'otherDiagonal'] as const).find(
    (key) => options[key],
  );
  if (walls !== undefined && options.nearWall === undefined)
    misuses.push({ says: `--near-wall is missing, which goes with ${optionOf(walls)}` });
  for (const question of QUESTIONS) {
    if (question.empty === undefined && options[question.key] === undefined && isOpen(question, given))
      misuses.push({ says: `${missing(question)} is missing`, hint: question.asks });
  }
  return { given, misuses };
}

/** The unit of the first length given with one; inches when there is none. */
function firstUnit(options: Given): string {
  const { run, near, far, wide, long, nearWall, roomAcross, riserWide } = options;
  for (const text of [run, near, far, wide, long, nearWall, roomAcross, riserWide]) {
    if (text === undefined) continue;
    const read = readLengthAnswer(text, undefined);
    if (read.ok && read.unit !== undefined) return read.unit;
  }
  return 'in';
}
